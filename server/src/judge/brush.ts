import type { Brush } from '../model/entities/brush.generated.ts';
import type { Device, Lumen } from '../model/entities/device.generated.ts';
import type { ProcedureStep } from '../model/entities/procedure.generated.ts';
import type { StageDemand } from './demands.ts';
import { givenOf } from './given.ts';
import { type CaseOf, factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { thresholdOf } from './policies.ts';
import type { Setting } from './setting.ts';

/** The brush of each brushing step against the page, and against the bore and length of the lumen it goes through, asked for or not. */
export function judgeBrush(
  device: Device,
  demand: StageDemand,
  steps: readonly ProcedureStep[],
  setting: Setting,
): readonly Judgement[] {
  const asked: readonly Brush[] = demand.voices
    .flatMap((voice) => [voice.brush, ...(voice.steps?.items ?? []).map((step) => step.brush)])
    .filter((one) => one !== undefined);
  const judgements: Judgement[] = [];
  for (const step of steps) {
    if (step.do?.text !== 'brush' || (asked.length === 0 && step.brush === undefined)) continue;
    for (const brush of asked) judgements.push(...judgeAsked(device, brush, step, setting));
    for (const lumen of lumensFor(device, asked, step)) judgements.push(judgeFit(device, lumen, step, setting));
  }
  return judgements;
}

function lumensFor(device: Device, asked: readonly Brush[], step: ProcedureStep): readonly Lumen[] {
  const lumens = device.lumens?.items ?? [];
  const named = new Set(
    [step.lumen?.text ?? step.port?.text, ...asked.map((brush) => brush.lumen?.text)].filter(
      (one) => one !== undefined,
    ),
  );
  const those = lumens.filter((lumen) => named.has(lumen.id?.text ?? '') || named.has(lumen.port?.text ?? ''));
  return those.length > 0 ? those : lumens.length === 1 ? lumens : [];
}

function judgeAsked(by: Device, brush: Brush, step: ProcedureStep, setting: Setting): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const part of ['diameter', 'length'] as const) {
    const requirement = brush[part];
    if (requirement === undefined) continue;
    const ours = step.brush?.[part];
    const what = part === 'diameter' ? 'Diameter of the brush' : 'Length of the brush';
    judgements.push(
      judgeDemand(
        { by, parameter: 'brush', what, requirement, src: brush.src },
        { ...factOf(ours, givenOf(ours)), at: ours?.at ?? step.at },
        setting,
      ),
    );
  }
  return judgements;
}

/** Every wall must be touched, end to end. How much thicker than the bore a brush may be is the site's to say. */
function judgeFit(by: Device, lumen: Lumen, step: ProcedureStep, setting: Setting): Judgement {
  const bore = givenOf(lumen.bore);
  const length = givenOf(lumen.length);
  const thick = givenOf(step.brush?.diameter);
  const long = givenOf(step.brush?.length);
  const most = givenOf(thresholdOf(setting, 'brush_oversize', 'number')?.at_most)?.high;
  let which: CaseOf<'brush'> = 'fits';
  if (thick === undefined || bore === undefined) which = 'not-given';
  else if (thick.high < bore.low) which = 'too-thin';
  else if (most !== undefined && thick.low > bore.high * most) which = 'too-thick';
  else if (length !== undefined && long === undefined) which = 'not-given';
  else if (length !== undefined && long !== undefined && long.high < length.low) which = 'too-short';
  const required = [bore?.words, length?.words].filter((one) => one !== undefined).join(' × ');
  const given = [thick?.words, long?.words].filter((one) => one !== undefined).join(' × ');
  return judgeCase('brush', which, {
    by,
    what: `Brush for ${lumen.id?.text ?? 'the lumen'}`,
    required,
    given,
    at: lumen.at,
    factAt: step.brush?.at ?? step.at,
    src: lumen.src,
  });
}
