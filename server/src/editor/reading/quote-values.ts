import { whenNeeded } from '../../quantity/prose/named/acts.ts';
import { detergentClasses, neutralising } from '../../quantity/prose/named/detergents.ts';
import { firstOf, wordFor } from '../../quantity/prose/named/named.ts';
import { lastRinse } from '../../quantity/prose/named/phases.ts';
import { watersIn } from '../../quantity/prose/named/water.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import { isShelfLife } from '../../quantity/prose/shelf-life.ts';
import { hasCells } from '../../quantity/prose/table-rows.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import type { Tree } from '../../syntax/tree.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { inGroup } from './cited-fields.ts';
import type { Group, Home } from './home.ts';
import { brushWords, classOf, gradeIn } from './quote-agents.ts';
import { phaseBefore } from './quote-clauses.ts';
import type { Placed } from './quote-match.ts';
import { amountOf } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';

/** Numbers that have their places, as the values that are written there. */

export interface Cited {
  readonly src: string;
  /** Ids that the file has already. */
  readonly taken: ReadonlySet<string>;
  /** The heading above the sentence, where there is one. */
  readonly section?: Section;
}

/** Numbers of one group belong together: into one new item, or beside each other in one group of fields. */
export function fieldsFor(
  placed: readonly Placed[],
  reading: QuoteReading,
  { src, taken, section }: Cited,
): readonly NewField[] {
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
  const ids = new Set(taken);
  for (const [group, parts] of items) {
    const named = group.does === undefined ? parts : [...withAgents(parts, reading.quote), ...brushIn(group, reading)];
    const { id, head } = headOf(group, reading, placed, ids);
    ids.add(id);
    const context = isCycle(group) ? contextsOf(reading, section) : [];
    const inside = [head, ...context, ...withGroups(named), ...onlyWhen(group, reading.quote), `src: ${src}`];
    fields.push({ path: group.path, value: `{${inside.join(', ')}}`, head });
  }
  return [
    ...fields,
    ...waters(placed, reading, src),
    ...detergents(placed, reading.quote, src),
    ...neutraliser(placed, reading),
  ];
}

/** `if necessary`: a step holds it; of other numbers the reader is told. */
function onlyWhen({ does }: Group, quote: string): readonly string[] {
  const [words] = whenNeeded.exec(quote) ?? [];
  return does === undefined || words === undefined ? [] : [`when: ${asValue(words)}`];
}

/** `a soft nylon brush`: what the brush is like. */
function brushIn({ does }: Group, { quote, negations }: QuoteReading): readonly (readonly [string, string])[] {
  if (does !== 'brush' || negations.some(({ kind }) => kind === 'prohibition')) return [];
  return brushWords(quote).map(([field, value]) => [`brush.${field}`, value] as const);
}

/** `twice in fresh water, once in purified water`: the water of one of them is not that of the others. */
const severalTimes = /\b(?:once|twice|times)\b.*\b(?:once|twice|times)\b/i;

/** What a step is done with, beside its numbers. */
function withAgents(
  parts: readonly (readonly [string, string])[],
  quote: string,
): readonly (readonly [string, string])[] {
  const [detergent, grade] = [classOf(quote), severalTimes.test(quote) ? undefined : gradeIn(quote)];
  return [
    ...parts,
    ...(detergent === undefined ? [] : [['detergent.class', `[${detergent}]`] as const]),
    ...(grade === undefined ? [] : [['water.grade', grade] as const]),
  ];
}

/** The water of a rinse that is no step, and of a phase of a machine: it stands beside the numbers of the one that it is named under. */
function waters(placed: readonly Placed[], { quote }: QuoteReading, src: string): readonly NewField[] {
  const text = quote.toLowerCase();
  const withWater = (path: string): boolean => /(?:^|[._])rinse$/.test(path) || phasesWithWater.has(path);
  const paths = [...new Set(placed.map(({ group }) => group.path).filter(withWater))];
  const named = watersIn(text);
  return paths.flatMap((path) => {
    const own =
      paths.length === 1 && phasesIn(placed) < 2 ? named : named.filter((one) => phaseBefore(text, one) === path);
    const grades = [...new Set(own.map(({ grade }) => grade))];
    const [grade = marked.hole('grade')] = grades;
    if (grades.length !== 1) return [];
    return path.endsWith('final_rinse')
      ? inGroup(path, [['grade', grade]], src)
      : [{ path: `${path}.water`, value: `{grade: ${grade}, src: ${src}}` }];
  });
}

