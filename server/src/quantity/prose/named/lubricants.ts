import type { Named } from './named.ts';

/** The usual lubricants. */
export const lubricants: Named = [
  ['instrument-milk', /instrument milk|lubricant milk|instrumentenmilch|lait (?:pour instruments|lubrifiant)/],
  ['water-soluble', /water[\s-]soluble|wasserlöslich|hydrosoluble/],
];
