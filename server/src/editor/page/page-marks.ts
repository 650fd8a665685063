import { isUnfinished } from './headings.ts';

/** Lines at the head or foot of a page: they tell the page, or repeat what the document is called, and are no sentences. */

export interface PageMark {
  readonly page: number;
  /** How many pages there are, where the mark says so. */
  readonly of: number | undefined;
}

/** A mark with what else stands in its line: a sentence that belongs to the text, or words that are left out; or a line that only repeats the name of the document. */
export type PageLine =
  | ({ readonly is: 'page'; readonly sentence: string; readonly beside: string } & PageMark)
  | { readonly is: 'running head' };

/** What a line may be, before the other lines have been looked at. */
interface Candidate extends PageMark {
  readonly rest: string;
  /** The words `page 2` stand there, and not only a number. */
  readonly named: boolean;
}

/** `page 2 of 3`, as part of a pattern; the groups are the page and how many there are. */
export const pageNamed = String.raw`(?:page|seite|blatt|p\.|(?:sheet|feuille)(?=\s*\d{1,3}\s*(?:of|sur|\/)\s*\d))\s*(\d{1,3})(?:\s*(?:of|von|sur|de|\/)\s*(\d{1,3}))?`;
const counted = String.raw`(\d{1,3})\s*(?:of|von|sur|\/)\s*(\d{1,3})`;
const separated = String.raw`(?:^|\t|\s{3,}|[|·•–—]\s*)`;

const atEnd = new RegExp(String.raw`^(.*?)(?<![\p{L}\d])${pageNamed}\s*[)\]|·•–—-]*\s*$`, 'iu');
const atBegin = new RegExp(String.raw`^\s*[([|·•–—-]*\s*${pageNamed}(?=$|\t|\s{2,}|\s*[|·•–—)\]])(.*)$`, 'iu');
const countAtEnd = new RegExp(String.raw`^(.*?)${separated}${counted}\s*$`, 'u');
const countAtBegin = new RegExp(String.raw`^\s*${counted}(?:$|\t|\s{3,}|\s*[|·•–—])(.*)$`, 'u');
const numberAtEnd = /^(.*\S)(?:\t|\s{3,}|\s*[|·•–—]\s*)(\d{1,3})()\s*$/u;

/** `Page 2`, `Seite 2 von 4`, `- 2 -`, also at either end of a running head such as `RF-2210 Rev. C   Page 1 of 2`. */
function candidateIn(line: string): Candidate | undefined {
  const [, alone] = /^\s*[-–—]\s*(\d{1,3})\s*[-–—]\s*$/.exec(line) ?? [];
  if (alone !== undefined) return candidate('', alone, undefined, 'named');
  const [, before = '', page, of] = atEnd.exec(line) ?? [];
  if (page !== undefined && (!leadsTo(before) || isLastOfHead(before, of))) return candidate(before, page, of, 'named');
  const [, first, ofFirst, after = ''] = atBegin.exec(line) ?? [];
  if (first !== undefined) return candidate(after, first, ofFirst, 'named');
  const [, left = '', count, all] = countAtEnd.exec(line) ?? [];
  if (count !== undefined) return candidate(left, count, all, 'counted');
  const [, begin, allOf, right = ''] = countAtBegin.exec(line) ?? [];
  if (begin !== undefined) return candidate(right, begin, allOf, 'counted');
  const [, head = '', last] = numberAtEnd.exec(line) ?? [];
  return last === undefined ? undefined : candidate(head, last, undefined, 'counted');
}

function candidate(
  rest: string,
  page: string,
  of: string | undefined,
  how: 'named' | 'counted',
): Candidate | undefined {
  const mark = { page: Number(page), of: of === undefined || of === '' ? undefined : Number(of) };
  if (mark.of !== undefined && mark.of < mark.page) return undefined;
  return { ...mark, rest: rest.replace(/[\s|·•–—([-]+$|^[\s|·•–—)\]-]+/gu, ''), named: how === 'named' };
}

