import type { Edit } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { Kind } from '../../schema/kinds.ts';
import { shapeOf } from '../../schema/shapes.ts';
import type { MapTree, ScalarTree } from '../../syntax/tree.ts';
import { asValue } from '../writing/bare.ts';
import { insertFields, type NewField } from '../writing/insert-fields.ts';
import { marked, numbered } from '../writing/marked.ts';
import type { Piece } from '../writing/offer.ts';
import { twoWays } from './quote-before-machine.ts';
import { intoCleaning } from './quote-into-cleaning.ts';
import { languageOf } from './quote-language.ts';
import { fieldsOfReading } from './quote-reading.ts';
import { sectionOf, toldSection } from './quote-section.ts';
import { isAboveCycles, tableAbove } from './quote-tables.ts';
import { readStep, stepsMeant } from './quote-things.ts';
import { isTogether } from './quote-ways.ts';
import { titlesOf } from './told-fields.ts';

/** A place of the file where fields are put in. */
export interface Insertion {
  /** What gives way: nothing, or an open line. */
  readonly span: Span;
  readonly pieces: readonly Piece[];
}

export interface FieldsFromQuote {
  readonly statement: string;
  readonly insertions: readonly Insertion[];
  /** Fields that were made: `limits.temp`. */
  readonly made: readonly string[];
  /** Numbers for which no field was found, and fields that are there already: for the reader to look at. */
  readonly left: readonly string[];
  /** The fields that are put in, each at its path. */
  readonly fields: readonly NewField[];
  /** Fields that the file has already, at their own places in it: nothing was put in for them. */
  readonly there: readonly NewField[];
  /** The field that the sentence is about first, as its own words have it. */
  readonly first: NewField | undefined;
  /** What is done, where the fields alone do not tell it. */
  readonly label?: string;
}

/** The statement at `offset`: its id and its quote. */
export function statementAt(
  tree: MapTree,
  offset: number,
): { readonly id: ScalarTree; readonly quote: string; readonly lang: string; readonly section: string } | undefined {
  const statements = tree.entries.find(({ key }) => key.text === 'statements')?.value;
  if (statements?.node !== 'map') return undefined;
  for (const { key, value } of statements.entries) {
    if (offset < key.span.start || offset > Math.max(key.span.end, value.span.end) || value.node !== 'map') continue;
    const text = (name: string): string => {
      const found = value.entries.find((entry) => entry.key.text === name)?.value;
      return found?.node === 'scalar' ? found.text : '';
    };
    return { id: key, quote: text('quote'), lang: text('lang'), section: text('section') };
  }
  return undefined;
}

/**
 * Fields from the quote of the statement at `offset`: its numbers with their units where the schema has a place for them. The bound word
 * is a choice: first what the quote says outright, else `stated`. `way` stands for a heading where somebody was asked,
 * or says how several ways belong together. Undefined where no
 * statement with a quote stands.
 */
export function quoteToFields(
  record: FileRecord,
  tree: MapTree,
  offset: number,
  way?: string,
): FieldsFromQuote | undefined {
  const statement = statementAt(tree, offset);
  const { kind } = record;
  if (statement === undefined || kind === undefined || statement.quote === '') return undefined;
  const lang = languageOf(tree, statement);
  const reading = stepsMeant(readStep(statement.quote, lang));
  const told = isTogether(way) ? undefined : way;
  const section = told === undefined ? sectionOf(statement.section, lang) : toldSection(told);
  const src = asValue(statement.id.text);
  const table = tableAbove(tree, statement.id.text);
  const { fields, left } = fieldsOfReading(reading, {
    kind,
    section,
    src,
    statement: statement.id.text,
    tree,
    table,
    way,
  });
  const found = put({ record, kind, tree }, statement.id.text, fields, left);
  const ways = fields.some(({ path }) => path === 'manual.needed')
    ? twoWays(record.text, tree, statement.quote, src)
    : undefined;
  if (ways !== undefined) return { ...found, insertions: [insertionOf(ways.edit)], left: [], label: ways.label };
  if (found.made.length === 0 && isAboveCycles(tree, statement.id.text, section))
    return {
      ...found,
      left: ['what it says holds for the cycles of the table below: their rows take it and cite it too'],
    };
  const nothing = `nothing in this quote becomes a field by itself; write the field where its step stands, and name the sentence there: src: ${src}`;
  return found.made.length === 0 && found.left.length === 0 ? { ...found, left: [nothing] } : found;
}

export interface Into {
  readonly record: FileRecord;
  readonly kind: Kind;
  readonly tree: MapTree;
}

/** The fields as they are put into the file; `left` is what the reader is told besides. */
export function put(
  { record, kind, tree }: Into,
  statement: string,
  given: readonly NewField[],
  told: readonly string[],
): FieldsFromQuote {
  const values = numbered(given.map(({ value }) => value));
  const fields = given.map((field, at) => ({ ...field, value: values[at] ?? field.value }));
  const inside = intoCleaning(tree, fields, statement);
  const { edits, made, there } = insertFields(record.text, tree, shapeOf(kind), inside.fields);
  return {
    statement,
    insertions: edits.map(insertionOf),
    made,
    left: [...inside.left, ...told, ...there.map((path) => `“${titlesOf(kind, path)}” is there already`)],
    fields: (inside.left.length === 0 ? fields : inside.fields).filter(({ path }) => !there.includes(path)),
    there: inside.fields.filter(({ path }) => there.includes(path)),
    first: made.length === 0 ? undefined : fields[0],
  };
}

/** Each field with its value as people read it, with the words that somebody chose: `manual, steps: rinse, time at least 2 min`. */
export function readable(fields: readonly NewField[], words: readonly string[]): readonly string[] {
  return fields.filter(({ path }) => !path.endsWith('.src')).map(({ path, value }) => inWords(path, value, words));
}

function inWords(path: string, value: string, words: readonly string[]): string {
  const plain = marked
    .plain(value, words)
    .replace(/(?:, )?(?:src: [^,{}]+|as_written: "(?:[^"\\]|\\.)*")(?=[,}])/g, '')
    .replace(/\[([^,\]]+), ([^,\]]+)\]/g, '$1 and $2')
    .replace(/\{id: [^,]+, /, '{')
    .replace(/[{}[\]]/g, '')
    .replace(/\b(?:do|use|what|modality): /g, '')
    .replaceAll('_', ' ')
    .replaceAll(': ', ' ');
  const field = path.replaceAll('[]', '').replaceAll('.', ', ').replaceAll('_', ' ');
  return `${field}: ${plain}`;
}

export function insertionOf({ span, text }: Edit): Insertion {
  return { span, pieces: marked.pieces(text) };
}
