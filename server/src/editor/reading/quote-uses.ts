import { permitted, preferred } from '../../quantity/prose/named/uses.ts';
import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';
import { marked } from '../writing/marked.ts';

/** How strongly a sentence asks for a stage. */

export type UseWord = 'allowed' | 'required' | 'recommended' | 'forbidden';

const uses: readonly UseWord[] = ['allowed', 'required', 'recommended', 'forbidden'];

/** The word that the sentence says, before the others. */
export function useChoice(first: UseWord): string {
  return marked.choice([first, ...uses.filter((use) => use !== first)], 'use');
}

/** `is recommended`, `may be cleaned`, `is not necessary`: what is neither demanded nor forbidden. */
export function useSaid({ span }: StageMention, { quote, negations }: QuoteReading): UseWord {
  const isFreed = negations.some(
    ({ kind, target }) => kind === 'not-required' && target.start <= span.start && span.end <= target.end,
  );
  if (isFreed || permitted.test(quote)) return 'allowed';
  return preferred.test(quote) ? 'recommended' : 'required';
}
