import { columnsIn } from '../../quantity/prose/column-titles.ts';
import { sentToService, whenNeeded } from '../../quantity/prose/named/acts.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { MapTree } from '../../syntax/tree.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import type { ReadFields } from './cited-fields.ts';
import type { Sentence } from './open-sentences.ts';
import { saidBeside } from './quote-beside.ts';
import { methodAbove, underMethod, withCaption } from './quote-caption.ts';
import { cooled } from './quote-cooling.ts';
import { cyclesInColumns } from './quote-cycle-columns.ts';
import { dryingOfCycles } from './quote-cycle-drying.ts';
import { factsOf } from './quote-facts.ts';
import type { Matched } from './quote-match.ts';
import { matchNumbers } from './quote-match.ts';
import { isPulses } from './quote-pulses.ts';
import { inRows } from './quote-rows.ts';
import { joinedByOr, lookedAtAgain, packages, strictlyMeant } from './quote-second-look.ts';
import type { Section } from './quote-section.ts';
import { inColumns, isOfCycles, type TableAbove, underColumns } from './quote-tables.ts';
import { fieldsFor, idsIn } from './quote-values.ts';
import { fieldsOfWays, isTogether, waysJoined } from './quote-ways.ts';
import { wordedOf } from './quote-worded.ts';

/**
 * Part `reading`: one sentence of an instruction to the fields that its words say. Proposes and never decides: a bound word, a method or a
 * stage that the words leave open is asked. Knows nothing of dialogs.
 */

export interface Around {
  readonly kind: Kind;
  readonly section: Section;
  readonly src: string;
  /** Its id in the tree. */
  readonly statement: string;
  readonly tree: MapTree;
  /** That the sentence is a row of. */
  readonly table: TableAbove | undefined;
  readonly way: string | undefined;
}

/** The fields that the words of one sentence make, and what the reader is told of the rest. */
export function fieldsOfReading(sentence: QuoteReading, around: Around): ReadFields {
  const { kind, section, src, tree, table, way } = around;
  const caption = table === undefined ? methodOver(sentence, around) : table.caption;
  const reading = table === undefined ? underMethod(sentence, caption) : inTable(sentence, table, section);
  if (columnsIn(reading.quote) !== undefined || sentToService.test(reading.quote)) return { fields: [], left: [] };
  const joined = kind === 'device' ? waysJoined(reading, tree, section) : undefined;
  const together = isTogether(way) ? way : joined?.together;
  if (joined !== undefined)
    return { fields: together === undefined ? [] : fieldsOfWays(joined, together, src), left: [] };
  const dried = kind === 'device' && table === undefined ? dryingOfCycles(reading, tree, src, section) : [];
  const columned = kind === 'device' ? cyclesInColumns(sentence, tree, around.statement) : [];
  if (dried.length + columned.length > 0)
    return { fields: [...columned, ...(columned.length > 0 ? [] : dried)], left: [] };
  const matched = lookedAtAgain(placesOf(reading, around), reading);
  return matched.placed.length === 0
    ? inWords(matched, reading, around)
    : withNumbers(matched, reading, { ...around, caption });
}

/** Cycles in prose take their method from a line above, under the heading of sterilizing. */
function methodOver(reading: QuoteReading, { kind, section, tree, statement }: Around): Sentence | undefined {
  const isHot = reading.numbers.some(({ quantities }) =>
    quantities.some(({ dimension }) => dimension === 'temperature'),
  );
  const isCycles = kind === 'device' && isHot && /sterili|stérili|autoclav/.test(section.text);
  return isCycles ? methodAbove(tree, statement, reading) : undefined;
}

function inTable(sentence: QuoteReading, table: TableAbove, section: Section): QuoteReading {
  const row = underColumns(sentence, table.columns);
  return isOfCycles(table.columns, section) ? underMethod(row, table.caption) : row;
}

function placesOf(reading: QuoteReading, { kind, table, section }: Around): Matched {
  return (
    (table === undefined ? undefined : inColumns(reading, kind, table.columns, section)) ??
    inRows(reading, kind, section) ??
    matchNumbers(reading, kind, section)
  );
}

