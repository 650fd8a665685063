import { distance } from 'fastest-levenshtein';

/** The candidate a person most likely meant by `word`, or undefined when none is near (a third of its length, at least 1). */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const wanted = word.toLowerCase();
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(Math.min(word.length, 64) / 3)) + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) >= bestDistance) continue;
    const d = editsBetween(wanted, candidate.toLowerCase());
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  return best;
}

/** True when one letter too many, too few or wrong, or two that changed places, make one word of the other. */
export function isOneSlipFrom(word: string, other: string): boolean {
  if (word === other || Math.abs(word.length - other.length) > 1) return false;
  return editsBetween(word.slice(0, 200), other.slice(0, 200)) === 1;
}

/** Two neighbouring letters that changed places count as one slip. */
function editsBetween(a: string, b: string): number {
  if (a === b) return 0;
  return isOneSwap(a, b) ? 1 : distance(a, b);
}

function isOneSwap(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2);
}
