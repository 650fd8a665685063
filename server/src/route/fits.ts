import type { Contents } from '../judge/contents.ts';
import { judgeContents, judgeDeviceContents } from '../judge/contents.ts';
import type { Judgement } from '../judge/outcome.ts';
import { bestEntry, judgePackaging } from '../judge/packaging.ts';
import { judgePackagingStatement } from '../judge/packaging-statement.ts';
import { judgeSterilization, optionsOf } from '../judge/sterilization.ts';
import type { EntityOf, SterilizationOption } from '../model/entities.generated.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { MemberFit } from './model.ts';
import type { Packing } from './packings.ts';
import {
  hasGate,
  hopeless,
  isBetter,
  joined,
  nothing,
  outcomeOf,
  type Ranked,
  ranked,
  type Score,
  scoreOf,
} from './ranks.ts';

type Device = EntityOf['device'];

/** How each option of each device fits each cycle and each packaging, worked out once for all sets of one department. */
export class FitMemory {
  readonly #department: Department;
  readonly #kept = new WeakMap<object, Map<string, unknown>>();
  #likeness: readonly number[] | undefined;

  constructor(department: Department) {
    this.#department = department;
  }

  /**
   * One option against every cycle of the department as numbers, packaging left aside. Cycles with the same numbers are judged once. Dates
   * of cycles are judged once for all members, not here.
   */
  inCycles(device: Device, option: SterilizationOption, quantity: number): readonly Score[] {
    const counted = device.lumens === undefined ? 1 : quantity;
    const sharing = option.listed === undefined;
    return this.#remember(option, `cycles ${counted}`, () => {
      const scores: Score[] = [];
      for (const at of this.#department.sterilizing.keys()) {
        const first = sharing ? this.#alike(at) : at;
        scores.push(scores[first] ?? scoreOf(this.#judge(device, option, counted, at)));
      }
      return scores;
    });
  }

  /** The best option in each cycle, for a device of whose contents nothing is demanded. */
  bestInCycles(device: Device, quantity: number, packing: Packing): readonly Score[] {
    return this.#remember(device, `best ${quantity} ${packing.key}`, () =>
      this.bestOfOptions(
        device,
        quantity,
        optionsOf(device).map((option) => this.inPackaging(device, option, packing)),
      ),
    );
  }

  /** The best option in each cycle; `around`: the score of each option with the cycle left aside. */
  bestOfOptions(device: Device, quantity: number, around: readonly Score[]): readonly Score[] {
    const rows = optionsOf(device).map((option) => this.inCycles(device, option, quantity));
    const best: Score[] = [];
    for (const at of this.#department.sterilizing.keys()) {
      let found: Score = hopeless;
      for (const [index, row] of rows.entries()) {
        const score = joined(around[index] ?? nothing, row[at] ?? hopeless);
        if (isBetter(score, found)) found = score;
      }
      best.push(found);
    }
    return best;
  }

  /** One option against one cycle with its reasons: kept for the few cycles that are shown. */
  inCycle(device: Device, option: SterilizationOption, quantity: number, at: number): readonly Judgement[] {
    const counted = device.lumens === undefined ? 1 : quantity;
    return this.#remember(option, `cycle ${at} ${counted}`, () => this.#judge(device, option, counted, at));
  }

  #judge(device: Device, option: SterilizationOption, counted: number, at: number): readonly Judgement[] {
    const { setting, sterilizing } = this.#department;
    const means = sterilizing[at];
    if (means === undefined) return [];
    const { machine, cycle } = means;
    const judgements = judgeSterilization({ device, option, machine, cycle, quantity: counted, setting });
    return judgements.filter(({ parameter }) => parameter !== 'evidence');
  }

  /** The first cycle that asks and gives the same. Peroxide cycles are known by name, so that none is like another. */
  #alike(at: number): number {
    this.#likeness ??= firstAlike(this.#department.sterilizing);
    return this.#likeness[at] ?? at;
  }

  /** One option against one packaging, by what the device's page says about packaging. */
  inPackaging(device: Device, option: SterilizationOption, { packaging, namedCase, key }: Packing): Ranked {
    return this.#remember(option, `in ${key}`, () => {
      const statements = [option.packaging, device.packaging].filter((one) => one !== undefined);
      const { setting } = this.#department;
      return ranked(statements.map((one) => judgePackagingStatement(device, one, { packaging, namedCase }, setting)));
    });
  }

  /** The packaging, and the case inside it, against one cycle by their own instructions. */
  packagingInCycle(packaging: EntityOf['packaging'], means: SterilizerMeans): Ranked {
    return this.#remember(packaging, `${idOf(means.machine)} ${means.id}`, () => {
      const { machine, cycle } = means;
      return ranked(judgePackaging({ packaging, machine, cycle, setting: this.#department.setting }));
    });
  }

  /** Which of the packaging's entries is for the cycle: its place in the list, -1 for none. */
  entryFor(packaging: EntityOf['packaging'], { machine, cycle }: Pick<SterilizerMeans, 'machine' | 'cycle'>): number {
    return this.#remember(cycle, `entry ${idOf(packaging)}`, () => {
      const { entry } = bestEntry({ packaging, machine, cycle, setting: this.#department.setting });
      return entry === undefined ? -1 : (packaging.validated?.items.indexOf(entry) ?? -1);
    });
  }

  #remember<Answer>(about: object, key: string, work: () => Answer): Answer {
    let known = this.#kept.get(about);
    if (known === undefined) {
      known = new Map();
      this.#kept.set(about, known);
    }
    const before = known.get(key);
    if (before !== undefined) return before as Answer;
    const made = work();
    known.set(key, made);
    return made;
  }
}

