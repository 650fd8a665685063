import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';

/**
 * `42 min` may be 4 with footnote 2 that lost its raised place. Only where the quote shows that footnote elsewhere (`2) for ...`, `²`):
 * otherwise every two-digit number would be under suspicion.
 */
export function markSplitFootnotes(text: ReadingText, drafts: readonly NumberDraft[]): void {
  const shown = footnotesShown(text);
  if (shown.size === 0) return;
  for (const draft of drafts) {
    if (draft.isReference || draft.written === 'word') continue;
    const printed = tokenText(text, draft.first);
    const last = printed.slice(-1);
    if (printed.length < 2 || !shown.has(last)) continue;
    const amount = Number(printed.slice(0, -1).replace(',', '.'));
    if (!Number.isFinite(amount)) continue;
    draft.readings = [...draft.readings, { amount, decimals: 0, how: 'footnote-split' }];
  }
}

/** Digits that stand as footnote signs: raised, or before a bracket that nothing opened, or opening a sentence. */
function footnotesShown(text: ReadingText): ReadonlySet<string> {
  const shown = new Set<string>();
  for (const [at, token] of text.tokens.entries()) {
    if (token.kind === 'raised' && token.text.length === 1) shown.add(token.text);
    if (token.kind !== 'number' || token.text.length !== 1 || token.text === '0') continue;
    const closes = tokenText(text, at + 1) === ')' && tokenText(text, at - 1) !== '(' && at > 0;
    const opens = at > 0 && text.sentences[at - 1] !== text.sentences[at] && text.tokens[at + 1]?.kind === 'word';
    if (closes || opens) shown.add(token.text);
  }
  return shown;
}
