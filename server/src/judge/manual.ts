import type { Device } from '../model/entities/device.generated.ts';
import type { Procedure, ProcedureStep } from '../model/entities/procedure.generated.ts';
import type { Quantity, Requirement } from '../model/node.ts';
import { type Agent, judgeAgent, judgeWindow } from './agents.ts';
import { judgeBrush } from './brush.ts';
import type { StageDemand } from './demands.ts';
import { givenOf, givenValue } from './given.ts';
import { type Demand, type Fact, factOf, judgeCase, judgeDemand } from './judgement.ts';
import { manualSteps, matchStep, type WantedStep, wantedSteps } from './manual-steps.ts';
import type { Judgement, Parameter } from './outcome.ts';
import { thresholdOf } from './policies.ts';
import { catchesAgent, heatLimits, judgeProhibitions, pressureLimits } from './prohibitions.ts';
import type { Setting, Stock } from './setting.ts';
import { judgeStageUse } from './stage-use.ts';
import { judgeWater } from './water.ts';

/** Cleaning one device by hand as a procedure of the department describes it. */
export interface ManualQuestion {
  readonly device: Device;
  readonly demand: StageDemand;
  readonly procedure: Procedure;
  readonly stock: Stock;
  readonly setting: Setting;
}

export function judgeManual(question: ManualQuestion): readonly Judgement[] {
  const { device, demand, procedure, setting } = question;
  const use = judgeStageUse(device, demand, procedure, setting);
  if (use.some((one) => one.outcome === 'fails')) return use;
  const steps = manualSteps(procedure, device, setting);
  const wanted = demand.voices.flatMap(wantedSteps);
  return [
    ...use,
    ...wanted.flatMap((one) => judgeWanted(question, one, steps)),
    ...judgeChemistry(question, steps),
    ...steps.flatMap((step) => judgeOwnStep(question, step)),
    ...judgeFirstWater(question, steps),
    ...judgeBrush(device, demand, steps, setting),
    ...judgeFinalWater(question, steps),
  ];
}

function judgeWanted(
  question: ManualQuestion,
  wanted: WantedStep,
  steps: readonly ProcedureStep[],
): readonly Judgement[] {
  const { device, procedure } = question;
  const where = wanted.lumen === undefined ? '' : ` of ${wanted.lumen}`;
  const facts = {
    by: device,
    what: `Step ${wanted.act}${where}`,
    required: `${wanted.act}${where}`,
    given: procedure.id?.text,
    at: wanted.at,
    src: wanted.src,
  };
  if (wanted.ambiguous !== undefined)
    return [judgeCase('manual-step', 'unclear', { ...facts, required: wanted.ambiguous.text })];
  const match = matchStep(wanted, steps, device);
  if (match.step === undefined)
    return [judgeCase('manual-step', match.which, { ...facts, factAt: procedure.steps?.at ?? procedure.at })];
  const present = judgeCase('manual-step', 'present', { ...facts, factAt: match.step.at });
  return [present, ...judgeAmounts(question, wanted, match.step)];
}

function judgeAmounts(question: ManualQuestion, wanted: WantedStep, step: ProcedureStep): readonly Judgement[] {
  const { overrides } = question.procedure;
  const isFlush = wanted.act === 'flush';
  const time = (wanted.act === 'soak' ? overrides?.soak : isFlush ? overrides?.flush_time : undefined) ?? step.time;
  const volume = (isFlush ? overrides?.flush_volume : undefined) ?? step.volume;
  const temperature: Parameter = wanted.first === true ? 'first-rinse-temperature' : 'wash-temperature';
  const amounts: readonly (readonly [string, Parameter, Requirement | undefined, Fact])[] = [
    ['Volume', 'cleaning-amount', wanted.volume, fact(volume)],
    ['Time', wanted.act === 'soak' ? 'soak' : 'cleaning-amount', wanted.time, fact(time)],
    ['Times', 'cleaning-amount', wanted.times, timesOf(wanted, step)],
    ['Temperature', temperature, wanted.temp, fact(step.temp)],
    ['Pressure', 'pressure', wanted.pressure, fact(step.pressure)],
  ];
  const judgements: Judgement[] = [];
  for (const [title, parameter, requirement, ours] of amounts) {
    if (requirement === undefined) continue;
    const what = `${title}, ${wanted.act}${wanted.lumen === undefined ? '' : ` of ${wanted.lumen}`}`;
    judgements.push(
      judged(question, { parameter, what, requirement, src: wanted.src }, { ...ours, at: ours.at ?? step.at }),
    );
  }
  return judgements;
}

function fact(quantity: Quantity | undefined): Fact {
  return factOf(quantity, givenOf(quantity));
}

/** A step that does not say how often is done once. */
function timesOf(wanted: WantedStep, step: ProcedureStep): Fact {
  const written = (wanted.act === 'actuate' ? step.actuate : undefined) ?? step.times;
  return written === undefined
    ? { given: { ...givenValue(1, 'count', 'times'), words: 'once' }, at: step.at }
    : fact(written);
}

function judged(question: ManualQuestion, demand: Omit<Demand, 'by'>, ours: Fact): Judgement {
  return judgeDemand({ by: question.device, ...demand }, ours, question.setting);
}

function agentOf(step: ProcedureStep, stock: Stock): Agent | undefined {
  const word = step.chemistry ?? step.agent;
  return word === undefined ? undefined : { word, chemistry: stock.chemistry(word.text) };
}