/** A sentence names a page to be looked at. */
function leadsTo(before: string): boolean {
  return /\b(?:see|siehe|voir|on|auf|to|zu|and|und|et|of|from|unter|sur|à|la|der|also|cf\.?)\s*\(?\s*$|[(,;:]\s*$/i.test(
    before,
  );
}

/** `FC-12, issue 3, page 1 of 2`: a comma before a page with the number of all pages leads to no other document. */
function isLastOfHead(before: string, of: string | undefined): boolean {
  return of !== undefined && /,\s*$/.test(before);
}

const mostWordsOfHead = 8;

/** `document`: its number, which heads of its pages repeat. */
export function pageLinesIn(lines: readonly string[], document: string): ReadonlyMap<number, PageLine> {
  const all = new Map([...lines.entries()].flatMap(([at, line]) => withCandidate(at, candidateIn(line))));
  const pagesBy = grouped([...all.values()].map(({ rest, page }) => [plain(rest), page]));
  const isRepeated = ({ rest }: Candidate): boolean => rest !== '' && (pagesBy.get(plain(rest))?.size ?? 0) > 1;
  const found = new Map<number, PageLine>();
  for (const [at, one] of all) {
    const { rest, page, of } = one;
    const isHead = isRepeated(one) || (document !== '' && rest.includes(document));
    const isMark = of === undefined && !one.named ? isHead && isRepeated(one) : one.named || isHead || rest === '';
    if (!isMark || (!isHead && of === undefined && isSentence(rest))) continue;
    const sentence = !isHead && isSentence(rest) ? rest : '';
    found.set(at, { is: 'page', page, of, sentence, beside: sentence === '' ? rest : '' });
  }
  for (const at of runningHeads(lines, found, document)) found.set(at, { is: 'running head' });
  return found;
}

function withCandidate(at: number, found: Candidate | undefined): readonly (readonly [number, Candidate])[] {
  return found === undefined ? [] : [[at, found]];
}

function isSentence(rest: string): boolean {
  return rest.split(/\s+/).length > mostWordsOfHead || /[.!?:;,]$/.test(rest);
}

function grouped(pairs: readonly (readonly [string, number])[]): ReadonlyMap<string, ReadonlySet<number>> {
  const all = new Map<string, Set<number>>();
  for (const [key, value] of pairs) all.set(key, (all.get(key) ?? new Set<number>()).add(value));
  return all;
}

function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim().toLowerCase();
}

const mostWordsOfNumber = 4;
const ofDocument =
  /\b(?:instructions?|ifu|rev(?:ision|\.)?|issued?|version|gebrauchsanweisung|notice|mode d.emploi|www\.\S+|tel\.?)(?!\p{L})|©/iu;

/**
 * Lines with nothing but number and revision, and those that stand in the same place beside the marks of several pages alike. Of words that
 * do not name the document the first stays; what may be a sentence or a row of a table is none of them.
 */
function runningHeads(
  lines: readonly string[],
  marks: ReadonlyMap<number, PageLine>,
  document: string,
): readonly number[] {
  const beside = [...marks.keys()].flatMap((mark) =>
    neighbours(lines, mark, marks)
      .filter(({ at }) => isHeadWords(lines[at] ?? ''))
      .map(({ at, place }) => ({ at, key: `${place} ${plain(lines[at] ?? '')}` })),
  );
  const alikeBy = grouped(beside.map(({ at, key }) => [key, at]));
  const dropped = beside.flatMap(({ at, key }) => {
    const alike = [...(alikeBy.get(key) ?? [])];
    return alike.length > 1 && (ofDocument.test(lines[at] ?? '') || Math.min(...alike) < at) ? [at] : [];
  });
  const ofNumber = [...lines.keys()].filter((at) => !marks.has(at) && isNumberAlone(lines, at, document));
  return [...dropped, ...ofNumber];
}

function isHeadWords(line: string): boolean {
  const text = line.trim();
  if (/[.!?:;,]$|^\s*[-•*–]/.test(text) || isUnfinished(text)) return false;
  return ofDocument.test(text) || !/\d/.test(text);
}

function isNumberAlone(lines: readonly string[], at: number, document: string): boolean {
  const text = lines[at]?.trim() ?? '';
  if (document === '' || !text.includes(document) || text.endsWith('.')) return false;
  return text.split(/\s+/).length <= mostWordsOfNumber && !isUnfinished(lines[at - 1] ?? '');
}

const farthest = 3;
const farthestLines = 10;

/** The lines next to a mark, above and below, without blank ones, and which of them each is. */
function neighbours(
  lines: readonly string[],
  mark: number,
  marks: ReadonlyMap<number, PageLine>,
): readonly { readonly at: number; readonly place: string }[] {
  const near = Array.from({ length: 2 * farthestLines + 1 }, (_none, index) => mark - farthestLines + index);
  const texts = near.filter((at) => (lines[at] ?? '').trim() !== '' && !marks.has(at));
  const above = texts.filter((at) => at < mark).slice(-farthest);
  const below = texts.filter((at) => at > mark).slice(0, farthest);
  return [
    ...above.toReversed().map((at, place) => ({ at, place: `above ${place}` })),
    ...below.map((at, place) => ({ at, place: `below ${place}` })),
  ];
}
