import type { StageDemand } from '../../judge/demands.ts';
import { cleaningAlternatives } from '../../judge/demands.ts';
import type { Setting } from '../../judge/setting.ts';
import { unitNamed } from '../../judge/unit-named.ts';
import type { SterilizerCycle } from '../../library/view.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity, Requirement } from '../../model/node.ts';
import { formatIn } from '../../quantity/format.ts';
import type { CleaningFit, StageFit } from '../../route/model.ts';
import { demandOf } from '../../rules/support/limits-of.ts';
import { amount, type Printing } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Value } from '../piece.ts';
import { originOf } from '../piece.ts';

/** One step of processing with the shortest time that its page or machine states; without one, nothing is guessed. */
export interface TimedStep {
  readonly what: Line;
  readonly time?: Value;
  readonly seconds: number;
  readonly from: readonly string[];
}

/** All stated times added up. Steps without a time come on top: the sum is a floor, never a promise. */
export interface ShortestTime {
  readonly steps: readonly TimedStep[];
  readonly seconds: number;
  readonly untimed: number;
}

export interface Processing {
  readonly device: EntityOf['device'];
  readonly cleaning: CleaningFit;
  readonly cycle: SterilizerCycle;
  readonly setting: Setting;
}

/** From the sink to the end of the cycle, step by step, as the way of cleaning and the cycle state it. */
export function shortestTime({ device, cleaning, cycle, setting }: Processing, printing: Printing): ShortestTime {
  const { alternatives } = cleaningAlternatives(device, setting);
  const demands = alternatives.find(({ id }) => id === cleaning.alternative)?.stages ?? [];
  const steps = [
    ...cleaning.stages.flatMap((stage, index) => stageSteps(stage, demands[index], printing)),
    step(['drying'], device.drying?.time, printing),
    step(['inspection and tests'], undefined, printing),
    ...(device.lubrication?.required?.on === true
      ? [step(['lubrication, run'], device.lubrication.run, printing)]
      : []),
    step(['packing and loading'], undefined, printing),
    ...cycleSteps(cycle, printing),
    ...(device.cooling?.time === undefined ? [] : [step(['cooling'], device.cooling.time, printing)]),
  ];
  return totalOf(steps);
}

export function totalOf(steps: readonly TimedStep[]): ShortestTime {
  let seconds = 0;
  let untimed = 0;
  for (const one of steps) {
    seconds += one.seconds;
    if (one.time === undefined) untimed++;
  }
  return { steps, seconds, untimed };
}

/** `23 min`, with every time it rests on: whole minutes, never more than was stated, since it is called the least. */
export function totalValue({ seconds, steps }: ShortestTime): Value {
  const wholeMinutes = Math.floor(seconds / 60) * 60;
  return {
    text:
      wholeMinutes === 0 ? formatIn(seconds, unitNamed('time', 's')) : formatIn(wholeMinutes, unitNamed('time', 'min')),
    from: steps.flatMap(({ from }) => from),
    how: 'computed',
  };
}

/** The shortest time a requirement allows. */
function step(what: Line, requirement: Requirement | undefined, printing: Printing): TimedStep {
  return quantityStep(what, demandOf(requirement)?.lowest, printing);
}

function quantityStep(what: Line, quantity: Quantity | undefined, printing: Printing, repeats = 1): TimedStep {
  if (quantity === undefined || quantity.problem !== undefined) return { what, seconds: 0, from: [] };
  const from = [originOf(quantity.at)];
  const time = amount(quantity, printing);
  return { what, time, seconds: quantity.value * repeats, from };
}

function stageSteps(stage: StageFit, demand: StageDemand | undefined, printing: Printing): readonly TimedStep[] {
  const voices = demand?.voices ?? [];
  switch (stage.stage) {
    case 'mechanical':
      return washerSteps(stage, printing);
    case 'ultrasonic':
      return [bathStep(stage, voices, printing)];
    default:
      return handSteps(stage.stage, voices, printing);
  }
}

function washerSteps({ machine, means }: StageFit, printing: Printing): readonly TimedStep[] {
  const washer = printing.view.washerCycle(means);
  const name: Line = ['washer ', washer === undefined ? machine : nameOf(washer.machine, machine)];
  if (washer?.cycle.total_time !== undefined) return [quantityStep(name, washer.cycle.total_time, printing)];
  const phases = washer?.cycle.phases?.items ?? [];
  if (phases.length === 0) return [{ what: name, seconds: 0, from: [] }];
  return phases.map(({ phase, time }) => quantityStep([...name, `, ${phase?.text ?? 'phase'}`], time, printing));
}

/** The bath runs its program; without one, the shortest time of the page. */
function bathStep({ machine }: StageFit, voices: readonly CleaningNode[], printing: Printing): TimedStep {
  const bath = printing.view.get('ultrasonic', machine);
  const name: Line = ['ultrasonic bath ', bath === undefined ? machine : nameOf(bath, machine)];
  const asked = voices.map(({ time }) => demandOf(time)?.lowest).find((time) => time !== undefined);
  return quantityStep(name, bath?.program ?? asked, printing);
}

/** Hand work: every time the page gives; where it gives none at all, one step without a time. */
function handSteps(stage: string, voices: readonly CleaningNode[], printing: Printing): readonly TimedStep[] {
  const steps: TimedStep[] = [];
  for (const voice of voices) {
    const timed: readonly (readonly [string, Requirement | undefined, number])[] = [
      ['first rinse', voice.first_rinse?.time, 1],
      ['soak', voice.soak, 1],
      ['brush', voice.brush_time ?? voice.brush?.time, 1],
      ['flush', voice.flush?.time, repeatsOf(voice.flush?.times)],
      ...(voice.steps?.items ?? []).map(
        ({ do: what, time, times, when }) =>
          [what?.text ?? 'step', when === undefined ? time : undefined, repeatsOf(times)] as const,
      ),
      ['rinse', voice.rinse?.time, repeatsOf(voice.rinse?.times)],
    ];
    for (const [what, requirement, repeats] of timed) {
      const quantity = demandOf(requirement)?.lowest;
      if (quantity !== undefined) steps.push(quantityStep([`by hand: ${what}`], quantity, printing, repeats));
    }
  }
  const rest: TimedStep = {
    what: [stage === 'manual' ? 'by hand, the work itself' : `${stage}, the work itself`],
    seconds: 0,
    from: [],
  };
  return [...steps, rest];
}

function repeatsOf(times: Requirement | undefined): number {
  const lowest = demandOf(times)?.low;
  return lowest === undefined || !Number.isFinite(lowest) || lowest < 1 ? 1 : lowest;
}

function cycleSteps(cycle: SterilizerCycle, printing: Printing): readonly TimedStep[] {
  if (cycle.total_time !== undefined) return [quantityStep(['sterilizer, whole cycle'], cycle.total_time, printing)];
  return [
    { what: ['sterilizer, until the exposure begins and to let the pressure down'], seconds: 0, from: [] },
    quantityStep(['sterilizer, exposure'], cycle.exposure, printing),
    quantityStep(['sterilizer, drying'], cycle.dry, printing),
  ];
}
