import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';

/** Where a procedure says that it is for immediate use: its own word, or the first cycle of immediate use it runs. */
export function immediateUsePlace(procedure: EntityOf['procedure'], view: LibraryView): Place | undefined {
  if (procedure.context !== undefined) return procedure.context.text === 'iuss' ? procedure.context.at : undefined;
  for (const step of procedure.steps?.items ?? []) {
    if (step.cycle !== undefined && isImmediateCycle(step.cycle.text, view)) return step.cycle.at;
  }
  return undefined;
}

/** Where a set says that it is for immediate use. */
export function immediateUseOfSet(set: EntityOf['set'], view: LibraryView): Place | undefined {
  if (set.context?.text === 'iuss') return set.context.at;
  return set.cycle !== undefined && isImmediateCycle(set.cycle.text, view) ? set.cycle.at : undefined;
}

/** True when the instruction offers immediate use as an option of its own. Silence offers nothing. */
export function offersImmediateUse(device: EntityOf['device']): boolean {
  const isForbidden = device.not?.items.some((prohibition) => prohibition.what?.text === 'iuss') === true;
  return !isForbidden && device.sterilization?.any_of?.items.some((option) => option.context?.text === 'iuss') === true;
}

function isImmediateCycle(id: string, view: LibraryView): boolean {
  return view.sterilizerCycle(id)?.cycle.context?.text === 'iuss';
}
