import { guessLanguage } from '../../quantity/prose/language.ts';
import { pageNamed } from './page-marks.ts';
import { printedDate } from './printed-dates.ts';

/**
 * What the first lines of pasted pages say of their document and of the device: proposed where a new file asks for it, and taken by the
 * reader. What is not plain is left out; it is asked as before.
 */
export interface PageHead {
  /** Answers of the file of the document, by field. */
  readonly document: Readonly<Record<string, readonly string[]>>;
  /** Answers of the file of the device. */
  readonly device: Readonly<Record<string, readonly string[]>>;
}

const mostLines = 10;
const revision =
  /(?<![\p{L}\d])(?:rev(?:ision|\.)?|rév(?:ision|\.)?|version|edition|issue|ausgabe|auflage|indice)(?!\p{L})\s{0,3}(?:no\.?\s|nr\.?\s|:\s?)?([\p{Lu}\d][\w.-]{0,8}\b)/iu;
const numberWord = /(?:document|doc\.?|dok\.?|ifu|guide|instructions?)\s(?:no\.?|nr\.?|number)?\s?([\w/-]*\d[\w/-]*)/iu;
const pageMark = new RegExp(String.raw`(?<![\p{L}\d])${pageNamed}`, 'iu');
const pageMarks = new RegExp(pageMark, 'giu');
const inForce =
  /\b(?:valid|effective|in force)\s(?:from|as of|since)\s*:?\s*$|gültig ab\s*:?\s*$|valable à partir du\s*$/iu;
const aboutDocument =
  /instructions?(?!\p{L})|reprocess|\bifu\b|cleaning|sterili[sz]ation|guide|manual|aufbereitung|gebrauchsanweisung|anleitung|notice|mode d.emploi|retraitement/iu;

export function pageHead(pages: string): PageHead {
  const lines = headLines(pages);
  const line = lines.find((one) => revision.test(one)) ?? '';
  const rev = (revision.exec(line)?.[1] ?? '').replace(/[.-]+$/, '');
  const doc = numberIn(line.slice(0, line.search(revision))) || firstNumber(lines);
  const maker = makerIn(lines);
  const product = productIn(lines);
  const document = {
    doc,
    rev,
    title: titleIn(lines, { doc, maker }),
    maker,
    lang: doc === '' ? '' : guessLanguage(pages),
    ...daysIn(lines),
    pages: pagesIn(pages),
  };
  return {
    document: given(Object.entries(document).map(([key, text]) => [key, [text]])),
    device: given([
      ['doc', [doc]],
      ['rev', [rev]],
      ['maker', [maker]],
      ['name', [product?.name ?? '']],
      ['covers', product?.numbers ?? []],
    ]),
  };
}

function given(all: readonly (readonly [string, readonly string[]])[]): Readonly<Record<string, readonly string[]>> {
  const filled = all.map(([key, texts]) => [key, texts.filter((text) => text !== '')] as const);
  return Object.fromEntries(filled.filter(([, texts]) => texts.length > 0));
}

/** Up to where the text begins: a line that ends a sentence and names no document. */
function headLines(pages: string): readonly string[] {
  const first = pages
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .slice(0, mostLines);
  const end = first.findIndex((line) => /[.!?]$/.test(line) && line.split(/\s+/).length > mostWordsOfName);
  return end < 0 ? first : first.slice(0, end);
}

const mostWordsOfName = 6;

/** The last word with a digit in front of the revision: `Document QM-ENDO-12`, `FH/IFU/031`. */
function numberIn(before: string): string {
  const words = before.split(/[\s|,;:•·–]+/).filter((word) => /\d/.test(word) && !/^\d{1,3}$/.test(word));
  return (words.at(-1) ?? '').replace(/^[(/-]+|[)/.-]+$/g, '');
}

function firstNumber(lines: readonly string[]): string {
  return lines.map((line) => numberWord.exec(line)?.[1] ?? '').find((found) => found !== '') ?? '';
}