function judgeChemistry(question: ManualQuestion, steps: readonly ProcedureStep[]): readonly Judgement[] {
  const { device, demand, procedure, stock, setting } = question;
  const detergents = demand.voices
    .flatMap((voice) => [voice.detergent, ...(voice.steps?.items ?? []).map((step) => step.detergent)])
    .filter((one) => one !== undefined);
  const judgements: Judgement[] = [];
  const seen = new Set<string>();
  for (const step of steps) {
    const agent = agentOf(step, stock);
    if (agent === undefined) continue;
    const temp = { given: givenOf(step.temp), at: step.temp?.at };
    judgements.push(...judgeWindow(agent, `step ${step.do?.text ?? ''}`, temp, setting));
    if (seen.has(agent.word.text)) continue;
    seen.add(agent.word.text);
    judgements.push(...judgeAgent({ device, detergents, agent, method: 'manual', setting }));
  }
  const first = detergents[0];
  if (first !== undefined && seen.size === 0) {
    const facts = {
      by: device,
      required: 'a detergent as the page asks',
      given: procedure.id?.text,
      at: first.at,
      factAt: procedure.steps?.at,
      src: first.src,
    };
    judgements.push(judgeCase('chemistry', 'none-dosed', facts));
  }
  return judgements;
}

/** What each step does to the device, whatever it is for: heat, pressure, liquid, tools, forbidden acts. */
function judgeOwnStep(question: ManualQuestion, step: ProcedureStep): readonly Judgement[] {
  const { device, setting } = question;
  const judgements: Judgement[] = [];
  for (const { requirement, src } of step.temp === undefined ? [] : heatLimits(device)) {
    judgements.push(judged(question, { parameter: 'heat-limit', requirement, src }, fact(step.temp)));
  }
  const pressure = step.air?.pressure ?? step.pressure;
  for (const { requirement, src } of pressure === undefined ? [] : pressureLimits(device)) {
    judgements.push(judged(question, { parameter: 'pressure', requirement, src }, fact(pressure)));
  }
  const words = [step.tool?.text, step.do?.text, step.agent?.text].filter((word) => word !== undefined);
  const facts = { given: words.join(', '), factAt: step.do?.at ?? step.at };
  const unstocked = step.chemistry === undefined && step.agent !== undefined;
  judgements.push(
    ...judgeProhibitions(
      device,
      (what) => words.includes(what) && !(unstocked && catchesAgent(what, step.agent?.text ?? '', undefined)),
      facts,
      setting,
    ),
  );
  const immersed = judgeImmersion(question, step);
  return immersed === undefined ? judgements : [...judgements, immersed];
}

function judgeImmersion({ device, demand }: ManualQuestion, step: ProcedureStep): Judgement | undefined {
  const stated = demand.voices.find((voice) => voice.immersion !== undefined)?.immersion ?? device.immersion;
  const forbidden = device.not?.items.find((one) => one.what?.text === 'immersion');
  const limit =
    stated?.use?.text === 'forbidden' || (stated?.extent !== undefined && stated.extent.text !== 'full')
      ? stated
      : undefined;
  const isUnderLiquid = step.do?.text === 'soak' || step.extent?.text === 'full';
  if (!isUnderLiquid || (limit === undefined && forbidden === undefined)) return undefined;
  const facts = {
    by: device,
    required: limit?.extent?.text ?? 'not under liquid',
    given: step.extent?.text ?? step.do?.text,
    at: (limit ?? forbidden)?.at ?? device.at,
    factAt: step.at,
    src: (limit ?? forbidden)?.src,
  };
  if (limit?.use?.text === 'forbidden' || limit === undefined) return judgeCase('immersion', 'forbidden', facts);
  if (step.extent?.text === limit.extent?.text) return undefined;
  return judgeCase('immersion', step.extent === undefined ? 'extent-unknown' : 'too-deep', facts);
}

/** The first water, against the limit of the site; the device's own is judged with its step. */
function judgeFirstWater({ setting }: ManualQuestion, steps: readonly ProcedureStep[]): readonly Judgement[] {
  const adopted = thresholdOf(setting, 'first_rinse_temp', 'temperature');
  const wet = new Set(['rinse', 'flush', 'soak', 'brush']);
  const first =
    steps.find((step) => step.order?.text === 'first') ?? steps.find((step) => wet.has(step.do?.text ?? ''));
  if (adopted === undefined || setting.site === undefined || first?.temp === undefined) return [];
  return [
    judgeDemand(
      { by: setting.site, parameter: 'first-rinse-temperature', requirement: adopted },
      fact(first.temp),
      setting,
    ),
  ];
}

function judgeFinalWater(
  { device, demand, stock, setting }: ManualQuestion,
  steps: readonly ProcedureStep[],
): readonly Judgement[] {
  const last =
    steps.findLast((step) => step.do?.text === 'final-rinse') ??
    steps.findLast((step) => step.do?.text === 'rinse' && step.order?.text !== 'first');
  const asked = new Set(
    [device.rinse?.final, ...demand.voices.map((voice) => voice.rinse?.final)].filter((one) => one !== undefined),
  );
  const name = last?.water?.text;
  const water = name === undefined ? undefined : stock.water(name);
  return [...asked].flatMap((quality) =>
    judgeWater({ by: device, quality, water, waterName: name, factAt: last?.water?.at ?? last?.at, setting }),
  );
}
