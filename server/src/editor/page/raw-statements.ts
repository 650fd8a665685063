import type { Edit } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import { cleanPaste } from '../../quantity/prose/clean-paste.ts';
import { columnsIn } from '../../quantity/prose/column-titles.ts';
import { numberSentences } from '../../quantity/prose/sentences.ts';
import { hasCells, headNote } from '../../quantity/prose/table-rows.ts';
import { tokenize } from '../../quantity/prose/token.ts';
import type { Kind } from '../../schema/kinds.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { fileForm } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { asValue } from '../writing/bare.ts';
import type { PageMark } from './page-marks.ts';
import { type Passage, type RawBlock, rawBlock } from './raw-lines.ts';

/**
 * Part `page`: pages as they were copied, from lines to statements. What a sentence says is for `reading`.
 */

/**
 * Sentences of pages that were pasted under `statements:` as they are: each becomes a statement with an id that the file does not use yet,
 * the document of the file's first source, and its words between quotation marks. Page and section come from the page marks and headings
 * among the sentences; a page that no mark tells is left open, or told by a person. The heading of a table is noted as such.
 */
export interface MadeStatements {
  /** From the line of `statements:` to the end of what stands under it. */
  readonly span: Span;
  readonly sentences: readonly Quoted[];
  /** Lines that are no sentences, by what is made of them. */
  readonly headings: number;
  readonly marks: number;
  /** A mark stands there, but nothing shows whether at the head or the foot of its page. */
  readonly unclear: boolean;
  /** Words of the paste that stand in no statement: heads and feet of pages, headings with no text below. Each once. */
  readonly leftOut: readonly string[];
  /** The document that they are quoted from; empty where the file does not say. */
  readonly source: { readonly doc: string; readonly rev: string };
  readonly edits: readonly Edit[];
}

export function statementsFromRaw(
  text: string,
  kind: Kind,
  tree: MapTree | undefined,
  told: PagesTold = nothingTold,
): MadeStatements | undefined {
  const keys = new Set(shapeOf(kind).fields.keys());
  const block = keys.has('statements') ? rawBlock(text, keys, numberIn(text, tree)) : undefined;
  if (block === undefined || block.runs.length === 0) return undefined;
  const { lineEnd, step } = fileForm(text);
  const indent = block.indent ?? ' '.repeat(step);
  const source = sourceIn(text, tree);
  let next = freeNumber(text, block);
  const all: Quoted[] = [];
  const edits: Edit[] = block.mark === undefined ? [] : [{ span: block.mark, text: '' }];
  const leftOut = block.runs.flatMap((run) => run.leftOut);
  for (const { span, passages } of block.runs) {
    const inRun = quotedIn(passages, told);
    leftOut.push(...inRun.leftOut);
    const quoted = inRun.found.map((one, at) => withPage(one, all.length + at, told));
    all.push(...quoted);
    edits.push({ span, text: quoted.map((one) => `${indent}s${next++}: {${source}, ${written(one)}}`).join(lineEnd) });
  }
  const passages = block.runs.flatMap((run) => run.passages);
  const count = (wanted: Passage['is']): number => passages.filter(({ is }) => is === wanted).length;
  const unclear = block.runs.some((run) => placeIn(run.passages, told) === 'unclear');
  const [headings, marks] = [count('heading'), count('page')];
  const [doc, rev] = [numberIn(text, tree), revisionIn(text, tree)];
  const made = { span: block.span, sentences: all, headings, marks, unclear, edits };
  return { ...made, leftOut: eachOnce(leftOut), source: { doc, rev } };
}

function eachOnce(words: readonly string[]): readonly string[] {
  return [...new Set(words.map((one) => one.replace(/\s+/g, ' ').trim()))].filter((one) => /[\p{L}\p{N}]/u.test(one));
}

/** What a person said of pages that no mark tells. */
export interface PagesTold {
  /** Where the marks stand on their pages. */
  readonly marksAt?: 'head' | 'foot';
  /** The page of the first sentence, and the sentences that begin the pages after it. */
  readonly first?: number;
  readonly begins: readonly number[];
}

const nothingTold: PagesTold = { begins: [] };

function withPage(quoted: Quoted, at: number, { first, begins }: PagesTold): Quoted {
  if (quoted.page !== undefined || first === undefined) return quoted;
  return { ...quoted, page: first + begins.filter((begin) => begin <= at).length };
}

