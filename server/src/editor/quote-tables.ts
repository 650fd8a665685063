import type { QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import type { MapTree } from '../syntax/tree.ts';
import { sentencesOf } from './open-sentences.ts';
import { isAside } from './quote-clauses.ts';
import { homesOf } from './quote-homes.ts';
import type { Matched } from './quote-match.ts';
import { isOwnValue, partnerOf } from './quote-own-values.ts';

/** Rows of a table of cycles that was pasted as lines: the heading above says what each number is. */

/** Titles of columns, the longest first, with the field of a cycle; nothing for a column without numbers. */
const titles: readonly (readonly [RegExp, string])[] = [
  [
    /^(?:time at temperature|(?:exposure|sterili[sz]ation|holding|hold|plateau) time|exposure|time|haltezeit|einwirkzeit|zeit|durée)/,
    'exposure',
  ],
  [/^(?:sterili[sz]ation temperature|temperature|temperatur|température)/, 'temp'],
  [/^(?:(?:minimum )?dry(?:ing)? time|drying|dry|trocknungszeit|trocknung|séchage)/, 'dry'],
  [/^(?:number of pulses|pulses|vakuumpulse|fraktionen)/, 'pulses'],
  [
    /^(?:type of cycle|cycle type|cycle|method|program(?:me)?|parameters?|process|sterili[sz]er(?: type)?|verfahren|zyklus|méthode)/,
    '',
  ],
];

const mostColumns = 6;

/** The fields of the columns; undefined where the line is anything else than titles of columns. */
export function columnsIn(quote: string): readonly string[] | undefined {
  const found: string[] = [];
  let rest = quote.toLowerCase().replace(/[:|]/g, ' ').trim();
  while (rest !== '') {
    const [at, title] = titles.flatMap(([words, field]) => {
      const [whole] = words.exec(rest) ?? [];
      return whole === undefined ? [] : [[whole.length, field] as const];
    })[0] ?? [0, ''];
    if (at === 0 || found.length > mostColumns || /^\p{L}/u.test(rest.slice(at))) return undefined;
    if (title !== '') found.push(title);
    rest = rest.slice(at).replace(/^\s*(?:\([^)]*\))?\s*/, '');
  }
  return found.length > 1 && new Set(found).size === found.length ? found : undefined;
}

const farthestHead = 8;

/** The columns of the heading above a statement, over rows of the same table. */
export function columnsAbove(tree: MapTree, statement: string): readonly string[] | undefined {
  const all = sentencesOf(tree);
  const own = all.findIndex(({ id }) => id === statement);
  for (let at = own - 1; at >= 0 && at >= own - farthestHead; at--) {
    const one = all[at];
    if (one === undefined || one.section !== all[own]?.section) return undefined;
    const columns = columnsIn(one.quote);
    if (columns !== undefined) return columns;
    if (/[.!?:]\s*$/.test(one.quote)) return undefined;
  }
  return undefined;
}

/** A number for each column, in their order; undefined where the row has more or fewer, or one of another kind. */
export function inColumns(reading: QuoteReading, kind: Kind, columns: readonly string[]): Matched | undefined {
  const group = (homesOf[kind] ?? []).find(({ fields }) => fields.some(({ field }) => field === 'exposure'));
  const all = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const own = all.filter((one) => !isAside(one, all, reading));
  if (group === undefined || own.length !== columns.length) return undefined;
  const placed = own.flatMap((mention, at) => {
    const home = group.fields.find(({ field }) => field === columns[at]);
    const fits = mention.quantities.some(({ dimension }) => dimension === home?.dimension);
    return home === undefined || !fits ? [] : [{ group, home, mentions: [mention, ...partnerOf(mention, reading)] }];
  });
  const aside = all.filter((one) => !own.includes(one));
  const left = aside.map(({ span }) => reading.quote.slice(span.start, span.end));
  return placed.length === columns.length ? { placed, left } : undefined;
}
