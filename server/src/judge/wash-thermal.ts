import type { Disinfection } from '../model/entities/device-disinfection.generated.ts';
import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { DisinfectionOption } from '../model/entities/disinfection-option.generated.ts';
import type { WashPhase } from '../model/entities/wash-phase.generated.ts';
import type { WasherCycle } from '../model/entities/washer.generated.ts';
import type { Citation, Place, Requirement } from '../model/node.ts';
import { A0_SCALE, amountOf, lethalityOfHold } from '../physics/lethality.ts';
import { intervalOf } from '../quantity/bound.ts';
import { boundsOf, requirementWords } from './bounds.ts';
import { type Given, givenOf } from './given.ts';
import { type Demand, factOf, judgeCase, judgeDemand } from './judgement.ts';
import { type Judgement, worstOf } from './outcome.ts';
import { thresholdOf } from './policies.ts';
import { holds } from './setting.ts';
import { phaseHeat, phasesNamed, totalTime } from './wash-phases.ts';
import type { WashQuestion } from './wash-question.ts';

/** One pair or heat dose that the page gives for thermal disinfection. */
interface ThermalDemand {
  readonly at: Place;
  readonly temp?: Requirement | undefined;
  readonly time?: Requirement | undefined;
  readonly a0?: Requirement | undefined;
  readonly src: Citation | undefined;
}

/**
 * Heat dose of the thermal phases, seconds at 80 °C: each held at the coldest its band allows, drying not counted. Undefined when there
 * is no such phase, or one without temperature or time.
 */
export function washA0({ cycle }: Pick<WashQuestion, 'cycle'>): number | undefined {
  return doseOf(cycle)?.low;
}

const doses = new WeakMap<WasherCycle, { readonly given: Given | undefined }>();

/** The heat dose of a cycle, worked out once. */
function doseOf(cycle: WasherCycle): Given | undefined {
  let known = doses.get(cycle);
  if (known === undefined) {
    const a0 = addUpA0(cycle);
    known = { given: a0 === undefined ? undefined : { low: a0, high: a0, words: `A0 ${Math.floor(a0)}` } };
    doses.set(cycle, known);
  }
  return known.given;
}

function addUpA0(cycle: WasherCycle): number | undefined {
  const phases = phasesNamed(cycle, 'thermal');
  if (phases.length === 0) return undefined;
  let total = 0;
  for (const phase of phases) {
    const heat = phaseHeat(cycle, phase);
    const time = givenOf(phase.time);
    if (heat === undefined || time === undefined) return undefined;
    const dose = lethalityOfHold(A0_SCALE, { temperatureC: heat.low, holdS: time.low, uncertaintyK: 0 });
    if (!dose.ok) return undefined;
    total += amountOf(dose.value);
  }
  return total;
}

/** What the instruction asks of thermal disinfection, at every place that speaks of it, and the heat dose the site has adopted. */
export function judgeThermal(question: WashQuestion): readonly Judgement[] {
  const judgements: Judgement[] = [];
  const { disinfection } = question.device;
  const whole = disinfection === undefined || disinfection.use?.text === 'allowed' ? [] : [disinfection];
  for (const voice of [...question.demand.voices, ...whole]) {
    if (!isOtherStage(voice, question)) judgements.push(...judgeVoice(question, voice));
  }
  return [...judgements, ...judgeSiteA0(question)];
}

/** The page's own disinfection with an agent, or one that is forbidden or left out, is not this machine's. */
function isOtherStage(voice: CleaningNode | Disinfection, { setting }: WashQuestion): boolean {
  return (
    voice.silent?.on === true ||
    voice.use?.text === 'forbidden' ||
    voice.use?.text === 'silent' ||
    !holds(setting, voice.when)
  );
}

function judgeVoice(question: WashQuestion, voice: CleaningNode | Disinfection): readonly Judgement[] {
  const thermal: WashPhase | undefined = 'thermal' in voice ? voice.thermal : undefined;
  const judgements: Judgement[] = [];
  if (thermal !== undefined && thermal.silent?.on !== true && thermal.use?.text !== 'silent') {
    judgements.push(
      ...judgeDemanded(question, {
        at: thermal.at,
        temp: thermal.temp,
        time: thermal.time,
        a0: thermal.a0,
        src: thermal.src ?? voice.src,
      }),
    );
  }
  const ofDisinfection = voice === question.device.disinfection && voice.agent === undefined;
  const own = {
    at: voice.at,
    a0: voice.a0,
    src: voice.src,
    ...(ofDisinfection && { temp: voice.temp, time: voice.time }),
  };
  if (own.a0 !== undefined || own.temp !== undefined || own.time !== undefined)
    judgements.push(...judgeDemanded(question, own));
  const options = voice.options?.items ?? [];
  if (options.length > 0) judgements.push(...bestOption(question, options, voice.src));
  return judgements;
}

/** Pairs are alternatives, each taken whole: the one that fits best is judged. */
function bestOption(
  question: WashQuestion,
  options: readonly DisinfectionOption[],
  src: Citation | undefined,
): readonly Judgement[] {
  let best: readonly Judgement[] | undefined;
  for (const { at, temp, time, a0, src: own } of options) {
    const judged = judgeDemanded(question, { at, temp, time, a0, src: own ?? src });
    if (worstOf(judged) === 'meets') return judged;
    if (best === undefined || (worstOf(best) === 'fails' && worstOf(judged) !== 'fails')) best = judged;
  }
  return best ?? [];
}

