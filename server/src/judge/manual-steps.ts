import type { CleaningStep } from '../model/entities/cleaning-step.generated.ts';
import type { Device } from '../model/entities/device.generated.ts';
import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { Procedure, ProcedureStep } from '../model/entities/procedure.generated.ts';
import type { Citation, Place, Requirement, Text } from '../model/node.ts';
import { holds, type Setting } from './setting.ts';

/** One thing the page wants done by hand, from a step of its own or from a field such as `soak` or `flush`. */
export interface WantedStep {
  readonly act: string;
  readonly at: Place;
  readonly src: Citation | undefined;
  /** The lumen or port it is for. */
  readonly lumen?: string | undefined;
  readonly first?: boolean;
  readonly ambiguous?: Text | undefined;
  readonly volume?: Requirement | undefined;
  readonly time?: Requirement | undefined;
  readonly times?: Requirement | undefined;
  readonly temp?: Requirement | undefined;
  readonly pressure?: Requirement | undefined;
}

/** Everything the page wants done by hand at one place that speaks of it. What is silent or does not apply is left out. */
export function wantedSteps(voice: CleaningNode): readonly WantedStep[] {
  const wanted = (voice.steps?.items ?? [])
    .filter((step) => step.silent?.on !== true && step.not_applicable === undefined)
    .map((step) => fromStep(step, voice.src));
  const { src, soak, soak_temp, flush, first_rinse, actuate, strokes, brush_time, brush, rinse } = voice;
  if (isNumber(soak) || soak_temp !== undefined) {
    wanted.push({ act: 'soak', at: (soak ?? soak_temp)?.at ?? voice.at, src, time: soak, temp: soak_temp });
  }
  if (flush !== undefined && flush.silent?.on !== true && flush.required?.on !== false) {
    const { volume, time, times, temp, pressure, ambiguous } = flush;
    wanted.push({
      act: 'flush',
      at: flush.at,
      src: flush.src ?? src,
      lumen: flush.lumen?.text ?? flush.port?.text,
      volume,
      time,
      times,
      temp,
      pressure,
      ambiguous,
    });
  }
  if (first_rinse !== undefined && first_rinse.silent?.on !== true) {
    const { temp, time, volume, ambiguous } = first_rinse;
    wanted.push({
      act: 'rinse',
      first: true,
      at: first_rinse.at,
      src: first_rinse.src ?? src,
      temp,
      time,
      volume,
      ambiguous,
    });
  }
  if (isNumber(actuate)) wanted.push({ act: 'actuate', at: actuate.at, src, times: actuate });
  if (isNumber(strokes) || isNumber(brush_time) || brush?.required?.on === true) {
    wanted.push({
      act: 'brush',
      at: (brush ?? strokes ?? brush_time)?.at ?? voice.at,
      src: brush?.src ?? src,
      lumen: brush?.lumen?.text,
      times: strokes ?? brush?.strokes,
      time: brush_time ?? brush?.time,
    });
  }
  if (
    rinse !== undefined &&
    rinse.silent?.on !== true &&
    rinse.use?.text !== 'silent' &&
    rinse.use?.text !== 'forbidden'
  ) {
    const { time, times, temp, volume, ambiguous } = rinse;
    if ([time, times, temp, volume].some((one) => one !== undefined))
      wanted.push({ act: 'rinse', at: rinse.at, src: rinse.src ?? src, time, times, temp, volume, ambiguous });
  }
  return wanted;
}

function isNumber(requirement: Requirement | undefined): requirement is Requirement {
  return requirement !== undefined && requirement.silent?.on !== true && requirement.not_applicable === undefined;
}

function fromStep(step: CleaningStep, around: Citation | undefined): WantedStep {
  const { volume, time, times, temp, pressure, ambiguous } = step;
  return {
    act: step.do?.text ?? 'step',
    at: step.at,
    src: step.src ?? around,
    lumen: step.lumen?.text ?? step.port?.text,
    first: step.order?.text === 'first',
    ...{ volume, time, times, temp, pressure, ambiguous },
  };
}

/** The steps of a procedure that are done by hand on this device in this situation, in order. */
export function manualSteps(procedure: Procedure, device: Device, setting: Setting): readonly ProcedureStep[] {
  const byHand = new Set([undefined, 'manual', 'rinse', 'disassembly']);
  return (procedure.steps?.items ?? []).filter((step) => {
    if (!byHand.has(step.stage?.text) || !holds(setting, step.when)) return false;
    return step.applies_to === undefined || step.applies_to.items.some((one) => one.text === device.id?.text);
  });
}

export type Match =
  | { readonly step: ProcedureStep }
  | { readonly step: undefined; readonly which: 'missing' | 'port-forgotten' };

/** The step of the procedure that does what is wanted, at the port it is wanted for. */
export function matchStep(wanted: WantedStep, steps: readonly ProcedureStep[], device: Device): Match {
  const same = steps.filter((step) => step.do?.text === wanted.act);
  const first = wanted.first === true ? same.filter((step) => step.order?.text === 'first') : same;
  const candidates = first.length > 0 ? first : same;
  if (candidates[0] === undefined) return { step: undefined, which: 'missing' };
  if (wanted.lumen === undefined) return { step: candidates[0] };
  const step = candidates.find((one) => reaches(one, wanted.lumen ?? '', device));
  return step === undefined ? { step: undefined, which: 'port-forgotten' } : { step };
}

/** Does the step name this lumen, or its port, or every port? A step that names none reaches the only one. */
function reaches(step: ProcedureStep, name: string, device: Device): boolean {
  const lumens = device.lumens?.items ?? [];
  const lumen = lumens.find((one) => one.id?.text === name || one.port?.text === name);
  const named = [step.lumen?.text, step.port?.text].filter((one) => one !== undefined);
  if (named.length === 0) return step.per_port?.on === true || lumens.length <= 1;
  return named.some((one) => one === name || one === lumen?.id?.text || one === lumen?.port?.text);
}
