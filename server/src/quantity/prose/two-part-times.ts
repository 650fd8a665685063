import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { NumberReading } from './number-forms.ts';
import { unitHere } from './unit-here.ts';

/** Times that a page prints in two parts: `2:30 min`, `3 minutes 30 seconds`. */

const sixty = 60;

/** The number at the token and the two digits behind its colon, as one: 2.5 for `2:30`. Nothing where no such digits stand there. */
export function startsClock(text: ReadingText, at: number): NumberReading | undefined {
  const [whole, colon, parts] = [text.tokens[at], text.tokens[at + 1], text.tokens[at + 2]];
  if (whole === undefined || colon?.text !== ':' || parts === undefined || colon.spaced || parts.spaced)
    return undefined;
  if (!/^\d{1,3}$/.test(whole.text) || !/^[0-5]\d$/.test(parts.text)) return undefined;
  return inSixties(Number(whole.text), Number(parts.text));
}

/** What a smaller unit right behind a time adds to it, and where that ends. */
export function smallerPart(
  text: ReadingText,
  { units, amount, last, written }: NumberDraft,
): { readonly amount: NumberReading; readonly last: number } | undefined {
  const smaller = smallerOf[units.length === 1 ? (units[0]?.name ?? '') : ''];
  if (smaller === undefined || written !== 'digits' || !Number.isInteger(amount)) return undefined;
  const at = ['and', 'und', 'et'].includes(tokenText(text, last + 1)) ? last + 2 : last + 1;
  const digits = text.tokens[at];
  if (digits?.kind !== 'number' || !/^[0-5]?\d$/.test(digits.text)) return undefined;
  const unit = unitHere(text.quote, digits.end, text.language);
  if (unit === undefined || unit.units.length !== 1 || unit.units[0]?.name !== smaller) return undefined;
  let end = at;
  while ((text.tokens[end + 1]?.start ?? Infinity) < unit.end) end++;
  return { amount: inSixties(amount, Number(digits.text)), last: end };
}

const smallerOf: Readonly<Record<string, string>> = { min: 's', h: 'min' };

function inSixties(whole: number, parts: number): NumberReading {
  const amount = Math.round((whole + parts / sixty) * 1_000) / 1_000;
  return { amount, decimals: Number.isInteger(amount) ? 0 : 1, how: 'as-printed' };
}
