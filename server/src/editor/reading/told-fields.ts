import { lowered, plainName } from '../../model/plain-words.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Field, Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { readTree } from '../../syntax/read.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';

/**
 * Fields as people read them, in the titles of the schema and the words of the trade: `Manual cleaning: rinse, temperature at most 40 °C,
 * time at least 2 min`. What is said of one part of the work stands together, and its name stands once.
 */
export function told(kind: Kind, fields: readonly NewField[], words: readonly string[]): string {
  const groups = new Map<string, Part[]>();
  for (const field of fields.filter(({ path }) => !path.endsWith('.src') && path !== 'src')) {
    const { titles, shape } = wayTo(kind, field.path);
    const [top = field.path, ...inner] = titles;
    const value = valueTold(marked.plain(field.value, words), shape);
    const part = { names: inner.map(lowered), path: field.path, ...value };
    groups.set(top, [...(groups.get(top) ?? []), isRequired(part, shape) ? requiredTold(part) : part]);
  }
  return [...groups].map(([title, parts]) => `${title}: ${joined(parts)}`).join(' | ');
}

/** `Storage: Longest storage`: the titles that lead to a field. */
export function titlesOf(kind: Kind, path: string): string {
  return wayTo(kind, path).titles.join(': ');
}

/** What may stand in a field. */
export function shapeAt(kind: Kind, path: string): Shape | undefined {
  return wayTo(kind, path).shape;
}

/** The title of a key somewhere in a field: `time` in a step is `time`, in an option of sterilization `exposure`. */
export function titleOf(kind: Kind, path: string, key: string): string {
  const { titles, shape } = wayTo(kind, path);
  const own = shape === undefined ? undefined : titleInside(shape, key, deepest);
  const last = path.replaceAll('[]', '').split('.').at(-1) === key ? titles.at(-1) : undefined;
  return lowered(own ?? last ?? key.replaceAll('_', ' '));
}

const deepest = 4;

function titleInside(shape: Shape, key: string, depth: number): string | undefined {
  if (shape.form === 'list') return titleInside(shape.item, key, depth);
  if (shape.form !== 'record' || depth === 0) return undefined;
  const own = shape.fields.get(key)?.title;
  if (own !== undefined) return own;
  for (const field of shape.fields.values()) {
    const found = titleInside(field.shape, key, depth - 1);
    if (found !== undefined) return found;
  }
  return undefined;
}

interface Told {
  readonly text: string;
  /** A demand in numbers stands behind its title as it is, anything else behind a colon. */
  readonly is: 'demand' | 'use' | 'group' | 'words';
}

interface Part extends Told {
  readonly names: readonly string[];
  readonly path: string;
}

function isRequired({ path, names }: Part, shape: Shape | undefined): boolean {
  return shape?.form === 'flag' && path.endsWith('.required') && names.length > 0;
}

/** `insulation test required`, not `required: yes`. */
function requiredTold(part: Part): Part {
  return { ...part, names: part.names.slice(0, -1), text: asRequired(part.text), is: 'use' };
}

function asRequired(text: string): string {
  return text === 'no' ? 'not required' : 'required';
}

/** What only says how several things belong together, or that something is done step by step. */
const silent: ReadonlySet<string> = new Set(['all_of', 'any_of', 'steps', 'use']);

function wayTo(kind: Kind, path: string): { readonly titles: readonly string[]; readonly shape: Shape | undefined } {
  const titles: string[] = [];
  let shape: Shape | undefined = shapeOf(kind);
  for (const key of path.replaceAll('[]', '').split('.')) {
    if (/^(?:\d+|\*)$/.test(key)) {
      shape = shape?.form === 'list' ? shape.item : shape;
      continue;
    }
    const field: Field | undefined = shape?.form === 'record' ? shape.fields.get(key) : undefined;
    if (!silent.has(key)) titles.push(field?.title || key.replaceAll('_', ' '));
    shape = field?.shape;
  }
  return { titles, shape: shape?.form === 'list' && path.endsWith('[]') ? shape.item : shape };
}

function valueTold(value: string, shape: Shape | undefined): Told {
  const { tree } = readTree(`v: ${value}`);
  const read = tree?.node === 'map' ? valueUnder(tree, 'v') : undefined;
  return read === undefined ? { text: value, is: 'words' } : treeTold(read, shape);
}