function phasesIn(placed: readonly Placed[]): number {
  return new Set(placed.map(({ group }) => group.path).filter((path) => path.startsWith('mechanical.'))).size;
}

const phasesWithWater: ReadonlySet<string> = new Set(
  ['prewash', 'enzyme_wash', 'wash', 'neutralise', 'thermal'].map((phase) => `mechanical.${phase}`),
);

/** The detergent of a machine stands beside its phases, and that of cleaning by hand beside its own numbers. */
function detergents(placed: readonly Placed[], quote: string, src: string): readonly NewField[] {
  // A cell has no room for the word `detergent`.
  const detergent = classOf(quote) ?? (hasCells(quote) ? wordFor(detergentClasses, quote.toLowerCase()) : undefined);
  const of = (path: string): boolean => placed.some(({ group }) => group.path === path);
  const way =
    of('mechanical.wash') || of('mechanical.detergent') ? 'mechanical' : of('manual.detergent') ? 'manual' : undefined;
  const enzymes = of('mechanical.enzyme_wash') ? wordFor(detergentClasses, quote.toLowerCase()) : undefined;
  const own: readonly NewField[] =
    enzymes === undefined
      ? []
      : [{ path: 'mechanical.enzyme_wash.detergent', value: `{class: [${enzymes}], src: ${src}}` }];
  return detergent === undefined || way === undefined
    ? own
    : [...own, ...inGroup(`${way}.detergent`, [['class', `[${detergent}]`]], src)];
}

/** `Neutralising, 2 min, citric acid`: with what. */
function neutraliser(placed: readonly Placed[], { quote, negations }: QuoteReading): readonly NewField[] {
  const path = 'mechanical.neutralise';
  const agent = firstOf(neutralising, quote);
  const isMeant = placed.some(({ group }) => group.path === path) && negations.length === 0;
  return agent === undefined || !isMeant ? [] : [{ path: `${path}.agent`, value: asValue(agent) }];
}

