import type { Query } from '../../library/view.ts';
import { a0AskedBy } from './a0-asked.ts';
import { suitedByNone, unsuited } from './bath-uses.ts';
import { undescribed } from './department.ts';
import { isRinsedByMachine, isWaterLow } from './last-rinse.ts';
import { sharedNumbers } from './shared-numbers.ts';
import { idsShownShorter, isShownShorter } from './shorter-devices.ts';
import { itemsOnCards, washerCards } from './washer-cards.ts';
import { unfitFor, washedAt, washedWhere } from './washer-fits.ts';

/** Questions to whose answers few words say all: a later check asks them again by their names, and goes no further where nothing changed. */
export const briefQueries: readonly Query<string, unknown>[] = [
  a0AskedBy,
  idsShownShorter,
  isRinsedByMachine,
  isShownShorter,
  isWaterLow,
  itemsOnCards,
  sharedNumbers,
  suitedByNone,
  undescribed,
  unfitFor,
  unsuited,
  washedAt,
  washedWhere,
  washerCards,
];
