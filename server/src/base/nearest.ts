import { distance } from 'fastest-levenshtein';

/** The candidate a person most likely meant by `word`, or undefined when none is near (a third of its length, at least 1). */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const wanted = word.toLowerCase();
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(Math.min(word.length, 64) / 3)) + 1;
  for (const candidate of candidates) {
    const d = candidate.toLowerCase() === wanted ? 0 : distance(wanted, candidate.toLowerCase());
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  return best;
}
