import type { Judgement, Outcome } from '../judge/outcome.ts';
import { outcomeRanks, outcomes } from '../judge/outcome.ts';

/** Judgements as numbers, so that thousands of candidates can be compared quickly. */
export interface Score {
  /** Index in `outcomes` of the worst one. */
  readonly rank: number;
  /** How many are questions. */
  readonly open: number;
  /** How many meet with a note. */
  readonly notes: number;
}

export interface Ranked extends Score {
  readonly judgements: readonly Judgement[];
}

export const failing = outcomes.indexOf('fails');
export const asking = outcomes.indexOf('needs-answer');

export function ranked(judgements: readonly Judgement[]): Ranked {
  return { ...scoreOf(judgements), judgements };
}

export function scoreOf(judgements: readonly Judgement[]): Score {
  let rank = 0;
  let open = 0;
  let notes = 0;
  for (const { outcome } of judgements) {
    rank = Math.max(rank, rankOf(outcome));
    if (outcome === 'needs-answer') open++;
    if (outcome === 'meets-with-note') notes++;
  }
  return { rank, open, notes };
}

export const hopeless: Score = { rank: failing, open: 0, notes: 0 };
export const nothing: Score = { rank: 0, open: 0, notes: 0 };

/** Both together: the worse outcome, and all that is open. */
export function joined(a: Score, b: Score): Score {
  return { rank: Math.max(a.rank, b.rank), open: a.open + b.open, notes: a.notes + b.notes };
}

/** Does not fail, and is better: by outcome, then by what is open, then by notes. */
export function isBetter(score: Score, than: Score): boolean {
  if (score.rank === failing || score.rank > than.rank) return false;
  return score.rank < than.rank || score.open < than.open || (score.open === than.open && score.notes < than.notes);
}

export function rankOf(outcome: Outcome): number {
  return outcomeRanks[outcome];
}

export function outcomeOf(rank: number): Outcome {
  return outcomes[rank] ?? 'fails';
}

export const gateParameters: ReadonlySet<string> = new Set(['identity', 'modality', 'context', 'immediate-use']);

/** Does the option belong to another kind of cycle altogether? Then its numbers say nothing. */
export function hasGate(judgements: readonly Judgement[]): boolean {
  return judgements.some(({ outcome, parameter }) => outcome === 'fails' && gateParameters.has(parameter));
}

/** The best of several fits: by outcome, then by how much is open, then in the order given. */
export function bestFit<Fit extends { readonly judgements: readonly Judgement[] }>(
  fits: readonly Fit[],
): Fit | undefined {
  let best: Fit | undefined;
  let bestScore = Number.POSITIVE_INFINITY;
  for (const fit of fits) {
    const score = weightOf(fit.judgements);
    if (score < bestScore) {
      best = fit;
      bestScore = score;
    }
  }
  return best;
}

const weights: Readonly<Record<Outcome, number>> = {
  meets: 0,
  'meets-with-note': 1,
  'needs-answer': 1_000,
  fails: 1_000_000,
};

function weightOf(judgements: readonly Judgement[]): number {
  let score = hasGate(judgements) ? 1_000_000_000 : 0;
  for (const { outcome } of judgements) score += weights[outcome];
  return score;
}