function written({ page, section, sentence, isTableHead }: Quoted): string {
  const place = `page: ${page ?? ''}${section === '' ? '' : `, section: ${asValue(section)}`}`;
  const note = isTableHead ? `, not_needed: [{text: ${doubleQuoted(sentence)}, reason: ${headNote}}]` : '';
  return `${place}, quote: ${doubleQuoted(sentence)}${note}`;
}

/** A number that no id of the file has and that nothing cites: a citation left over must not come to mean another sentence. */
function freeNumber(text: string, { runs }: RawBlock): number {
  let rest = '';
  let from = 0;
  for (const { span } of runs) {
    rest += `${text.slice(from, span.start)}\n`;
    from = span.end;
  }
  rest += text.slice(from);
  let highest = 0;
  for (const [, digits] of rest.matchAll(/\bs(\d{1,6})\b/g)) highest = Math.max(highest, Number(digits));
  return highest + 1;
}

function sourceIn(text: string, tree: MapTree | undefined): string {
  return `doc: ${writtenOfSource(text, tree, 'doc')}, rev: ${writtenOfSource(text, tree, 'rev')}`;
}

function numberIn(text: string, tree: MapTree | undefined): string {
  return writtenOfSource(text, tree, 'doc').replace(/^["']|["']$/g, '');
}

function revisionIn(text: string, tree: MapTree | undefined): string {
  return writtenOfSource(text, tree, 'rev').replace(/^["']|["']$/g, '');
}

function writtenOfSource(text: string, tree: MapTree | undefined, name: 'doc' | 'rev'): string {
  const sources = tree?.entries.find(({ key }) => key.text === 'sources')?.value;
  const first = sources?.node === 'list' ? sources.items[0] : undefined;
  const value = first?.node === 'map' ? first.entries.find(({ key }) => key.text === name)?.value : undefined;
  return value?.node === 'scalar' ? text.slice(value.span.start, value.span.end) : '';
}

export interface Quoted {
  readonly page: number | undefined;
  /** A mark tells the page. */
  readonly isFound: boolean;
  readonly section: string;
  readonly sentence: string;
  readonly isTableHead: boolean;
}

interface QuotedRun {
  readonly found: readonly Quoted[];
  readonly leftOut: readonly string[];
}

/** Each sentence with its page and section. Headings that follow each other at once are one: `Cleaning` and `By hand`. */
function quotedIn(passages: readonly Passage[], told: PagesTold): QuotedRun {
  const found: Quoted[] = [];
  const leftOut: string[] = [];
  const pages = pagesOf(passages, told);
  let [section, hasText, isTable] = ['', true, false];
  for (const [at, passage] of passages.entries()) {
    if (passage.is === 'heading') {
      const whole = hasText ? passage.text : `${section}: ${passage.text}`;
      if (whole.length > longestSection && !hasText) leftOut.push(section);
      [section, hasText, isTable] = [whole.length > longestSection ? passage.text : whole, false, false];
    } else if (passage.is === 'paragraph') {
      const below = passages[at + 1];
      const line = hasCells(passage.text) ? rowOf(passage.text) : passage.text;
      const isTableHead = columnsIn(line) !== undefined && below?.is === 'paragraph' && /\d/.test(below.text);
      [hasText, isTable] = [true, (isTable || isTableHead) && hasCells(passage.text)];
      for (const sentence of isTable || isRow(passage.text) ? [rowOf(passage.text)] : sentencesOf(passage.text))
        found.push({ page: pages[at], isFound: pages[at] !== undefined, section, sentence, isTableHead });
    }
  }
  if (!hasText) leftOut.push(section);
  return { found, leftOut };
}

const longestSection = 120;

/** A line in several columns with numbers in them is a row, though no head stands above it. */
function isRow(line: string): boolean {
  return !line.includes('\n') && (line.trim().match(/\S(?: {3,}|\t)(?=\S)/g) ?? []).length > 1 && /\d/.test(line);
}

/**
 * A row is one statement, whatever its cells say, and the gaps between them stay: they tell which column a number stands in. Beside wide gaps
 * two blanks are a gap too: a long cell leaves no more before the next.
 */
function rowOf(paragraph: string): string {
  const row = cleanPaste(paragraph).text.trim();
  if (row.includes('|')) return row.replace(/\s+/g, ' ');
  return row.replace(/\s+/g, (gap) => (/\t| {2}/.test(gap) && !gap.includes('\n') ? '   ' : ' '));
}

/**
 * The page of each passage. Where marks stand at the head, what comes before a first head of page 2 stands on page 1, and so does a title above that of page 1. What follows the last
 * foot stands on the last page where the mark tells how many there are. A page that this leaves in doubt stays open.
 */
function pagesOf(passages: readonly Passage[], told: PagesTold): readonly (number | undefined)[] {
  const marks = marksIn(passages);
  const [first, end] = [marks[0], marks.at(-1)];
  if (first === undefined || end === undefined) return [];
  switch (placeIn(passages, told)) {
    case 'foot': {
      const afterEnd = end.of === end.page + 1 ? end.of : undefined;
      return passages.map((_passage, at) => marks.find((mark) => mark.at >= at)?.page ?? afterEnd);
    }
    case 'head': {
      const isTitle = first.page === 1 && passages.slice(0, first.at).every(isTitleOnly);
      const beforeFirst = first.page === 2 || isTitle ? 1 : undefined;
      return passages.map((_passage, at) => marks.findLast((mark) => mark.at <= at)?.page ?? beforeFirst);
    }
    default:
      return [];
  }
}

function marksIn(passages: readonly Passage[]): readonly PlacedMark[] {
  return passages.flatMap((passage, at) => (passage.is === 'page' ? [{ ...passage, at }] : []));
}

function placeIn(passages: readonly Passage[], { marksAt }: PagesTold): 'head' | 'foot' | 'unclear' | undefined {
  const marks = marksIn(passages);
  const [first, end] = [marks[0], marks.at(-1)];
  if (first === undefined || end === undefined) return undefined;
  const place = placeOfMarks(passages, first, end);
  return place === 'unclear' ? (marksAt ?? place) : place;
}

type PlacedMark = PageMark & { readonly at: number };

/** Above the head of a first page stands a title at most: a section there, and more so several, shows that the mark is a foot. */
function placeOfMarks(passages: readonly Passage[], first: PlacedMark, end: PlacedMark): 'head' | 'foot' | 'unclear' {
  if (passages.at(-1)?.is === 'page') return 'foot';
  const sections = passages.filter(
    ({ is }, at) => is === 'heading' && at < first.at && passages[at + 1]?.is === 'paragraph',
  ).length;
  if (first.page !== 1 || sections === 0) return 'head';
  return sections > 1 && end.page !== end.of ? 'foot' : 'unclear';
}

/** Words that end no sentence and stand under no heading of a section. */
function isTitleOnly(passage: Passage): boolean {
  return passage.is === 'paragraph' && !/[.!?]\s*$/.test(passage.text);
}

/** A semicolon joins what belongs together on the page, so that it ends no quote. */
function sentencesOf(paragraph: string): readonly string[] {
  const clean = cleanPaste(paragraph).text.replace(/\s+/g, ' ').trim();
  const tokens = tokenize(clean, 'en');
  const numbers = numberSentences(tokens, clean);
  const found: string[] = [];
  let from = 0;
  for (const [at, token] of tokens.entries()) {
    const ends = numbers[at + 1] !== numbers[at] && token.text !== ';';
    if ((!ends || isCall(clean.slice(from, token.end))) && at + 1 < tokens.length) continue;
    const end = at + 1 < tokens.length ? token.end : clean.length;
    const sentence = clean.slice(from, end).trim();
    const last = found.at(-1);
    // What has no word is no sentence of its own, and is lost neither: `110 -`.
    if (/\p{L}/u.test(sentence) || (last === undefined && /\p{N}/u.test(sentence))) found.push(sentence);
    else if (last !== undefined) found[found.length - 1] = `${last} ${sentence}`.trim();
    from = end;
  }
  return found;
}

/** `Caution! Take out the battery.`: a call alone says nothing. */
function isCall(text: string): boolean {
  return /^\s*(?:caution|warning|attention|important|note|achtung|vorsicht|hinweis|wichtig|avertissement)\s?[!.:]$/i.test(
    text,
  );
}

function doubleQuoted(text: string): string {
  const quoted = quoteScalar(text);
  return quoted.startsWith('"') ? quoted : JSON.stringify(text);
}
