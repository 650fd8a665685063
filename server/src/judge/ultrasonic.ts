import type { Device } from '../model/entities/device.generated.ts';
import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../model/entities/procedure.generated.ts';
import type { Ultrasonic } from '../model/entities/ultrasonic.generated.ts';
import type { Quantity } from '../model/node.ts';
import { judgeAgent, judgeWindow } from './agents.ts';
import { portsNeeded } from './connectors.ts';
import type { StageDemand } from './demands.ts';
import { isOlderThan, machineState } from './evidence.ts';
import { givenOf } from './given.ts';
import { type CaseOf, factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { heatLimits } from './prohibitions.ts';
import type { Setting, Stock } from './setting.ts';
import { judgeStageUse } from './stage-use.ts';

/** One device in one bath, for the time of the procedure's step or of the bath's own program. */
export interface UltrasonicQuestion {
  readonly device: Device;
  readonly demand: StageDemand;
  readonly machine: Ultrasonic;
  /** The step of the procedure, where there is one: its time, temperature and frequency come before the bath's. */
  readonly step?: ProcedureStep;
  readonly stock: Stock;
  readonly quantity?: number;
  readonly setting: Setting;
}

export function judgeUltrasonic(question: UltrasonicQuestion): readonly Judgement[] {
  const use = judgeStageUse(question.device, question.demand, question.machine, question.setting);
  if (use.some((one) => one.outcome === 'fails')) return use;
  return [
    ...use,
    ...question.demand.voices.flatMap((voice) => [
      ...judgeValues(question, voice),
      ...judgeIrrigation(question, voice),
    ]),
    ...judgeHeat(question),
    ...judgeChemistry(question),
    judgeEvidence(question),
  ];
}

interface OurBath {
  readonly frequency: Quantity | undefined;
  readonly time: Quantity | undefined;
  readonly temp: Quantity | undefined;
  readonly degas: Quantity | undefined;
}

function ourBath({ machine, step }: UltrasonicQuestion): OurBath {
  return {
    frequency: step?.frequency ?? machine.frequency,
    time: step?.time ?? machine.program,
    temp: step?.temp ?? machine.temp,
    degas: step?.degas ?? machine.degas,
  };
}

const titles = {
  frequency: 'Frequency',
  time: 'Time in the bath',
  temp: 'Temperature of the bath',
  degas: 'Degassing',
} as const;

function judgeValues(question: UltrasonicQuestion, voice: CleaningNode): readonly Judgement[] {
  const { device: by, setting } = question;
  const bath = ourBath(question);
  const judgements: Judgement[] = [];
  for (const value of ['frequency', 'time', 'temp', 'degas'] as const) {
    const requirement = voice[value];
    if (requirement === undefined) continue;
    const parameter = value === 'degas' ? 'cleaning-amount' : 'ultrasonic';
    judgements.push(
      judgeDemand(
        { by, parameter, what: titles[value], requirement, src: voice.src },
        factOf(bath[value], givenOf(bath[value])),
        setting,
      ),
    );
  }
  return judgements;
}

function judgeIrrigation({ device, machine, quantity }: UltrasonicQuestion, voice: CleaningNode): readonly Judgement[] {
  if (voice.irrigated?.on !== true) return [];
  const ports = givenOf(machine.irrigated_ports)?.low ?? machine.ports?.items.length ?? 0;
  const one = portsNeeded(device);
  const all = one * (quantity ?? 1);
  const at = voice.irrigated.at;
  const facts = {
    by: device,
    required: `${all} irrigated`,
    given: `${ports} irrigated`,
    at,
    factAt: machine.irrigated_ports?.at ?? machine.id?.at,
    src: voice.src,
  };
  if (ports === 0) return [judgeCase('machine-step', 'not-irrigated', facts)];
  if (ports < one) return [judgeCase('connector', 'too-few', { ...facts, gap: `${one - ports} short` })];
  return [
    ports < all
      ? judgeCase('connector', 'several-loads', { ...facts, gap: `${all - ports} short` })
      : judgeCase('machine-step', 'irrigated', facts),
  ];
}

function judgeHeat(question: UltrasonicQuestion): readonly Judgement[] {
  const { device, setting } = question;
  const { temp } = ourBath(question);
  const given = givenOf(temp);
  if (given === undefined) return [];
  return heatLimits(device).map(({ requirement, src }) =>
    judgeDemand({ by: device, parameter: 'heat-limit', requirement, src }, factOf(temp, given), setting),
  );
}

function judgeChemistry(question: UltrasonicQuestion): readonly Judgement[] {
  const { device, demand, machine, step, stock, setting } = question;
  const word = step?.chemistry ?? machine.chemistry;
  const detergents = demand.voices.map((voice) => voice.detergent).filter((one) => one !== undefined);
  if (word === undefined) {
    const first = detergents[0];
    if (first === undefined) return [];
    return [
      judgeCase('chemistry', 'unknown', {
        by: device,
        required: 'a detergent as the page asks',
        at: first.at,
        factAt: machine.id?.at,
        src: first.src,
      }),
    ];
  }
  const agent = { word, chemistry: stock.chemistry(word.text) };
  const { temp } = ourBath(question);
  return [
    ...judgeAgent({ device, detergents, agent, method: 'ultrasonic', setting }),
    ...judgeWindow(agent, 'in the bath', { given: givenOf(temp), at: temp?.at }, setting),
  ];
}

/** A bath is there and in use; where the site sets an interval, it has been tested within it. */
function judgeEvidence({ machine, setting }: UltrasonicQuestion): Judgement {
  const state = machineState(machine, setting.today);
  const tested = machine.last_test;
  const tooOld = tested !== undefined && isOlderThan(tested, 'ultrasonic_test', setting);
  const which: CaseOf<'evidence'> =
    state?.which ??
    (tooOld ? 'test-stale' : tested !== undefined && tested.text > setting.today ? 'future' : 'current');
  const at = state?.at ?? tested?.at ?? machine.id?.at ?? machine.at;
  return judgeCase('evidence', which, {
    by: machine,
    required: 'a bath in use',
    given: tested === undefined ? '' : `tested ${tested.text}`,
    at,
    factAt: at,
  });
}
