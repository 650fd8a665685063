/** Words that say what a number means, and what stands in the place of a number. At most one of them belongs in a requirement. */
export const sayingWords: ReadonlySet<string> = new Set([
  'at_least',
  'at_most',
  'between',
  'exactly',
  'stated',
  'about',
  'silent',
  'ambiguous',
  'not_applicable',
  'defers_to',
  'conflict',
  'specific',
]);
