import { type CleaningAlternative, cleaningAlternatives, type StageDemand } from '../judge/demands.ts';
import { judgeCase } from '../judge/judgement.ts';
import type { Judgement } from '../judge/outcome.ts';
import { worstOf } from '../judge/outcome.ts';
import { judgeUltrasonic } from '../judge/ultrasonic.ts';
import { judgeWash } from '../judge/washing.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { sayingsOf } from '../model/saying.ts';
import { byHand } from './by-hand.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { Means } from './means.ts';
import type { CleaningFit, StageFit } from './model.ts';
import { bestFit } from './ranks.ts';

type Device = EntityOf['device'];

const memories = new WeakMap<Department, WeakMap<Device, Map<number, readonly CleaningFit[]>>>();

/** Every complete way the page offers to clean the device, each with the best the department has for each stage; best way first. */
export function cleaningFits(device: Device, quantity: number, department: Department): readonly CleaningFit[] {
  let ofDevice = memories.get(department);
  if (ofDevice === undefined) {
    ofDevice = new WeakMap();
    memories.set(department, ofDevice);
  }
  const known = ofDevice.get(device) ?? new Map<number, readonly CleaningFit[]>();
  ofDevice.set(device, known);
  const counted = isCounted(device, department) ? quantity : 1;
  const before = known.get(counted);
  if (before !== undefined) return before;
  const made = workOut(device, counted, department);
  known.set(counted, made);
  return made;
}

/** Whether the number of pieces matters: where each is to be connected or irrigated. */
function isCounted(device: Device, { setting }: Department): boolean {
  const { alternatives } = cleaningAlternatives(device, setting);
  return alternatives.some(({ stages }) =>
    stages.some(({ voices }) =>
      voices.some(({ connector, irrigated }) => connector !== undefined || irrigated?.on === true),
    ),
  );
}

function workOut(device: Device, quantity: number, department: Department): readonly CleaningFit[] {
  const { alternatives } = cleaningAlternatives(device, department.setting);
  if (alternatives.length === 0) return [notEncoded(device)];
  const fits = alternatives.map((alternative) => fitOf(device, quantity, alternative, department));
  const order = fits.map((fit, index) => ({
    ...fit,
    judgements: judgementsOf(fit),
    preferred: alternatives[index]?.preferred === true,
  }));
  const sorted: CleaningFit[] = [];
  const left = [...order.filter(({ preferred }) => preferred), ...order.filter(({ preferred }) => !preferred)];
  while (left.length > 0) {
    const best = bestFit(left);
    if (best === undefined) break;
    left.splice(left.indexOf(best), 1);
    const { alternative, outcome, stages, common } = best;
    sorted.push({ alternative, outcome, stages, common });
  }
  return sorted;
}

export function judgementsOf(fit: CleaningFit): readonly Judgement[] {
  return [...fit.common, ...fit.stages.flatMap(({ judgements }) => judgements)];
}

/** Silence is neither permission nor prohibition. A device that is never in contact with anything may still have no cleaning stated. */
function notEncoded(device: Device): CleaningFit {
  const at = device.cleaning?.at ?? device.id?.at ?? device.at;
  const judgement = judgeCase('identity', 'unclear', {
    by: device,
    what: 'No way of cleaning is in the file of the device',
    required: 'a complete way of cleaning',
    at,
  });
  return { alternative: '', outcome: judgement.outcome, stages: [], common: [judgement] };
}

function fitOf(
  device: Device,
  quantity: number,
  alternative: CleaningAlternative,
  department: Department,
): CleaningFit {
  const stages = alternative.stages.map((demand) => stageOf(device, quantity, demand, department));
  const common = alternative.couples.map((couple) =>
    judgeCase('identity', 'coupled', { by: device, required: couple.text, at: couple.at, src: device.cleaning?.src }),
  );
  return { alternative: alternative.id, outcome: worstOf([...common, ...stages]), stages, common };
}

function stageOf(device: Device, quantity: number, demand: StageDemand, department: Department): StageFit {
  const trials = trialsFor(device, quantity, demand, department);
  const judged = trials.map(({ machine, means, judgements }) => ({ machine, means, judgements }));
  const best = bestFit(judged) ?? nothingThere(device, demand);
  const outcome = worstOf(best.judgements);
  const fitting = judged
    .map(({ machine, means, judgements }) => ({ machine, means, outcome: worstOf(judgements) }))
    .filter((one) => one.outcome !== 'fails');
  const others = trials.filter((_, at) => judged[at] !== best);
  return { stage: demand.stage, ...best, outcome, fitting, others };
}

/** A machine, judged whenever somebody looks: of most, kept by the ten thousand, nobody does a second time. */
class Trial implements Means {
  readonly machine: string;
  readonly means: string;
  readonly #judge: () => readonly Judgement[];

  constructor(machine: string, means: string, judge: () => readonly Judgement[]) {
    this.machine = machine;
    this.means = means;
    this.#judge = judge;
  }

  get judgements(): readonly Judgement[] {
    return this.#judge();
  }
}

function trialsFor(device: Device, quantity: number, demand: StageDemand, department: Department): readonly Means[] {
  const { setting, stock } = department;
  switch (demand.stage) {
    case 'mechanical':
      return department.washing.map(({ id, machine, cycle }) => {
        const question = { device, demand, machine, cycle, stock, quantity, setting };
        return new Trial(idOf(machine), id, () => judgeWash(question));
      });
    case 'ultrasonic':
      return department.baths.map((machine) => {
        const question = { device, demand, machine, stock, quantity, setting };
        return new Trial(idOf(machine), '', () => judgeUltrasonic(question));
      });
    default:
      return byHand(device, demand, department);
  }
}

/** The page demands a machine, and the department has none of the kind. */
function nothingThere(device: Device, demand: StageDemand): Means {
  const voice = demand.voices[0];
  const judgement: Judgement = {
    outcome: 'fails',
    parameter: 'machine-step',
    demandedBy: `device/${idOf(device)}`,
    required: demand.stage === 'mechanical' ? 'a washer' : 'an ultrasonic bath',
    given: 'none in the department',
    reason: 'Machine step: the department has no such machine.',
    settledBy: 'manager',
    says: sayingsOf(device, voice?.src),
    demandAt: voice?.at ?? device.at,
  };
  return { machine: '', means: '', judgements: [judgement] };
}
