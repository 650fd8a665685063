import type { Query } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { listOfIds } from './brief.ts';
import { partsOf } from './entity-parts.ts';

/** What of a set's file says what is washed in which cycle. */
interface WasherCard {
  readonly cycles: readonly string[];
  readonly items: readonly string[];
}

/** By the id of a set: those of all files that claim it. */
export const washerCards: Query<string, readonly WasherCard[]> = {
  name: 'washer cycles that a set names, and its items',
  work: (view, id) => view.claimants('set', id).map((set) => ({ cycles: cyclesIn(set), items: itemsIn(set) })),
  brief: {
    inWords: (cards) => JSON.stringify(cards),
    fromWords: (words) => JSON.parse(words) as readonly WasherCard[],
  },
};

/** By the id of a washer cycle. A set that changes elsewhere leaves the answer alone, and no other set is read for it. */
export const itemsOnCards: Query<string, readonly string[]> = {
  name: 'items of the sets that name a washer cycle',
  work(view, cycle) {
    const items = new Set<string>();
    for (const id of view.idsOfUsers('washer-cycle', cycle, 'set'))
      for (const card of view.ask(washerCards, id))
        if (card.cycles.includes(cycle)) for (const item of card.items) items.add(item);
    return [...items];
  },
  brief: listOfIds,
};

function cyclesIn(set: EntityOf['set']): readonly string[] {
  const cycles = new Set<string>();
  for (const { refers, text } of partsOf(set).references) if (refers.includes('washer-cycle')) cycles.add(text);
  return [...cycles];
}

function itemsIn({ members }: EntityOf['set']): readonly string[] {
  return members?.items.flatMap(({ device }) => device?.text ?? []) ?? [];
}
