import type { Line } from '../../../server/src/print/piece.ts';
import { plain } from '../../../server/src/print/piece.ts';
import { numbersIn, valueAt } from '../traced.ts';
import { type Asked, amountIn, type Fault, originsOf } from './asked.ts';

/* What stands on the pages: bounds as the quoted sentence words them, lines as the plain files hold them. */

/** The words of the three languages in which the demo pages are written. */
const least =
  /\b(?:at least|no less than|not less than|minimum(?: of)?|not below|or longer|or more|mindestens|au moins)(?!\p{L})/giu;
const most =
  /(?:\b(?:at most|up to|no more than|not more than|no longer than|no later than|maximum(?: of)?|not exceed|within|not above|or less|or shorter|au plus|pas dépasser|innerhalb von)|höchstens|nicht überschreiten)(?!\p{L})/giu;

/** How the sentence words the number: by the word of bounds that stands nearest to it. Undefined where there is none. */
export function boundInSentence(quote: string, number: string): 'at_least' | 'at_most' | undefined {
  const at = [...quote.matchAll(/\d+(?:[.,]\d+)?/g)].find(([one]) => Number(one.replace(',', '.')) === Number(number));
  if (at === undefined) return undefined;
  const near = (pattern: RegExp): number =>
    Math.min(Number.POSITIVE_INFINITY, ...[...quote.matchAll(pattern)].map(({ index }) => Math.abs(index - at.index)));
  const [up, down] = [near(least), near(most)];
  if (up === down) return undefined;
  return up < down ? 'at_least' : 'at_most';
}

/** The sentence itself decides which way its number binds. */
export function boundFault({ draft }: Asked): Fault {
  const quote = /“(.*)”/s.exec(plain(draft.text))?.[1] ?? '';
  const [number = ''] = numbersIn(plain(draft.right));
  const bound = boundInSentence(quote, number);
  if (bound === undefined) return `no bound word by ${number} in "${quote}"`;
  const expected = bound === 'at_least' ? ' or more' : ' or less';
  if (!plain(draft.right).endsWith(expected)) return `the sentence says ${bound}`;
  const twin = draft.wrong.find((line) => plain(line).endsWith(expected));
  return twin === undefined ? undefined : `${plain(twin)} is right too`;
}

/** One line has a number that its field does not hold; all others are held by theirs. */
export function errorFault({ draft, files }: Asked): Fault {
  const isTrue = (line: Line): boolean => {
    const words = line.slice(1);
    const origins = originsOf(words);
    const held = origins.flatMap((origin) => numbersIn(String(valueAt(files, origin) ?? '')).map(Number));
    const shown = numbersIn(words.map((piece) => (typeof piece === 'string' ? '' : piece.text)).join(' ')).map(Number);
    return shown.length > 0 && shown.every((number) => held.includes(number)) && bindsAlike(plain(words), origins);
  };
  if (isTrue(draft.right)) return 'the line stands on the page';
  if (!harms(draft.right, files)) return 'the spoilt number is within what the page allows';
  const spoilt = draft.wrong.find((line) => !isTrue(line));
  return spoilt === undefined ? undefined : `"${plain(spoilt)}" does not stand on a page either`;
}

/** `at least` where the field says so, `at most` where it says so. */
function bindsAlike(words: string, origins: readonly string[]): boolean {
  const says = words.includes('at least') ? 'at_least' : words.includes('at most') ? 'at_most' : undefined;
  const [last = ''] = origins;
  const does = /\.(at_least|at_most)$/.exec(last)?.[1];
  return says === does;
}

/** The spoilt limit lets through what the page does not. */
function harms(line: Line, files: Asked['files']): boolean {
  const value = line.findLast((piece) => typeof piece === 'object' && 'from' in piece);
  const origin = typeof value === 'object' && 'from' in value ? (value.from[0] ?? '') : '';
  const page = amountIn(String(valueAt(files, origin)));
  const shown = amountIn(typeof value === 'object' ? value.text : '');
  return origin.endsWith('.at_least') ? shown < page : origin.endsWith('.at_most') && shown > page;
}