function judgeDemanded(question: WashQuestion, demand: ThermalDemand): readonly Judgement[] {
  const { device: by, cycle, setting } = question;
  const phases = phasesNamed(cycle, 'thermal');
  const factAt = phases[0]?.phase?.at ?? cycle.phases?.at ?? cycle.at;
  if (phases.length === 0) {
    const facts = { by, required: wordsOf(demand), given: cycle.id?.text, at: demand.at, factAt, src: demand.src };
    return [judgeCase('machine-step', 'no-disinfection', facts)];
  }
  const judgements: Judgement[] = [];
  for (const phase of demand.temp === undefined ? [] : phases) {
    const what = 'Temperature of thermal disinfection';
    const judged = {
      by,
      parameter: 'thermal-disinfection',
      what,
      requirement: demand.temp as Requirement,
      src: demand.src,
    } as const;
    judgements.push(judgeDemand(judged, factOf(phase.temp, givenOf(phase.temp)), setting));
  }
  if (demand.time !== undefined) {
    const judged = {
      by,
      parameter: 'thermal-disinfection',
      what: 'Time of thermal disinfection',
      requirement: demand.time,
      src: demand.src,
    } as const;
    judgements.push(judgeDemand(judged, totalTime(phases), setting));
  }
  const pair =
    judgements.length > 0 && worstOf(judgements) === 'fails' ? inPlaceOfPair(question, demand, judgements) : judgements;
  return demand.a0 === undefined ? pair : [...pair, judgeDose(question, demand.a0, demand.src, factAt)];
}

function judgeDose(
  question: WashQuestion,
  requirement: Requirement,
  src: Citation | undefined,
  factAt: Place,
): Judgement {
  return judgeA0(
    question,
    { by: question.device, parameter: 'thermal-disinfection', what: 'A0', requirement, src },
    factAt,
  );
}

/** The heat dose of the cycle against one that is demanded; none at all where there is no thermal phase. */
function judgeA0({ cycle, setting }: WashQuestion, demand: Demand, at: Place): Judgement {
  const given = phasesNamed(cycle, 'thermal').length === 0 ? { low: 0, high: 0, words: 'A0 0' } : doseOf(cycle);
  if (given !== undefined) return judgeDemand(demand, { given, at }, setting);
  const { by, what, requirement, src } = demand;
  return judgeCase('machine-step', 'a0-unknown', {
    by,
    what,
    required: requirementWords(requirement),
    at: requirement.at,
    factAt: at,
    src,
  });
}

/**
 * A pair that is not reached: the heat dose stands in for it only where the page itself gives a dose, or the site accepts A0; then the
 * dose of the pair must be reached, and nothing may be hotter or longer than the page allows. Equal heat alone permits nothing.
 */
function inPlaceOfPair(
  question: WashQuestion,
  demand: ThermalDemand,
  pair: readonly Judgement[],
): readonly Judgement[] {
  const { device: by, setting, cycle } = question;
  const accepted = demand.a0 !== undefined || setting.site?.policies?.accept_a0?.on === true;
  const wanted = doseOfPair(demand);
  const a0 = washA0(question);
  if (!accepted || wanted === undefined || a0 === undefined || a0 < wanted * (1 - 1e-9)) return pair;
  const phases = phasesNamed(cycle, 'thermal');
  const tooHot = phases.some((phase) => exceeds(demand.temp, givenOf(phase.temp)));
  if (tooHot || exceeds(demand.time, totalTime(phases).given)) return pair;
  const at = demand.temp?.at ?? demand.time?.at ?? demand.at;
  const facts = {
    by,
    what: 'Thermal disinfection',
    required: wordsOf(demand),
    given: `A0 ${Math.floor(a0)}`,
    at,
    factAt: cycle.phases?.at,
    src: demand.src,
  };
  return [judgeCase('machine-step', 'a0-accepted', facts)];
}

function doseOfPair({ temp, time }: ThermalDemand): number | undefined {
  const temperatureC = lowestOf(temp);
  const holdS = lowestOf(time);
  if (temperatureC === undefined || holdS === undefined) return undefined;
  const dose = lethalityOfHold(A0_SCALE, { temperatureC, holdS, uncertaintyK: 0 });
  return dose.ok ? amountOf(dose.value) : undefined;
}

function exceeds(requirement: Requirement | undefined, given: Given | undefined): boolean {
  if (requirement === undefined || given === undefined) return false;
  return boundsOf(requirement).some((bound) => bound.bound !== 'stated' && given.high > intervalOf(bound).high);
}

function lowestOf(requirement: Requirement | undefined): number | undefined {
  for (const bound of requirement === undefined ? [] : boundsOf(requirement)) {
    if (bound.bound === 'at_least' || bound.bound === 'between') return bound.low;
    if (bound.bound === 'exactly' || bound.bound === 'stated') return bound.value;
  }
  return undefined;
}

function wordsOf({ temp, time, a0 }: ThermalDemand): string {
  const parts = [temp, time].filter((one) => one !== undefined).map(requirementWords);
  if (a0 !== undefined) parts.push(`A0 ${requirementWords(a0)}`);
  return parts.join(' for ') || 'thermal disinfection';
}

/** The heat dose the department has adopted for this class of device. */
function judgeSiteA0(question: WashQuestion): readonly Judgement[] {
  const { device, setting, cycle } = question;
  const ofClass =
    device.class?.text === 'semi-critical'
      ? 'a0_semi_critical'
      : device.class?.text === 'non-critical'
        ? 'a0_non_critical'
        : 'a0';
  const requirement = thresholdOf(setting, ofClass, 'a0') ?? thresholdOf(setting, 'a0', 'a0');
  if (requirement === undefined || setting.site === undefined) return [];
  const factAt = phasesNamed(cycle, 'thermal')[0]?.phase?.at ?? cycle.phases?.at ?? cycle.at;
  const demand = {
    by: setting.site,
    parameter: 'thermal-disinfection',
    what: 'A0 adopted by the site',
    requirement,
  } as const;
  return [judgeA0(question, demand, factAt)];
}
