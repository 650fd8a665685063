import type { EntityOf } from '../../model/entities.generated.ts';
import { prions } from './word-lists.ts';
import { isMentioned } from './wording.ts';

/** A procedure that is followed when prion disease is suspected. */
export function isForPrions({ when, topics }: EntityOf['procedure']): boolean {
  return (
    (when !== undefined && isMentioned(when.text, prions)) ||
    topics?.items.some((topic) => topic.text === 'prion') === true
  );
}
