import type { Span } from '../../server/src/base/span.ts';
import { readTree } from '../../server/src/syntax/read.ts';
import type { ListTree, MapTree, Tree } from '../../server/src/syntax/tree.ts';

/**
 * Every place of a rule file where a person writes: keys and values left out, added and half typed, items before and behind the others. Each
 * knows what it is about, so that a test can tell whether an accepted offer was read as what was meant.
 */
export interface Context extends Place {
  /** Keys and numbers of items that lead to the map, list or value. */
  readonly steps: Steps;
  /** The same for the schema: `cleaning.all_of[].steps[]`. */
  readonly path: string;
}

export type Steps = readonly (string | number)[];

/** A text with a cursor, and what is written at it. */
interface Place {
  /** How it is written there: `key on a line above another`, `value behind its colon`, ... */
  readonly form: string;
  readonly asks: 'key' | 'value' | 'item';
  /** Where a new item comes in. */
  readonly index?: number;
  readonly text: string;
  readonly cursor: number;
}

export function contextsOf(text: string): readonly Context[] {
  const { tree } = readTree(text);
  return tree === undefined ? [] : contextsIn(text, tree, []);
}

function contextsIn(text: string, tree: Tree, steps: Steps): readonly Context[] {
  if (tree.node === 'map') {
    const values = tree.entries.flatMap(({ key, value }) => [
      ...about(valuePlaces(text, key.span, value), [...steps, key.text]),
      ...contextsIn(text, value, [...steps, key.text]),
    ]);
    return [...about(keyPlaces(text, tree), steps), ...values];
  }
  if (tree.node !== 'list') return [];
  const items = tree.items.flatMap((item, index) => contextsIn(text, item, [...steps, index]));
  return [...about(itemPlaces(text, tree), steps), ...items];
}

function about(places: readonly Place[], steps: Steps): readonly Context[] {
  const path = steps.map((step) => (typeof step === 'number' ? '[]' : `.${step}`)).join('');
  return places.map((place) => ({ ...place, steps, path: path.slice(1) }));
}

/** The text with `put` in the place of a span; `‸` in it is the cursor. */
function edited(text: string, { start, end }: Span, put: string): Pick<Place, 'text' | 'cursor'> {
  return { text: text.slice(0, start) + put.replace('‸', '') + text.slice(end), cursor: start + put.indexOf('‸') };
}

function at(offset: number): Span {
  return { start: offset, end: offset };
}