/** Behind the first of a list only what differs is named again. */
function joined(parts: readonly Part[]): string {
  let text = '';
  for (const [at, part] of parts.entries()) {
    const before = parts[at - 1];
    const [first = '', ...rest] = part.names;
    const isSame = before !== undefined && before.path === part.path && part.path.endsWith('[]');
    const isBeside = before !== undefined && rest.length > 0 && before.names[0] === first;
    const isPlain = before !== undefined && rest.length === 0 && before.names.length === 1;
    const names = isSame ? [] : isBeside ? rest : part.names;
    const isShort = isSame && parts.every((one) => one.path !== part.path || !one.text.includes(','));
    const between = before === undefined ? '' : isBeside || isPlain || isShort ? ', ' : '; ';
    text += `${between}${named(names, part)}`;
  }
  return text;
}

function named(names: readonly string[], { text, is }: Told): string {
  if (names.length === 0) return text;
  return `${names.join(' ')}${is === 'words' ? ':' : ''} ${text}`;
}

function treeTold(tree: Tree, shape: Shape | undefined): Told {
  switch (tree.node) {
    case 'map':
      return mapTold(tree, shape);
    case 'list':
      return { text: itemsTold(tree.items, shape), is: 'words' };
    case 'scalar':
      return {
        text: scalarTold(tree.text, shape),
        is: isUse(shape) ? 'use' : shape?.form === 'quantity' ? 'demand' : 'words',
      };
    case 'empty':
      return { text: '', is: 'words' };
  }
}

/** Whether the page permits, demands or forbids it. */
function isUse(shape: Shape | undefined): boolean {
  return shape?.form === 'words' && shape.words.has('required');
}

function scalarTold(text: string, shape: Shape | undefined): string {
  if (shape?.form === 'flag') return text === 'true' ? 'yes' : text === 'false' ? 'no' : text;
  return shape?.form === 'text' && /\s/.test(text) ? text : plainName(text);
}

function itemsTold(items: readonly Tree[], shape: Shape | undefined): string {
  const item = shape?.form === 'list' ? shape.item : undefined;
  const all = items.map((one) => treeTold(one, item).text);
  return all.length === 2 ? all.join(' and ') : all.join(', ');
}

/** Where it comes from and how other files name it is no part of what is said. */
const besides: ReadonlySet<string> = new Set(['src', 'id', 'checked']);

/** What an item is, which needs no title. */
const heads: ReadonlySet<string> = new Set(['do', 'what', 'modality', 'name', 'phase', 'stage', 'grade', 'class']);

function mapTold(map: MapTree, shape: Shape | undefined): Told {
  const isDemand = shape?.form === 'record' && shape.dimension !== undefined;
  if (isDemand) return { text: demandTold(map), is: 'demand' };
  const fields = shape?.form === 'record' ? shape.fields : undefined;
  const parts: string[] = [];
  for (const { key, value } of map.entries.filter((entry) => !besides.has(entry.key.text))) {
    const field = fields?.get(key.text);
    const inner = treeTold(value, field?.shape);
    const title = lowered(field?.title || key.text.replaceAll('_', ' '));
    if (key.text === 'as_written' && parts.length > 0) parts.push(`${parts.pop() ?? ''} (${inner.text})`);
    else if (key.text === 'required' && field?.shape.form === 'flag') parts.push(asRequired(inner.text));
    else if (silent.has(key.text) || (parts.length === 0 && heads.has(key.text))) parts.push(inner.text);
    else parts.push(named([title], inner));
  }
  return { text: parts.join(', '), is: 'group' };
}

/** `at least 4 min`; with what is written on the page left out, since the sentence is shown. */
function demandTold({ entries }: MapTree): string {
  const said = entries.filter(({ key }) => !besides.has(key.text) && key.text !== 'as_written');
  return said.map(({ key, value }) => `${boundWord(key.text)} ${amount(key.text, value)}`).join(', ');
}

function boundWord(key: string): string {
  return key === 'ambiguous' ? 'unclear:' : key.replaceAll('_', ' ');
}

function amount(key: string, value: Tree): string {
  if (value.node === 'scalar') return value.text;
  const ends = value.node === 'list' ? value.items.flatMap((item) => (item.node === 'scalar' ? [item.text] : [])) : [];
  const [low = '', high = ''] = ends;
  const unit = high.replace(/^[-\d.,]+/, '');
  const first = key === 'between' && unit !== '' && low.endsWith(unit) ? low.slice(0, low.length - unit.length) : low;
  return ends.length === 2 ? `${first} and ${high}` : ends.join(', ');
}
