import type { Chemistry } from '../model/entities/chemistry.generated.ts';
import type { Detergent } from '../model/entities/detergent.generated.ts';
import type { Device } from '../model/entities/device.generated.ts';
import type { Place, Requirement, Text } from '../model/node.ts';
import { isPast } from './evidence.ts';
import { type Given, givenByLabel, givenOf } from './given.ts';
import { type CaseOf, factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { catchesAgent, judgeProhibitions, phLimits } from './prohibitions.ts';
import type { Setting } from './setting.ts';
import { classesAsked, classesWithoutPh, detergentClasses } from './vocabulary.ts';

/** An agent that touches the device: the word by which the machine or procedure names it, and its file where there is one. */
export interface Agent {
  readonly word: Text;
  readonly chemistry: Chemistry | undefined;
}

export type CleaningMethod = 'manual' | 'ultrasonic' | 'mechanical' | 'disinfection';

export interface AgentQuestion {
  readonly device: Device;
  /** What the page asks of the detergent, at every place that speaks of it. */
  readonly detergents: readonly Detergent[];
  readonly agent: Agent;
  readonly method: CleaningMethod;
  readonly setting: Setting;
}

/** Does this agent clean, or is it an extra such as lubricant or rinse aid? Unknown agents count as extras. */
export function isDetergent({ chemistry }: Agent): boolean {
  return chemistry?.class !== undefined && detergentClasses.has(chemistry.class.text);
}

/** One agent against the device: prohibitions, supply, method, materials, pH as used, and the detergent asked for. */
export function judgeAgent(question: AgentQuestion): readonly Judgement[] {
  const { device, agent, setting } = question;
  const facts = { given: agent.word.text, factAt: agent.word.at };
  const judgements = [
    ...judgeProhibitions(device, (what) => catchesAgent(what, agent.word.text, agent.chemistry), facts, setting),
  ];
  const { chemistry } = agent;
  if (chemistry === undefined) return judgements;
  judgements.push(
    ...judgeSupply(question, chemistry),
    ...judgeMaterials(question, chemistry),
    ...judgeLimitPh(question, chemistry),
  );
  if (!isDetergent(agent)) return judgements;
  return [...judgements, ...question.detergents.flatMap((asked) => judgeAsked(question, asked, chemistry))];
}

/** The pH as used alone: the judgements of `judgeAgent` on it. */
export function judgePh(question: AgentQuestion): readonly Judgement[] {
  const { chemistry } = question.agent;
  if (chemistry === undefined) return [];
  const judgements = [...judgeLimitPh(question, chemistry)];
  for (const { ph, src } of isDetergent(question.agent) ? question.detergents : [])
    if (ph !== undefined) judgements.push(judgeAskedPh(question, ph, src, chemistry));
  return judgements.filter(({ parameter }) => parameter === 'ph');
}

function judgeSupply({ agent, method, setting }: AgentQuestion, chemistry: Chemistry): readonly Judgement[] {
  const judgements: Judgement[] = [];
  const { discontinued_on, methods } = chemistry;
  const factAt = agent.word.at;
  if (discontinued_on !== undefined && isPast(discontinued_on, setting.today)) {
    const given = `${agent.word.text}, discontinued ${discontinued_on.text}`;
    judgements.push(
      judgeCase('chemistry', 'discontinued', {
        by: chemistry,
        required: 'an agent that is still supplied',
        given,
        at: discontinued_on.at,
        factAt,
      }),
    );
  }
  if (isDetergent(agent) && methods?.items.some((one) => one.text === method) !== true) {
    const which = methods === undefined ? 'method-unknown' : 'wrong-method';
    const required = methods?.items.map((one) => one.text).join(', ') ?? '';
    judgements.push(
      judgeCase('chemistry', which, {
        by: chemistry,
        required,
        given: method,
        at: methods?.at ?? chemistry.id?.at ?? chemistry.at,
        factAt,
        src: chemistry.src,
      }),
    );
  }
  return judgements;
}

/** Materials that the label names, and pairs that the site knows to harm though the pH fits. */
function judgeMaterials({ device, agent, setting }: AgentQuestion, chemistry: Chemistry): readonly Judgement[] {
  const judgements: Judgement[] = [];
  const materials = device.materials?.items ?? [];
  for (const material of materials) {
    const named = chemistry.unsuitable_materials?.items.find((one) => one.text === material.text);
    const facts = { required: `not on ${material.text}`, given: agent.word.text, factAt: material.at };
    if (named !== undefined)
      judgements.push(
        judgeCase('chemistry', 'harms-material', { by: chemistry, ...facts, at: named.at, src: chemistry.src }),
      );
    for (const pair of setting.site?.material_conflicts?.items ?? []) {
      if (setting.site === undefined || pair.material?.text !== material.text || pair.agent === undefined) continue;
      if (!isOrHolds(chemistry, pair.agent.text)) continue;
      judgements.push(judgeCase('chemistry', 'harms-material', { by: setting.site, ...facts, at: pair.at }));
    }
  }
  return judgements;
}

function isOrHolds(chemistry: Chemistry, word: string): boolean {
  return (
    chemistry.id?.text === word ||
    chemistry.class?.text === word ||
    chemistry.ingredients?.items.some((one) => one.text === word) === true
  );
}

/**
 * The device's pH limits hold for every agent, not only for detergents. A pH that no file gives is a question, except for classes
 * whose labels seldom state one.
 */
function judgeLimitPh({ device, agent, setting }: AgentQuestion, chemistry: Chemistry): readonly Judgement[] {
  return phLimits(device).flatMap(({ requirement, src }) => {
    const ours = phGiven(chemistry, requirement.of?.text);
    if (ours.given === undefined) {
      const seldom = chemistry.class !== undefined && classesWithoutPh.has(chemistry.class.text);
      return seldom ? [] : [phUnknown(device, agent, ours.which, requirement.at)];
    }
    const demand = { by: device, parameter: 'ph', requirement, src } as const;
    return [judgeDemand(demand, { given: ours.given, at: ours.at }, setting)];
  });
}

type Ph =
  | { readonly given: Given; readonly at: Place }
  | { readonly given: undefined; readonly which: CaseOf<'chemistry'> };

/** The pH in use, unless the page speaks of the concentrate. A pH without a basis is a question. */
function phGiven(chemistry: Chemistry, basis: 'in-use' | 'concentrate' | undefined): Ph {
  const label = basis === 'concentrate' ? chemistry.ph_concentrate : chemistry.ph_in_use;
  const given = givenByLabel(label);
  if (label !== undefined && given !== undefined) return { given, at: label.at };
  return { given: undefined, which: chemistry.ph === undefined ? 'ph-unknown' : 'ph-basis' };
}

function phUnknown(by: Device, agent: Agent, which: CaseOf<'chemistry'>, at: Place): Judgement {
  return judgeCase('chemistry', which, {
    by,
    required: 'a known pH',
    given: agent.word.text,
    at,
    factAt: agent.word.at,
  });
}

function judgeAsked(question: AgentQuestion, asked: Detergent, chemistry: Chemistry): readonly Judgement[] {
  const { device, agent, setting } = question;
  const facts = {
    by: device,
    given: `${agent.word.text} (${chemistry.class?.text ?? 'no class'})`,
    factAt: agent.word.at,
    src: asked.src,
  };
  const judgements: Judgement[] = [];
  if (asked.ambiguous !== undefined) {
    judgements.push(
      judgeCase('chemistry', 'class-not-measurable', {
        ...facts,
        required: asked.ambiguous.text,
        at: asked.ambiguous.at,
      }),
    );
  }
  const classes = asked.class?.items ?? [];
  if (classes.length > 0) {
    const required = classes.map((one) => one.text).join(' or ');
    judgements.push(
      judgeCase('chemistry', classCase(classes, asked, chemistry), {
        ...facts,
        required,
        at: asked.class?.at ?? asked.at,
      }),
    );
  }
  if (asked.low_foaming?.on === true && chemistry.foam?.text !== 'low') {
    const which = chemistry.foam === undefined ? 'class-unknown' : 'wrong-class';
    judgements.push(judgeCase('chemistry', which, { ...facts, required: 'low-foaming', at: asked.low_foaming.at }));
  }
  if (asked.ph !== undefined) judgements.push(judgeAskedPh(question, asked.ph, asked.src, chemistry));
  if (asked.dose !== undefined) {
    const demand = {
      by: device,
      parameter: 'cleaning-amount',
      what: 'Dose',
      requirement: asked.dose,
      src: asked.src,
    } as const;
    judgements.push(judgeDemand(demand, factOf(chemistry.dose, givenOf(chemistry.dose)), setting));
  }
  return [...judgements, ...judgeNamed(asked, chemistry, facts), ...judgeExcluded(asked, chemistry, facts)];
}

function judgeAskedPh(
  { device, agent, setting }: AgentQuestion,
  requirement: Requirement,
  src: Detergent['src'],
  chemistry: Chemistry,
): Judgement {
  const ours = phGiven(chemistry, requirement.of?.text);
  if (ours.given === undefined) return phUnknown(device, agent, ours.which, requirement.at);
  return judgeDemand({ by: device, parameter: 'ph', requirement, src }, { given: ours.given, at: ours.at }, setting);
}

/** Best of the classes the page names; one of them will do. `low-foaming` is a property, `mild` is not measurable. */
function classCase(classes: readonly Text[], asked: Detergent, chemistry: Chemistry): CaseOf<'chemistry'> {
  const ours = chemistry.class?.text;
  let which: CaseOf<'chemistry'> = 'wrong-class';
  for (const { text } of classes) {
    if (text === 'low-foaming') {
      if (chemistry.foam?.text === 'low') return 'suitable';
      if (chemistry.foam === undefined) which = 'class-unknown';
      continue;
    }
    if (text === 'mild') {
      if (asked.ph === undefined) which = 'class-not-measurable';
      else return 'suitable';
      continue;
    }
    if (ours === undefined) return 'class-unknown';
    if (text === ours || classesAsked[text]?.is.includes(ours) === true) return 'suitable';
    if (classesAsked[text]?.ask.includes(ours) === true) which = 'class-unknown';
  }
  return which;
}

type AgentFacts = {
  readonly by: Device;
  readonly given: string;
  readonly factAt: Place;
  readonly src: Detergent['src'];
};

function judgeNamed(asked: Detergent, chemistry: Chemistry, facts: AgentFacts): readonly Judgement[] {
  const named = asked.named?.items ?? [];
  if (named.length === 0 || named.some((one) => one.text === chemistry.id?.text || one.text === chemistry.name?.text))
    return [];
  const required = named.map((one) => one.text).join(' or ');
  return [judgeCase('chemistry', 'not-named', { ...facts, required, at: asked.named?.at ?? asked.at })];
}

function judgeExcluded(asked: Detergent, chemistry: Chemistry, facts: AgentFacts): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const excluded of asked.without?.items ?? []) {
    const required = `without ${excluded.text}`;
    if (catchesAgent(excluded.text, facts.given, chemistry))
      judgements.push(judgeCase('chemistry', 'holds-excluded', { ...facts, required, at: excluded.at }));
    else if (!isKnownToLack(chemistry, excluded.text))
      judgements.push(judgeCase('chemistry', 'contents-unknown', { ...facts, required, at: excluded.at }));
  }
  return judgements;
}

/** A list of ingredients leaves out what the agent does not hold; on enzymes the file can speak alone. */
function isKnownToLack({ ingredients, enzymatic }: Chemistry, what: string): boolean {
  return ingredients !== undefined || (what === 'enzymatic' && enzymatic !== undefined && !enzymatic.on);
}

/** The agent's own working window where it is used: temperature and time. Its label binds together with the device's page. */
export function judgeWindow(
  agent: Agent,
  where: string,
  temp: { given: Given | undefined; at?: Place | undefined },
  setting: Setting,
): readonly Judgement[] {
  const { chemistry } = agent;
  if (chemistry?.temp === undefined || temp.given === undefined) return [];
  const what = `Temperature for ${agent.word.text}, ${where}`;
  return [
    judgeDemand(
      { by: chemistry, parameter: 'wash-temperature', what, requirement: chemistry.temp, src: chemistry.src },
      temp,
      setting,
    ),
  ];
}
