/**
 * `Shelf life 6 months`: by its own name a longest time, though no bound word stands beside the number. A file may say `at_most` there, or
 * `stated`.
 */
export function isShelfLife(before: string): boolean {
  return /(?:shelf[\s-]life|(?:may|can) be (?:stored|kept|held)(?:\s\p{L}+){0,3}\sfor|lagerdauer|haltbarkeit|lagerfähig|durée de conservation)\b[^.;]*$/iu.test(
    before,
  );
}
