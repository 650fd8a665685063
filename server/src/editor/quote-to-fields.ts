import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { FileRecord } from '../library/file-record.ts';
import { type Column, columnsIn } from '../quantity/prose/column-titles.ts';
import type { QuoteReading } from '../quantity/prose/prose.ts';
import { readQuote } from '../quantity/prose/read-quote.ts';
import type { Kind } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { MapTree, ScalarTree } from '../syntax/tree.ts';
import { asValue } from './bare.ts';
import { insertFields, type NewField } from './insert-fields.ts';
import { marked, numbered } from './marked.ts';
import type { Piece } from './offer.ts';
import { factsOf, keptMoist } from './quote-facts.ts';
import { intoCleaning } from './quote-into-cleaning.ts';
import { languageOf } from './quote-language.ts';
import { matchNumbers } from './quote-match.ts';
import { inRows } from './quote-rows.ts';
import { joinedByOr, lookedAtAgain, packages, strictlyMeant } from './quote-second-look.ts';
import type { Section } from './quote-section.ts';
import { sectionOf, toldSection } from './quote-section.ts';
import { columnsAbove, inColumns, underColumns } from './quote-tables.ts';
import { stepsMeant } from './quote-things.ts';
import { fieldsFor, idsIn } from './quote-values.ts';
import { fieldsOfWays, isTogether, waysJoined } from './quote-ways.ts';
import { stored, wordedOf } from './quote-worded.ts';
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
  const reading = stepsMeant(readQuote(statement.quote, lang));
  const told = isTogether(way) ? undefined : way;
  const section = told === undefined ? sectionOf(statement.section, lang) : toldSection(told);
  const src = asValue(statement.id.text);
  const columns = columnsAbove(tree, statement.id.text);
  const { fields, left } = fieldsOfReading(reading, { kind, section, src, tree, columns, way });
  const found = put({ record, kind, tree }, statement.id.text, fields, left);
  const nothing = `nothing in this quote becomes a field by itself; write the field where its step stands, and name the sentence there: src: ${src}`;
  return found.made.length === 0 && found.left.length === 0 ? { ...found, left: [nothing] } : found;
}

interface Around {
  readonly kind: Kind;
  readonly section: Section;
  readonly src: string;
  readonly tree: MapTree;
  /** Of the table that the sentence is a row of. */
  readonly columns: readonly Column[] | undefined;
  readonly way: string | undefined;
}

interface Read {
  readonly fields: readonly NewField[];
  readonly left: readonly string[];
}

function fieldsOfReading(sentence: QuoteReading, { kind, section, src, tree, columns, way }: Around): Read {
  const reading = columns === undefined ? sentence : underColumns(sentence, columns);
  if (columnsIn(reading.quote) !== undefined) return { fields: [], left: [] };
  const joined = kind === 'device' ? waysJoined(reading, tree, section) : undefined;
  const together = isTogether(way) ? way : joined?.together;
  if (joined !== undefined)
    return { fields: together === undefined ? [] : fieldsOfWays(joined, together, src), left: [] };
  const matched = lookedAtAgain(
    (columns === undefined ? undefined : inColumns(reading, kind, columns, section)) ??
      inRows(reading, kind, section) ??
      matchNumbers(reading, kind, section),
    reading,
  );
  const isWithout = matched.placed.length === 0;
  const worded = isWithout ? wordedOf(reading, kind, { src, section, taken: idsIn(tree) }) : { fields: [], left: [] };
  const all = isWithout ? factsOf(reading, kind, src, section) : [];
  // A stage that is only named beside what the words say, or is said in more detail by them.
  const facts = worded.fields.length === 0 ? all : all.filter(({ path }) => path === moist);
  // How something is stored stands beside how long and how warm.
  const isStored = kind === 'device' && !isWithout && matched.placed.every(({ group }) => group.path === 'storage');
  // `Keep it moist and begin within 60 minutes`.
  const isAtUse = kind === 'device' && !isWithout && matched.placed.every(({ group }) => group.path === 'point_of_use');
  const beside = [
    ...(isStored && reading.negations.length === 0 ? stored(reading, src) : []),
    ...(isAtUse ? keptMoist(reading.quote.toLowerCase(), src) : []),
  ];
  const own = fieldsFor(matched.placed, reading, { src, taken: idsIn(tree), section });
  const fields = [...own, ...beside, ...facts, ...worded.fields];
  const left = [
    ...worded.left,
    ...matched.left
      .filter((number) => !isLayers(number, fields) && !isOfDevice(number, fields))
      .map((number) => (number.includes('(') ? number : `${number} (no field found)`)),
    ...strictlyMeant(matched.placed, reading),
    ...joinedByOr(matched.placed, reading),
    ...packagesUnsaid(reading, fields).map((words) => `no field for: "${words}"`),
    ...facts.flatMap(({ condition }) =>
      condition === undefined
        ? []
        : [`"${condition}" narrows what is forbidden and stands as a note: look whether the field says it`],
    ),
  ];
  return { fields, left };
}

const moist = 'point_of_use.keep_moist';

/** Two layers of a wrap are a packaging of their own. */
function isLayers(number: string, fields: readonly NewField[]): boolean {
  return /layers?$/i.test(number) && fields.some(({ value }) => value === 'double-wrap');
}

/** Numbers of a lumen or a part are written into its own item. */
function isOfDevice(number: string, fields: readonly NewField[]): boolean {
  const printed = number.split(' (')[0] ?? number;
  const own = fields.filter(({ path }) => path === 'lumens[]' || path === 'parts[]');
  return own.some(({ value }) => marked.plain(value).includes(printed.replace(/[.,]$/, '')));
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

/** `132 °C, 4 min, double wrapped`: packages that the sentence names and that no field of it holds. */
function packagesUnsaid({ quote, stages }: QuoteReading, fields: readonly NewField[]): readonly string[] {
  if (fields.length === 0 || fields.some(({ path }) => path.startsWith('packaging') || path === 'storage.time'))
    return [];
  return stages.filter(({ stage }) => packages.has(stage)).map(({ span }) => quote.slice(span.start, span.end));
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