function firstAlike(sterilizing: readonly SterilizerMeans[]): readonly number[] {
  const first = new Map<string, number>();
  return sterilizing.map(({ machine, cycle }, at) => {
    const modality = (cycle.modality ?? machine.modality)?.text;
    if (modality === undefined || modality === 'vh2o2' || cycle.lumens !== undefined) return at;
    const { temp, exposure, pulses, dry, humidity, concentration } = cycle;
    const amounts = [
      temp,
      exposure,
      pulses,
      dry,
      humidity,
      concentration,
      cycle.band?.minus,
      cycle.band?.plus,
      cycle.aeration?.time,
      cycle.aeration?.temp,
    ];
    const key = [modality, cycle.context?.text ?? 'terminal', ...amounts.map((one) => one?.text ?? '')].join('|');
    const known = first.get(key);
    if (known === undefined) first.set(key, at);
    return known ?? at;
  });
}

const memories = new WeakMap<Department, FitMemory>();

export function memoryOf(department: Department): FitMemory {
  const known = memories.get(department);
  if (known !== undefined) return known;
  const made = new FitMemory(department);
  memories.set(department, made);
  return made;
}

/** What one option of a device demands of the contents around it, as far as it counts for this packing. */
export function optionContents(
  device: Device,
  option: SterilizationOption | undefined,
  contents: Contents,
  packing: Packing,
  department: Department,
): readonly Judgement[] {
  return judgeDeviceContents(device, option, contents, department.setting).filter((one) => counts(one, packing));
}

/** Names everything in a cycle on which the judgement of contents depends, besides the packaging. */
export function contentsKey(
  { packaging }: Packing,
  { machine, cycle }: SterilizerMeans,
  department: Department,
): string {
  if (packaging === undefined) return '';
  const entry = memoryOf(department).entryFor(packaging, { machine, cycle });
  const load = (cycle.load_max ?? machine.chamber?.load_max)?.text ?? '';
  return `${entry} ${load} ${cycle.item_mass_max?.text ?? ''} ${(cycle.modality ?? machine.modality)?.text === 'vh2o2'}`;
}

/** Packaging, contents, limits of the site and dates of the cycle: everything that does not depend on one member. */
export function commonJudgements(
  packing: Packing,
  means: SterilizerMeans,
  contents: Contents,
  department: Department,
): readonly Judgement[] {
  const memory = memoryOf(department);
  const own = [packing.packaging, packing.casePackaging].flatMap((packaging) =>
    packaging === undefined ? [] : memory.packagingInCycle(packaging, means).judgements,
  );
  return [means.evidence, ...own, ...contentsJudgements(packing, means, contents, department)];
}

/** The contents against the packaging, the case inside it, the load of the cycle and the site. */
export function contentsJudgements(
  packing: Packing,
  { machine, cycle }: SterilizerMeans,
  contents: Contents,
  department: Department,
): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const packaging of [packing.packaging, packing.casePackaging]) {
    if (packaging === undefined) continue;
    const within = judgeContents({ packaging, contents, machine, cycle, setting: department.setting });
    for (const one of within) if (counts(one, packing)) judgements.push(one);
  }
  return judgements;
}

/** What lay in the set beside its members is chosen anew with another packaging: mats and filters are left out of the judgement. */
export function counts({ parameter, outcome, given }: Judgement, packing: Packing): boolean {
  if (parameter === 'mass' && outcome === 'needs-answer' && given === '') return packing.weighed === 'weighed';
  return packing.asFiled || (parameter !== 'accessory' && parameter !== 'filter');
}

/** One option in one packing: its score, cycle left aside. */
export function aroundScore(
  device: Device,
  option: SterilizationOption,
  packing: Packing,
  contents: Contents,
  department: Department,
): Score {
  const own = optionContents(device, option, contents, packing, department);
  const packed = memoryOf(department).inPackaging(device, option, packing);
  return own.length === 0 ? packed : joined(packed, scoreOf(own));
}

/** The option that fits best, where any does not fail: by outcome, then by what is open, then by notes, then as the page orders them. */
export function leastOpen(
  device: Device,
  options: readonly SterilizationOption[],
  quantity: number,
  at: number,
  packing: Packing,
  contents: Contents,
  department: Department,
): SterilizationOption | undefined {
  const memory = memoryOf(department);
  let best: SterilizationOption | undefined;
  let bestScore: Score = hopeless;
  for (const option of options) {
    const score = joined(
      memory.inCycles(device, option, quantity)[at] ?? hopeless,
      aroundScore(device, option, packing, contents, department),
    );
    if (isBetter(score, bestScore)) {
      best = option;
      bestScore = score;
    }
  }
  return best;
}

/** Every option of the device for one cycle in one packing, each as a whole tuple, in the order of the page. */
export function optionFits(
  device: Device,
  quantity: number,
  at: number,
  packing: Packing,
  contents: Contents,
  department: Department,
): readonly MemberFit[] {
  return optionsOf(device).map((option) => optionFit(option, device, quantity, at, packing, contents, department));
}

/** One option with every reason. */
export function optionFit(
  option: SterilizationOption,
  device: Device,
  quantity: number,
  at: number,
  packing: Packing,
  contents: Contents,
  department: Department,
): MemberFit {
  const memory = memoryOf(department);
  const judgements = [...memory.inCycle(device, option, quantity, at)];
  const otherKind = hasGate(judgements);
  if (!otherKind) judgements.push(...memory.inPackaging(device, option, packing).judgements);
  judgements.push(...optionContents(device, otherKind ? undefined : option, contents, packing, department));
  return {
    device: idOf(device),
    option: option.id?.text ?? String(option.at.key),
    outcome: outcomeOf(scoreOf(judgements).rank),
    judgements,
  };
}
