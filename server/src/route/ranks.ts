import type { Judgement, Outcome } from '../judge/outcome.ts';
import { outcomes } from '../judge/outcome.ts';

/** Judgements with their worst outcome as a number (index in `outcomes`), so that thousands of candidates can be compared quickly. */
export interface Ranked {
  readonly rank: number;
  /** How many are questions. */
  readonly open: number;
  readonly judgements: readonly Judgement[];
}

export const failing = outcomes.indexOf('fails');
export const asking = outcomes.indexOf('needs-answer');

export function ranked(judgements: readonly Judgement[]): Ranked {
  let rank = 0;
  let open = 0;
  for (const { outcome } of judgements) {
    rank = Math.max(rank, rankOf(outcome));
    if (outcome === 'needs-answer') open++;
  }
  return { rank, open, judgements };
}

export function rankOf(outcome: Outcome): number {
  return outcomes.indexOf(outcome);
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
    const score = scoreOf(fit.judgements);
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

function scoreOf(judgements: readonly Judgement[]): number {
  let score = hasGate(judgements) ? 1_000_000_000 : 0;
  for (const { outcome } of judgements) score += weights[outcome];
  return score;
}