/** `brush.diameter` and `brush.length` of one item: `brush: {diameter: ..., length: ...}`. */
export function withGroups(parts: readonly (readonly [string, string])[]): readonly string[] {
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

/** Stages that name a method of sterilization. */
export const methodStages: ReadonlySet<string> = new Set(Object.keys(modalities));

/** The one method that these stages name. */
export function methodOf(stages: readonly string[]): string | undefined {
  const named = new Set(stages.flatMap((stage) => modalities[stage]?.[0] ?? []));
  return named.size === 1 ? [...named][0] : undefined;
}

function isCycle({ fields }: Group): boolean {
  return fields.some(({ field }) => field === 'exposure');
}

/** For whom and when a cycle is. */
function contextsOf(reading: QuoteReading, section: Section | undefined): readonly string[] {
  const isPrion = reading.flags.some(({ flag }) => flag === 'prion') && suspected.test(reading.quote);
  return [...(isImmediate(reading, section) ? ['context: iuss'] : []), ...(isPrion ? ['when: prion-suspected'] : [])];
}

const suspected = /suspect|verdacht|suspic|soupçon/i;

/** `For immediate use only: 132 °C, 4 minutes`: a cycle for this patient, now. A sentence that forbids something says no such thing. */
function isImmediate({ quote, stages, negations }: QuoteReading, section: Section | undefined): boolean {
  const isOnlyAbove = section?.stages.includes('iuss') === true && !/terminal|wrapped|stored/.test(section.text);
  const isForbidding = negations.some(({ span }) => !/^\s(?:applicable|zutreffend|dry)/i.test(quote.slice(span.end)));
  return !isForbidding && (isOnlyAbove || stages.some(({ stage }) => stage === 'iuss'));
}

/** What a new item begins with: what is done, or which method. A method that the quote does not name is left empty. */
function headOf(
  group: Group,
  reading: QuoteReading,
  placed: readonly Placed[],
  taken: ReadonlySet<string>,
): { readonly id: string; readonly head: string } {
  const { path, does } = group;
  if (path.endsWith('steps[]')) {
    const isLast = does === 'rinse' && lastRinse.test(reading.quote);
    return { id: '', head: `do: ${isLast ? 'final-rinse' : (does ?? marked.hole('do'))}` };
  }
  const stages = group.named ?? reading.stages.map(({ stage }) => stage);
  const named = new Set(stages.filter((stage) => methodStages.has(stage)));
  const only = named.size === 1 ? [...named][0] : undefined;
  const temp = placed.find((one) => one.group === group && one.home.field === 'temp')?.mentions[0]?.amount;
  const { id, head } = cycleNamed(only, temp, taken);
  return { id, head: path.startsWith('validated') ? head.replace(/^.*(?=modality: )/, '') : head };
}

/** A new cycle by its method and temperature; a method that nobody named is left empty. */
export function cycleNamed(
  method: string | undefined,
  temp: number | undefined,
  taken: ReadonlySet<string>,
): { readonly id: string; readonly head: string } {
  const [word = marked.hole('modality'), short = 'option'] = modalities[method ?? ''] ?? [];
  const id = freeId(`${short}${temp ?? ''}`, taken);
  return { id, head: `id: ${asValue(id)}, modality: ${word}` };
}

export function freeId(id: string, taken: ReadonlySet<string>): string {
  for (let count = 1; count < 1_000; count++) {
    const tried = count === 1 ? id : `${id}-${count}`;
    if (!taken.has(tried)) return tried;
  }
  return id;
}

/** Every id that the file gives. */
export function idsIn(tree: Tree): ReadonlySet<string> {
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

export function requirement(placed: Placed, reading: QuoteReading, cited: string): string {
  const { group, mentions } = placed;
  const [first, second] = mentions;
  if (first === undefined) return '';
  const home = asCounted(placed.home, first, reading);
  if (second !== undefined)
    return `{between: [${amountOf(sharing(first, second), home)}, ${amountOf(second, home)}]${cited}}`;
  const isLongest = group.path === 'storage' && home.field === 'time';
  const isLimit = isShelfLife(reading.quote.slice(0, first.span.start)) || isShared(first, reading);
  const unsaid = isLongest && isLimit ? 'at_most' : 'stated';
  const printed = first.bound === 'none' || first.bound === 'between' ? unsaid : first.bound;
  // `Avoid temperatures above 140 °C`: whatever stands around it, a limit of heat is its highest.
  const said = group.path === 'limits' && home.field === 'temp' && printed === 'at_least' ? 'at_most' : printed;
  const amount = amountOf(first, home);
  const name = home.field.split('.').at(-1) ?? home.field;
  const word = marked.choice([said, ...boundChoices.filter((one) => one !== said)], name, amount);
  return `{${word}: ${amount}${asWritten(first, reading)}${cited}}`;
}

/** `A maximum of 6 months in containers, 3 months in pouches`: the bound of the first holds for what is listed behind it. */
function isShared(one: NumberMention, { numbers }: QuoteReading): boolean {
  return numbers.some(({ span, bound, quantities }) => {
    const isTime = quantities.some(({ dimension }) => dimension === 'time');
    return isTime && bound === 'at_most' && span.end <= one.span.start;
  });
}

/** `200 reprocessing cycles`: what is counted, in the word of the page. */
function asCounted(home: Home, { span }: NumberMention, { quote }: QuoteReading): Home {
  const isOfCycles =
    /(?<!\p{L})\p{L}*(?:cycles?|zyklen)(?!\p{L})/iu.test(quote) &&
    !/^\s*(?:uses|times|mal|fois)\b/i.test(quote.slice(span.end));
  return home.counted === 'uses' && isOfCycles ? { ...home, counted: 'cycles' } : home;
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