function cellsOf(line: string): readonly string[] {
  return line
    .split(/\s{3,}|\t|\s?[|•·]\s?|\s[-–—]\s/u)
    .map((cell) => cell.trim())
    .filter((cell) => cell !== '');
}

const mostWordsOfMaker = 5;

/** The first words of the page, unless they name the document or have a number. */
function makerIn([first = '']: readonly string[]): string {
  const [cell = ''] = cellsOf(first);
  const isName = /^\p{Lu}/u.test(cell) && !/\d/.test(cell) && cell.split(/\s+/).length <= mostWordsOfMaker;
  return isName && !aboutDocument.test(cell) ? cell : '';
}

/** Words that name a document, without number, revision and page; of several the longest. */
function titleIn(lines: readonly string[], { doc, maker }: { readonly doc: string; readonly maker: string }): string {
  const cells = lines
    .flatMap(cellsOf)
    .map((cell) => withoutNumbers(cell, doc))
    .filter((cell) => cell !== maker && aboutDocument.test(cell) && !/^\d|[.!?]$/.test(cell) && /\s/.test(cell));
  return cells.toSorted((a, b) => b.length - a.length)[0] ?? '';
}

function withoutNumbers(cell: string, doc: string): string {
  const from = [cell.search(revision), cell.search(pageMark), doc === '' ? -1 : cell.indexOf(doc)].filter(
    (at) => at >= 0,
  );
  const kept = from.length === 0 ? cell : cell.slice(0, Math.min(...from));
  return kept.replace(/[\s,;:|-]{1,10}$/, '').replace(/(?:\s(?:no|nr|ref|réf)\.?)$/i, '');
}

/** A day from which it holds is another than the day on which it was issued. */
function daysIn(lines: readonly string[]): { readonly issued?: string; readonly effective?: string } {
  for (const line of lines) {
    const found = printedDate(line);
    if (found === undefined) continue;
    const isInForce = inForce.test(line.slice(0, found.start));
    // From when it holds is written as a day.
    if (isInForce) return found.date.length === 10 ? { effective: found.date } : {};
    return { issued: found.date };
  }
  return {};
}

/** As many as a mark says there are, else the last one that has a mark. */
function pagesIn(pages: string): string {
  const marks = [...pages.matchAll(pageMarks)];
  const said = marks.find(([, , of]) => of !== undefined)?.[2];
  const highest = marks.map(([, page]) => Number(page)).reduce((most, page) => Math.max(most, page), 0);
  return said ?? (highest === 0 ? '' : String(highest));
}

const numbersWord =
  /[,;:(]?\s?(?<!\p{L})(?:cat(?:alogue|\.)?\s?(?:nos?|numbers?)\.?|article (?:nos?|numbers?)\.?|part nos?\.?|product codes?|items?|REF|Art\.-Nr\.?|Artikelnummern?|références?|Réf\.?)(?!\p{L})\s?:?\s/iu;

interface Product {
  readonly name: string;
  readonly numbers: readonly string[];
}

/** `Powered bone saw attachment, REF 118-200`: the device in front of its catalogue numbers. */
function productIn(lines: readonly string[]): Product | undefined {
  for (const line of lines) {
    const found = numbersWord.exec(line);
    if (found === null || revision.test(line)) continue;
    const numbers = cataloguesIn(line.slice(found.index + found[0].length));
    if (numbers.length === 0) continue;
    return { name: line.slice(0, found.index).replace(/^(?:product|device|produkt|produit)\s?:\s/iu, ''), numbers };
  }
  return undefined;
}

/** A range such as `FC 1200 to FC 1208` does not say which numbers there are. */
function cataloguesIn(list: string): readonly string[] {
  const parts = list.replace(/[.)]+$/, '').split(/\s?[,;]\s?|\s(?:and|und|et)\s/u);
  return parts.every((part) => /^(?:\p{Lu}{1,4}\s)?[\p{Lu}\d-]*\d[\p{Lu}\d.-]*$/u.test(part)) ? parts : [];
}
