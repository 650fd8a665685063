import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { WashPhase } from '../model/entities/wash-phase.generated.ts';
import type { MachinePhase, WasherCycle } from '../model/entities/washer.generated.ts';
import type { Citation, Place, Quantity, Requirement } from '../model/node.ts';
import { type Given, givenOf, givenValue } from './given.ts';
import { type CaseOf, type Fact, factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement, Parameter } from './outcome.ts';
import { bandOf } from './temperature.ts';
import type { WashQuestion } from './wash-question.ts';

export type PhaseName = NonNullable<MachinePhase['phase']>['text'];

/** Every phase of the cycle under one name, in order. */
export function phasesNamed(cycle: WasherCycle, name: PhaseName): readonly MachinePhase[] {
  return (cycle.phases?.items ?? []).filter((phase) => phase.phase?.text === name);
}

/** Setpoint of a phase with its control band, or the cycle's. */
export function phaseHeat(cycle: WasherCycle, phase: MachinePhase): Given | undefined {
  const setpoint = givenOf(phase.temp);
  return setpoint === undefined ? undefined : bandOf(setpoint, phase.band ?? cycle.band);
}

/** What the page says about single phases: which must be there, and how hot and how long each is. */
export function judgePhases(question: WashQuestion, voice: CleaningNode): readonly Judgement[] {
  const judgements = listedPhases(question, voice);
  const named: readonly (readonly [PhaseName, WashPhase | undefined, Parameter])[] = [
    ['prewash', voice.prewash, 'first-rinse-temperature'],
    ['enzyme-wash', voice.enzyme_wash, 'wash-temperature'],
    ['wash', voice.wash, 'wash-temperature'],
    ['neutralise', voice.neutralise, 'wash-temperature'],
    ['dry', voice.dry, 'drying-temperature'],
  ];
  for (const [name, demand, parameter] of named) {
    if (demand !== undefined) judgements.push(...judgePhase(question, voice, name, demand, parameter));
  }
  const finalRinse = voice.final_rinse ?? voice.rinse?.final;
  if (voice.rinse !== undefined)
    judgements.push(...judgePhase(question, voice, 'rinse', voice.rinse, 'wash-temperature'));
  if (finalRinse !== undefined)
    judgements.push(...judgeTimes(question, voice, 'final-rinse', finalRinse, 'wash-temperature'));
  return judgements;
}

/** Phases that the page only lists. A final rinse may also stand in the cycle as its last rinse. */
function listedPhases(question: WashQuestion, voice: CleaningNode): Judgement[] {
  const judgements: Judgement[] = [];
  for (const { text, at } of voice.phases?.items ?? []) {
    if (isPresent(question.cycle, text)) continue;
    judgements.push(phaseCase(question, 'phase-missing', text, at, voice.src));
  }
  return judgements;
}

function isPresent(cycle: WasherCycle, name: PhaseName): boolean {
  if (phasesNamed(cycle, name).length > 0) return true;
  return name === 'final-rinse' && (cycle.final_water !== undefined || phasesNamed(cycle, 'rinse').length > 0);
}

function phaseCase(
  { device, cycle }: WashQuestion,
  which: CaseOf<'machine-step'>,
  name: string,
  at: Place,
  src: Citation | undefined,
): Judgement {
  const given = cycle.id?.text ?? '';
  return judgeCase('machine-step', which, {
    by: device,
    what: `Phase ${name}`,
    required: name,
    given,
    at,
    factAt: cycle.phases?.at ?? cycle.at,
    src,
  });
}

type PhaseDemand = Pick<WashPhase, 'at' | 'temp' | 'time' | 'use' | 'silent' | 'src' | 'when'>;

function judgePhase(
  question: WashQuestion,
  voice: CleaningNode,
  name: PhaseName,
  demand: PhaseDemand,
  parameter: Parameter,
): readonly Judgement[] {
  const src = demand.src ?? voice.src;
  const present = isPresent(question.cycle, name);
  if (demand.use?.text === 'forbidden')
    return present ? [phaseCase(question, 'phase-forbidden', name, demand.use.at, src)] : [];
  if (demand.silent?.on === true || demand.use?.text === 'silent') return [];
  if (!present) {
    const optional = demand.use?.text === 'allowed' || demand.use?.text === 'recommended' || name === 'rinse';
    return optional ? [] : [phaseCase(question, 'phase-missing', name, demand.at, src)];
  }
  return judgeTimes(question, voice, name, demand, parameter);
}

/** Times of phases with one name add up; every one of them must have the temperature. */
function judgeTimes(
  question: WashQuestion,
  voice: CleaningNode,
  name: PhaseName,
  demand: PhaseDemand,
  parameter: Parameter,
): readonly Judgement[] {
  const phases = phasesNamed(question.cycle, name);
  const src = demand.src ?? voice.src;
  const judgements: Judgement[] = [];
  if (phases.length === 0) return judgements;
  if (demand.time !== undefined)
    judgements.push(
      judgeOne(question, 'cleaning-amount', `Time of phase ${name}`, demand.time, src, totalTime(phases)),
    );
  if (demand.temp === undefined) return judgements;
  for (const phase of phases) {
    judgements.push(
      judgeOne(
        question,
        parameter,
        `Temperature of phase ${name}`,
        demand.temp,
        src,
        factOf(phase.temp, givenOf(phase.temp)),
      ),
    );
  }
  return judgements;
}

function judgeOne(
  question: WashQuestion,
  parameter: Parameter,
  what: string,
  requirement: Requirement,
  src: Citation | undefined,
  fact: Fact,
): Judgement {
  return judgeDemand({ by: question.device, parameter, what, requirement, src }, fact, question.setting);
}

/** Undefined when one of the phases has no time. */
export function totalTime(phases: readonly MachinePhase[]): Fact {
  const first: Quantity | undefined = phases[0]?.time;
  if (phases.length === 1 || first === undefined) return factOf(first, givenOf(first));
  let seconds = 0;
  for (const phase of phases) {
    const time = givenOf(phase.time);
    if (time === undefined) return { given: undefined };
    seconds += time.low;
  }
  return { given: givenValue(seconds, 'time', first.unit), at: first.at };
}
