import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { NumberMention, QuoteReading } from '../quantity/prose/prose.ts';
import { readQuote } from '../quantity/prose/read-quote.ts';
import { shapeOf } from '../schema/shapes.ts';
import { quoteScalar } from '../syntax/quote.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import { asValue } from './bare.ts';
import { insertFields, marked, type NewField } from './insert-fields.ts';
import type { Piece } from './offer.ts';
import { classOf, gradeIn } from './quote-agents.ts';
import { factsOf } from './quote-facts.ts';
import type { Group } from './quote-homes.ts';
import { intoCleaning } from './quote-into-cleaning.ts';
import type { Placed } from './quote-match.ts';
import { amountOf, matchNumbers } from './quote-match.ts';
import { sectionOf, toldSection } from './quote-section.ts';
import { stepsMeant } from './quote-things.ts';

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
  /** Each field with its value, as people read it. */
  readonly shown: readonly string[];
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
 * is a choice: first what the quote says outright, else `stated`. `way` stands for a heading where somebody was asked. Undefined where no
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
  const lang =
    statement.lang === 'de' || statement.lang === 'fr' || statement.lang === 'en' ? statement.lang : undefined;
  const reading = stepsMeant(readQuote(statement.quote, lang));
  const section = way === undefined ? sectionOf(statement.section, lang ?? reading.language) : toldSection(way);
  const matched = matchNumbers(reading, kind, section);
  const src = asValue(statement.id.text);
  const facts = matched.placed.length === 0 ? factsOf(reading, kind, src, section) : [];
  const fields = [...fieldsFor(matched.placed, reading, { src, taken: idsIn(tree) }), ...facts];
  const inside = intoCleaning(tree, fields, statement.id.text);
  const { edits, made, there } = insertFields(record.text, tree, shapeOf(kind), inside.fields);
  const left = [
    ...inside.left,
    ...matched.left.map((number) => `${number} (no field found)`),
    ...packagesUnsaid(reading, fields).map((words) => `no field for: "${words}"`),
    ...facts.flatMap(({ condition }) =>
      condition === undefined
        ? []
        : [`"${condition}" narrows what is forbidden and stands as a note: look whether the field says it`],
    ),
    ...there.map((path) => `${path} is there already`),
  ];
  const nothing = `nothing in this quote becomes a field by itself; write the field where its step stands, and name the sentence there: src: ${src}`;
  return {
    statement: statement.id.text,
    insertions: edits.map(insertionOf),
    made,
    left: made.length === 0 && left.length === 0 ? [nothing] : left,
    shown: (inside.left.length === 0 ? fields : inside.fields)
      .filter(({ path }) => !there.includes(path))
      .flatMap(readable),
  };
}

const packages: ReadonlySet<string> = new Set(['wrap', 'pouch', 'container']);

/** `132 °C, 4 min, double wrapped`: packages that the sentence names and that no field of it holds. */
function packagesUnsaid({ quote, stages }: QuoteReading, fields: readonly NewField[]): readonly string[] {
  if (fields.length === 0 || fields.some(({ path }) => path.startsWith('packaging'))) return [];
  return stages.filter(({ stage }) => packages.has(stage)).map(({ span }) => quote.slice(span.start, span.end));
}

/** `manual, steps: rinse, time at least 2 min`. */
function readable({ path, value }: NewField): readonly string[] {
  const plain = marked
    .plain(value)
    .replace(/(?:, )?(?:src: [^,{}]+|as_written: "(?:[^"\\]|\\.)*")(?=[,}])/g, '')
    .replace(/\[([^,\]]+), ([^,\]]+)\]/g, '$1 and $2')
    .replace(/\{id: [^,]+, /, '{')
    .replace(/[{}[\]]/g, '')
    .replace(/\b(?:do|use|what|modality): /g, '')
    .replaceAll('_', ' ')
    .replaceAll(': ', ' ');
  const field = path.replaceAll('[]', '').replaceAll('.', ', ').replaceAll('_', ' ');
  return path.endsWith('.src') ? [] : [`${field}: ${plain}`];
}

function insertionOf({ span, text }: Edit): Insertion {
  return { span, pieces: marked.pieces(text) };
}

interface Cited {
  readonly src: string;
  /** Ids that the file has already. */
  readonly taken: ReadonlySet<string>;
}

/** Numbers of one group belong together: into one new item, or beside each other in one group of fields. */
function fieldsFor(placed: readonly Placed[], reading: QuoteReading, { src, taken }: Cited): readonly NewField[] {
  const fields: NewField[] = [];
  const items = new Map<Group, (readonly [string, string])[]>();
  for (const one of placed) {
    const { path } = one.group;
    if (!path.endsWith('[]')) {
      const whole = path === '' ? one.home.field : `${path}.${one.home.field}`;
      fields.push({ path: whole, value: requirement(one, reading, `, src: ${src}`) });
      continue;
    }
    const parts = items.get(one.group) ?? [];
    parts.push([one.home.field, requirement(one, reading, '')]);
    items.set(one.group, parts);
  }
  for (const [group, parts] of items) {
    const named = group.does === undefined ? parts : withAgents(parts, reading.quote);
    const inside = [...headOf(group, reading, placed, taken), ...withGroups(named), `src: ${src}`];
    fields.push({ path: group.path, value: `{${inside.join(', ')}}` });
  }
  return [...fields, ...waters(placed, reading.quote, src)];
}

