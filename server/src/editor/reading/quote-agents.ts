import { bristles, softBrush } from '../../quantity/prose/named/brushes.ts';
import { cleaners, detergentClasses } from '../../quantity/prose/named/detergents.ts';
import { firstOf, wordFor } from '../../quantity/prose/named/named.ts';
import { waterGrades, watersIn } from '../../quantity/prose/named/water.ts';
import { marked } from '../writing/marked.ts';

/** What a sentence does its step with: the water, the detergent and the brush that it names, in the words of our lists. */

/** `a soft nylon brush`: what the brush is like. */
export function brushWords(quote: string): readonly (readonly [string, string])[] {
  const material = firstOf(bristles, quote);
  return [
    ...(material === undefined ? [] : [['material', material.toLowerCase()] as const]),
    ...(softBrush.test(quote) ? [['soft', 'true'] as const] : []),
  ];
}

/** `grade: critical`, as the page names the water. Where it names another water, the grade is left for the reader to choose. */
export function waterIn(quote: string): readonly string[] {
  const [water] = watersIn(quote.toLowerCase());
  if (water === undefined) return [];
  const { grade } = water;
  return [`grade: ${grade === undefined ? marked.hole('grade') : gradeChoice(grade)}`];
}

export function gradeChoice(grade: string): string {
  return marked.choice([grade, ...waterGrades.filter((one) => one !== grade)], 'grade');
}

/** The grade where the page names one of ours; nothing for another water, and where it names several. */
export function gradeIn(quote: string): string | undefined {
  const grades = new Set(watersIn(quote.toLowerCase()).map(({ grade }) => grade));
  return grades.size === 1 ? [...grades][0] : undefined;
}

/** `detergent: {class: [enzymatic]}`; nothing where the sentence speaks of what is not to be used, or leaves a choice. */
export function detergentIn(quote: string): readonly string[] {
  const found = classOf(quote);
  return found === undefined ? [] : [`detergent: {class: [${found}]}`];
}

/** `not less than 5 min` denies nothing, and `or longer` leaves no choice of detergents. */
const boundWords =
  /\b(?:(?:not|no) (?:less|more|longer|later|fewer|higher|lower) than|not (?:below|above|exceed\p{L}*)|or (?:more|longer|less|higher|lower|above|below)|nicht (?:mehr|weniger|länger|über|unter)|oder (?:mehr|länger|weniger)|pas (?:plus|moins) de|ou (?:plus|moins))\b/giu;

/** `a mild alkaline or enzymatic detergent`: any one of them. */
const either =
  /((?:mild(?:ly)?[\s-]+)?[\p{L}-]+)(?:,\s|\sor\s(?:an?\s)?)((?:mild(?:ly)?[\s-]+)?[\p{L}-]+)\s(?:cleaning\s)?(?:detergents?|cleaners?|agents?|solutions?)\b/iu;

/** The classes that the sentence accepts, as they stand in the list: `enzymatic`, or `mild-alkaline, enzymatic`. */
export function classOf(quote: string): string | undefined {
  const [both, first = '', second = ''] = either.exec(quote) ?? [];
  const pair = [first, second].map((words) => wordFor(detergentClasses, words.toLowerCase()));
  if (both === undefined || pair.some((one) => one === undefined) || / or .* or /i.test(quote)) return onlyClass(quote);
  const rest = quote.replace(both, '');
  return /\b(?:or|not|never)\b/i.test(rest.replace(boundWords, '')) || !both.includes(' or ')
    ? undefined
    : [...new Set(pair)].join(', ');
}

function onlyClass(quote: string): string | undefined {
  const isOpen = /\b(?:or|oder|ou|not|never|kein\p{L}*|nicht|pas)\b/iu.test(quote.replace(boundWords, ''));
  if (!cleaners.test(quote.toLowerCase()) || isOpen) return undefined;
  return wordFor(detergentClasses, quote.toLowerCase());
}