function inWords(matched: Matched, reading: QuoteReading, { kind, section, src, tree, table }: Around): ReadFields {
  const worded = wordedOf(reading, kind, { src, section, taken: idsIn(tree) });
  // A row whose numbers have no place does not say that its step is asked for, and no more.
  const all = table !== undefined && matched.left.length > 0 ? [] : factsOf(reading, kind, src, section);
  // A stage that is only named beside what the words say, or is said in more detail by them.
  const facts = worded.fields.length === 0 ? all : all.filter(({ path }) => path === moist);
  const cooling = kind === 'device' && facts.length + worded.fields.length === 0 ? cooled(reading, src, section) : [];
  const fields = [...facts, ...worded.fields, ...cooling];
  const narrowed = facts.flatMap(({ condition }) =>
    condition === undefined ? [] : [`"${condition}" narrows what is forbidden: it stands under "only when"`],
  );
  return { fields, left: [...worded.left, ...told(matched, reading, fields), ...narrowed] };
}

const moist = 'point_of_use.keep_moist';

interface Under extends Around {
  readonly caption: Sentence | undefined;
}

function withNumbers(matched: Matched, reading: QuoteReading, around: Under): ReadFields {
  const { kind, section, src, tree, table, caption } = around;
  const beside = kind === 'device' ? saidBeside(matched, reading, { src, section }) : { fields: [], left: [] };
  const own = fieldsFor(matched.placed, reading, { src, taken: idsIn(tree), section });
  const cycles = withCaption(own, reading, { caption, columns: table?.columns ?? [] });
  const fields = [...cycles, ...beside.fields];
  return { fields, left: [...beside.left, ...told(matched, reading, fields)] };
}

function told({ placed, left }: Matched, reading: QuoteReading, fields: readonly NewField[]): readonly string[] {
  return [
    ...left
      .filter(
        (number) => !isLayers(number, fields) && !isOfDevice(number, fields) && !isCounted(number, reading, fields),
      )
      .map((number) => (number.includes('(') ? number : `${number} (no field found)`)),
    ...strictlyMeant(placed, reading),
    ...joinedByOr(placed, reading),
    ...packagesUnsaid(reading, fields).map((words) => `no field for: "${words}"`),
    ...conditionTold(reading.quote, fields),
  ];
}

/** `where needed`, where no field of it has a place for that. */
function conditionTold(quote: string, fields: readonly NewField[]): readonly string[] {
  const [words] = whenNeeded.exec(quote) ?? [];
  const isHeld =
    words === undefined ||
    fields.length === 0 ||
    fields.some(({ path, value }) => path.endsWith('.when') || value.includes('when: '));
  return isHeld ? [] : [`"${words}" narrows it and stands in no field`];
}

/** Two layers of a wrap are a packaging of their own. */
function isLayers(number: string, fields: readonly NewField[]): boolean {
  return /layers?$/i.test(number) && fields.some(({ value }) => value === 'double-wrap');
}

/** Pulses of a cycle are written into it. */
function isCounted(number: string, reading: QuoteReading, fields: readonly NewField[]): boolean {
  const at = reading.quote.indexOf(number);
  const pulses = reading.numbers.filter((one) => isPulses(one, reading));
  return (
    pulses.some(({ span }) => span.start >= at && span.start < at + number.length) &&
    fields.some(({ value }) => value.includes('pulses: '))
  );
}

/** Numbers of a lumen or a part are written into its own item. */
function isOfDevice(number: string, fields: readonly NewField[]): boolean {
  const printed = number.split(' (')[0] ?? number;
  const own = fields.filter(({ path }) => path === 'lumens[]' || path === 'parts[]');
  return own.some(({ value }) => marked.plain(value).includes(printed.replace(/[.,]$/, '')));
}

/** `132 °C, 4 min, double wrapped`: packages that the sentence names and that no field of it holds. */
function packagesUnsaid({ quote, stages }: QuoteReading, fields: readonly NewField[]): readonly string[] {
  if (fields.length === 0 || fields.some(({ path }) => path.startsWith('packaging') || path === 'storage.time'))
    return [];
  return stages.filter(({ stage }) => packages.has(stage)).map(({ span }) => quote.slice(span.start, span.end));
}