function lineStart(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

function isFlow(text: string, { span }: Tree): boolean {
  return '{['.includes(text[span.start] ?? ' ');
}

/** The end of the last line of a group in block style. */
function behind(text: string, { span }: Tree): number {
  const end = text.indexOf('\n', text.slice(0, span.end).trimEnd().length);
  return end < 0 ? text.length : end;
}

function keyPlaces(text: string, map: MapTree): readonly Place[] {
  return isFlow(text, map) ? keysBetweenBraces(text, map) : keysOnLines(text, map);
}

function keysBetweenBraces(text: string, { span, entries }: MapTree): readonly Place[] {
  const close = text.slice(0, span.end).lastIndexOf('}');
  const key = (form: string, offset: number, put: string): Place => ({
    form: `key ${form}`,
    asks: 'key',
    ...edited(text, at(offset), put),
  });
  if (entries.length === 0) return [key('between empty braces', close, '‸')];
  const second = entries[1]?.key.span.start;
  return [
    key('behind the opening brace', span.start + 1, '‸ '),
    key('before the closing brace', close, ' ‸'),
    key('behind a last comma', close, ', ‸'),
    key('right at a last comma', close, ',‸'),
    key('half typed, between braces', close, ', e‸'),
    ...(second === undefined ? [] : [key('before another', second, '‸ '), key('between two commas', second, '‸, ')]),
  ];
}

function keysOnLines(text: string, map: MapTree): readonly Place[] {
  const above = map.entries.flatMap(({ key }, index): readonly Place[] => {
    const start = lineStart(text, key.span.start);
    const before = text.slice(start, key.span.start);
    if (before.trim() !== '') return [];
    const form = `key on a line above ${index === 0 ? 'all' : 'another'}`;
    return [{ form, asks: 'key', ...edited(text, at(start), `${before}‸\n`) }];
  });
  const first = map.entries[0]?.key.span.start ?? map.span.start;
  const indent = ' '.repeat(first - lineStart(text, first));
  const end = behind(text, map);
  return [
    ...above,
    { form: 'key on a line below all', asks: 'key', ...edited(text, at(end), `\n${indent}‸`) },
    { form: 'key below an empty line', asks: 'key', ...edited(text, at(end), `\n\n${indent}‸`) },
    { form: 'key half typed', asks: 'key', ...edited(text, at(end), `\n${indent}e‸`) },
  ];
}

function valuePlaces(text: string, key: Span, value: Tree): readonly Place[] {
  const colon = text.indexOf(':', key.end);
  const isLine = value.node === 'scalar' || isFlow(text, value);
  const whole = { start: colon + 1, end: isLine ? value.span.end : behind(text, value) };
  const column = key.start - lineStart(text, key.start);
  const before = text.slice(key.start - column, key.start);
  const inBraces = before.replace(/^( *- )*/, '').trim() !== '';
  const place = (form: string, where: Span, put: string): Place => ({
    form: `value ${form}${inBraces ? ', between braces' : ''}`,
    asks: 'value',
    ...edited(text, where, put),
  });
  const places = [place('behind its colon', whole, ' ‸'), place('right at its colon', whole, '‸')];
  if (value.node === 'scalar' && value.style === 'plain')
    places.push(
      place('over another, at its end', at(value.span.end), '‸'),
      place('over another, inside it', at(value.span.start + 1), '‸'),
    );
  if (!isLine) places.push(place('on the next line', whole, `\n${' '.repeat(column + 2)}‸`));
  return places;
}

function itemPlaces(text: string, list: ListTree): readonly Place[] {
  const { items, span } = list;
  const item = (form: string, offset: number, put: string, index: number): Place => ({
    form: `item ${form}`,
    asks: 'item',
    index,
    ...edited(text, at(offset), put),
  });
  if (isFlow(text, list)) {
    const close = text.slice(0, span.end).lastIndexOf(']');
    if (items.length === 0) return [item('between empty brackets', close, '‸', 0)];
    return [
      item('behind the opening bracket', span.start + 1, '‸ ', 0),
      item('before the closing bracket', close, ' ‸', items.length),
      item('behind a last comma', close, ', ‸', items.length),
    ];
  }
  const start = lineStart(text, span.start);
  const indent = ' '.repeat(span.start - start);
  const end = behind(text, list);
  const ownLine = text.slice(start, span.start).trim() === '';
  return [
    ...(ownLine ? [item('on a line above all', start, `${indent}- ‸\n`, 0)] : []),
    item('on a line below all', end, `\n${indent}- ‸`, items.length),
    item('right at its dash', end, `\n${indent}-‸`, items.length),
    item('where no dash is yet', end, `\n${indent}‸`, items.length),
  ];
}

/** What a file says, as text to compare: keys, items and words in their order, whatever the layout. */
export function sayingOf(tree: Tree | undefined): string {
  switch (tree?.node) {
    case 'map':
      return `{${tree.entries.map(({ key, value }) => `${JSON.stringify(key.text)}:${sayingOf(value)}`).join()}}`;
    case 'list':
      return `[${tree.items.map(sayingOf).join()}]`;
    case 'scalar':
      return JSON.stringify(tree.text);
    default:
      return '';
  }
}

export function treeAt(tree: Tree | undefined, steps: Steps): Tree | undefined {
  let inner = tree;
  for (const step of steps) {
    if (inner?.node === 'map') inner = inner.entries.find(({ key }) => key.text === step)?.value;
    else inner = inner?.node === 'list' && typeof step === 'number' ? inner.items[step] : undefined;
  }
  return inner;
}

/** The tree with another in the place of the one at `steps`; undefined takes its first key, or its item, away. */
export function withAt(tree: Tree, [step, ...rest]: Steps, put: Tree | undefined): Tree | undefined {
  if (step === undefined) return put;
  if (tree.node === 'map') {
    const found = tree.entries.findIndex(({ key }) => key.text === step);
    const entries = tree.entries.flatMap((entry, index) => {
      const value = index === found ? withAt(entry.value, rest, put) : entry.value;
      return value === undefined ? [] : [{ ...entry, value }];
    });
    return { ...tree, entries };
  }
  if (tree.node !== 'list') return tree;
  return { ...tree, items: tree.items.flatMap((item, at) => (at === step ? (withAt(item, rest, put) ?? []) : [item])) };
}
