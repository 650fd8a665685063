import type { FileId } from '../../../server/src/base/brand.ts';
import type { LibraryView } from '../../../server/src/library/view.ts';
import type { Line } from '../../../server/src/print/piece.ts';
import type { Draft } from '../../../server/src/print/quiz/question.ts';
import { type PlainFiles, plainFiles, valueAt } from '../traced.ts';

/*
 * The keys of questions, derived a second time: from the plain texts of the rule files, from the sentence that is quoted, from formulas of
 * school physics, or by trying ways one by one. Nothing of the code that makes questions takes part; what a question is about is read from
 * its name and from the origins of its pieces.
 */

/** A question and the library it is about. */
export interface Asked {
  readonly draft: Draft;
  readonly view: LibraryView;
  readonly texts: ReadonlyMap<FileId, string>;
  readonly files: PlainFiles;
  /** Packaging and cycle on the card of each set. */
  readonly cards: ReadonlyMap<string, CardWay>;
}

export interface CardWay {
  readonly packaging: string;
  readonly cycle: string;
}

export type Fault = string | undefined;

/** The plain files of a library, read once. */
export function filesOf(texts: ReadonlyMap<FileId, string>): PlainFiles {
  const known = read.get(texts);
  const files = known ?? plainFiles(texts);
  read.set(texts, files);
  return files;
}

const read = new WeakMap<ReadonlyMap<FileId, string>, PlainFiles>();

/** Where the values of a line come from, in order. */
export function originsOf(line: Line): readonly string[] {
  return line.flatMap((piece) => (typeof piece === 'object' && 'from' in piece ? piece.from : []));
}

/** A table of a rule file, as plain texts. */
export type Plain = Readonly<Record<string, unknown>>;

export function tableAt(files: PlainFiles, origin: string): Plain | undefined {
  const value = valueAt(files, origin);
  return isTable(value) ? value : undefined;
}

export function isTable(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function tablesIn(value: unknown): readonly Plain[] {
  return Array.isArray(value) ? value.filter(isTable) : [];
}

export function wordsIn(value: unknown): readonly string[] {
  const list: readonly unknown[] = Array.isArray(value) ? value : [value];
  return list.filter((one) => typeof one === 'string');
}

/** The number of a text such as `3.5 min` in seconds, °C, or as it stands. */
export function amountIn(text: string): number {
  const [, number = '', unit = ''] = /^\s*(-?[\d.]+)\s*(\S*)/.exec(text) ?? [];
  const value = Number(number);
  if (/^(?:min|minutes?)$/.test(unit)) return value * 60;
  if (/^(?:h|hours?)$/.test(unit)) return value * 3600;
  return /^°?F$/.test(unit) ? (value - 32) / 1.8 : value;
}