/** What a step is done with, beside its numbers. */
function withAgents(
  parts: readonly (readonly [string, string])[],
  quote: string,
): readonly (readonly [string, string])[] {
  const [detergent, grade] = [classOf(quote), gradeIn(quote)];
  return [
    ...parts,
    ...(detergent === undefined ? [] : [['detergent.class', `[${detergent}]`] as const]),
    ...(grade === undefined ? [] : [['water.grade', grade] as const]),
  ];
}

/** The water of a rinse that is no step: it stands beside the numbers of the rinse. */
function waters(placed: readonly Placed[], quote: string, src: string): readonly NewField[] {
  const grade = gradeIn(quote);
  const rinses = new Set(placed.map(({ group }) => group.path).filter((path) => /(?:^|[._])rinse$/.test(path)));
  const [rinse, other] = [...rinses];
  if (grade === undefined || rinse === undefined || other !== undefined) return [];
  return rinse.endsWith('final_rinse')
    ? [
        { path: `${rinse}.grade`, value: grade },
        { path: `${rinse}.src`, value: src },
      ]
    : [{ path: `${rinse}.water`, value: `{grade: ${grade}, src: ${src}}` }];
}

/** `brush.diameter` and `brush.length` of one item: `brush: {diameter: ..., length: ...}`. */
function withGroups(parts: readonly (readonly [string, string])[]): readonly string[] {
  const groups = new Map<string, string[]>();
  for (const [field, value] of parts) {
    const [head = '', inner] = field.split('.');
    groups.set(head, [...(groups.get(head) ?? []), inner === undefined ? value : `${inner}: ${value}`]);
  }
  const isGroup = (head: string): boolean => parts.some(([field]) => field.startsWith(`${head}.`));
  return [...groups].map(([head, inside]) => `${head}: ${isGroup(head) ? `{${inside.join(', ')}}` : inside.join('')}`);
}

const modalities: Readonly<Record<string, readonly [string, string]>> = {
  prevac: ['steam-prevac', 'pv'],
  gravity: ['steam-gravity', 'gr'],
  vh2o2: ['vh2o2', 'vh'],
  eo: ['eo', 'eo'],
  formaldehyde: ['ltsf', 'ltsf'],
  'dry-heat': ['dry-heat', 'dh'],
};

/** What a new item begins with: what is done, or which method. A method that the quote does not name is left empty. */
function headOf(
  { path, does }: Group,
  reading: QuoteReading,
  placed: readonly Placed[],
  taken: ReadonlySet<string>,
): string[] {
  if (path.endsWith('steps[]')) {
    const isLast = does === 'rinse' && lastRinse.test(reading.quote);
    return [`do: ${isLast ? 'final-rinse' : (does ?? marked.hole)}`];
  }
  const named = new Set(reading.stages.flatMap(({ stage }) => (modalities[stage] === undefined ? [] : [stage])));
  const only = named.size === 1 ? modalities[[...named][0] ?? ''] : undefined;
  const temp = placed.find(({ home }) => home.field === 'temp')?.mentions[0]?.amount;
  const id = freeId(`${only?.[1] ?? 'option'}${temp ?? ''}`, taken);
  const modality = `modality: ${only?.[0] ?? marked.hole}`;
  return path.startsWith('validated') ? [modality] : [`id: ${asValue(id)}`, modality];
}

const lastRinse = /\b(?:final(?:ly)?|last)\b.{0,10}\brins|schlussspül|letzte spül|rinçage final/i;

function freeId(id: string, taken: ReadonlySet<string>): string {
  for (let count = 1; count < 1_000; count++) {
    const tried = count === 1 ? id : `${id}-${count}`;
    if (!taken.has(tried)) return tried;
  }
  return id;
}

/** Every id that the file gives. */
function idsIn(tree: Tree): ReadonlySet<string> {
  const ids = new Set<string>();
  const walk = (inner: Tree): void => {
    if (inner.node === 'list') for (const item of inner.items) walk(item);
    if (inner.node !== 'map') return;
    for (const { key, value } of inner.entries) {
      if (key.text === 'id' && value.node === 'scalar') ids.add(value.text);
      else walk(value);
    }
  };
  walk(tree);
  return ids;
}

const boundChoices = ['stated', 'at_least', 'at_most', 'exactly', 'about'];

function requirement({ home, mentions }: Placed, reading: QuoteReading, cited: string): string {
  const [first, second] = mentions;
  if (first === undefined) return '';
  if (second !== undefined)
    return `{between: [${amountOf(sharing(first, second), home)}, ${amountOf(second, home)}]${cited}}`;
  const said = first.bound === 'none' || first.bound === 'between' ? 'stated' : first.bound;
  const word = marked.choice([said, ...boundChoices.filter((one) => one !== said)]);
  return `{${word}: ${amountOf(first, home)}${asWritten(first, reading)}${cited}}`;
}

/** `3-18 min`: the first number has the unit of the second. */
function sharing(first: NumberMention, second: NumberMention): NumberMention {
  return first.quantities.length > 0
    ? first
    : { ...first, quantities: second.quantities.map((one) => ({ ...one, amount: first.amount })) };
}

/** What the page prints, where it gives the value twice. */
function asWritten({ span, pair }: NumberMention, { numbers, quote }: QuoteReading): string {
  const partner = pair === undefined ? undefined : numbers[pair];
  if (partner === undefined) return '';
  const start = Math.min(span.start, partner.span.start);
  const end = Math.max(span.end, partner.span.end);
  const close = quote[end] === ')' && quote.slice(start, end).includes('(') ? 1 : 0;
  return `, as_written: ${quoteScalar(quote.slice(start, end + close))}`;
}
