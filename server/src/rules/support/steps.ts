import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { allDevicesOf, devicesOfStep, hasTrait } from './applies.ts';
import type { Phrase } from './wording.ts';
import { isMentioned } from './wording.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

export function stepsOf(procedure: Procedure): readonly ProcedureStep[] {
  return procedure.steps?.items ?? [];
}

/** What to underline when a whole step is meant. */
export function placeOf(step: ProcedureStep): Place {
  return (step.do ?? step.stage)?.at ?? step.at;
}

/** True when what is done, as the step words it, holds one of these. */
export function isAct(step: ProcedureStep, acts: readonly Phrase[]): boolean {
  return step.do !== undefined && isMentioned(step.do.text, acts);
}

/** `manual, soak, C1, 60 min`: the step in a few words. */
export function stepInWords(step: ProcedureStep): string {
  const { stage, chemistry, agent, tool, water, cycle, time, times, temp, volume } = step;
  const words = [stage, step.do, chemistry, agent, tool, water, cycle, volume, times, time, temp].map(
    (one) => one?.text,
  );
  return words.filter((word) => word !== undefined).join(', ');
}

/** Everything the step touches, those meant by "everything" or by a trait included. Reads every device file where a procedure is for all. */
export function reachOf(step: ProcedureStep, procedure: Procedure, view: LibraryView): readonly Device[] {
  if (step.applies_to !== undefined) return devicesOfStep(step, procedure, view);
  return step.applies_to_all?.on === true ? view.all('device') : allDevicesOf(procedure, view);
}

/** Whether the step touches the device: the same without a look at any other. */
export function reaches(step: ProcedureStep, procedure: Procedure, device: Device, view: LibraryView): boolean {
  if (step.applies_to === undefined && (step.applies_to_all?.on === true || isForAnyLike(device, procedure)))
    return true;
  return devicesOfStep(step, procedure, view).includes(device);
}

function isForAnyLike(device: Device, { applies_to_all, applies_to_traits }: Procedure): boolean {
  return applies_to_all?.on === true || applies_to_traits?.items.some((trait) => hasTrait(device, trait.text)) === true;
}

/** Stages by which an item has left cleaning. */
const later: ReadonlySet<string> = new Set([
  ...[
    'drying',
    'inspection',
    'lubrication',
    'assembly',
    'packaging',
    'loading',
    'steam',
    'low-temperature',
    'sterilization',
  ],
  ...['aeration', 'cooling', 'release', 'storage', 'use'],
]);

export function isPastCleaning(stage: { readonly text: string } | undefined): boolean {
  return stage !== undefined && later.has(stage.text);
}

const cleaning: ReadonlySet<string> = new Set(['manual', 'ultrasonic', 'mechanical']);

export function isCleaning(stage: { readonly text: string } | undefined): boolean {
  return stage !== undefined && cleaning.has(stage.text);
}

/**
 * Where a procedure lets items in behind cleaning: its own first stage, or the first step that needs a cleaned item with no cleaning
 * before it. Undefined when it begins early enough, or says nothing of the kind.
 */
export function entryPastCleaning(procedure: Procedure): { readonly at: Place; readonly stage: string } | undefined {
  const { starts_at } = procedure;
  if (starts_at !== undefined && isPastCleaning(starts_at)) return { at: starts_at.at, stage: starts_at.text };
  for (const step of stepsOf(procedure)) {
    if (isCleaning(step.stage) || step.stage?.text === 'quarantine') return undefined;
    if (step.stage !== undefined && isPastCleaning(step.stage)) return { at: step.stage.at, stage: step.stage.text };
  }
  return undefined;
}

/**
 * Procedures for a device: first those that name it or a set it is in, then those for everything or for a trait of it.
 */
export function* proceduresFor(device: Device, view: LibraryView): Iterable<Procedure> {
  const { id } = rootOfEntity(device);
  const named = new Set(view.users('device', id, 'procedure'));
  for (const set of view.users('device', id, 'set')) {
    for (const procedure of view.users('set', rootOfEntity(set).id, 'procedure')) named.add(procedure);
  }
  yield* named;
  for (const procedure of view.proceduresForMany()) {
    if (isForAnyLike(device, procedure) && !named.has(procedure)) yield procedure;
  }
}
