import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { entriesOf, type Keyed } from '../writing/nested-flow.ts';
import { sentencesOf } from './open-sentences.ts';

export interface IntoCleaning {
  readonly fields: readonly NewField[];
  /** Fields that could stand in more than one place: the reader decides. */
  readonly left: readonly string[];
}

/** Ways of cleaning that a file may write as a group of its own or as a stage under `cleaning`. */
export const stagesOfCleaning: readonly string[] = ['manual', 'ultrasonic', 'mechanical', 'disinfection'];

/**
 * Where a file has its stages under `cleaning`, or has left that line open, what belongs to a stage goes there and not into a second
 * group of the same name beside it. Of several stages of one sort the one that cites the sentence already is meant, else none is chosen.
 */
export function intoCleaning(root: MapTree, fields: readonly NewField[], statement: string): IntoCleaning {
  const cleaning = valueUnder(root, 'cleaning');
  if (cleaning === undefined) return { fields, left: [] };
  const placed: NewField[] = [];
  const left: string[] = [];
  for (const [head, group] of byHead(fields)) {
    const found =
      stagesOfCleaning.includes(head) && isEmpty(valueUnder(root, head))
        ? placesFor(head, cleaning, root, statement)
        : 'own';
    // Of steps before and behind a bath, those before it are what a machine is preceded by.
    const isOfRow = Array.isArray(found) && found.every((place) => /^cleaning\.all_of\.\d+$/.test(place));
    const places = isOfRow && group.every(isNeeded) ? found.slice(0, 1) : found;
    if (places === 'own' || (places === 'new' && group.every(forbids))) placed.push(...group);
    else if (places === 'new')
      placed.push({ path: 'cleaning.all_of[]', ...stageOf(head, group), holds: group.map(({ path }) => path) });
    else if (places.length > 1)
      left.push(
        ...group.map(
          ({ path, value }) =>
            `${places.length} stages under cleaning are ${head}: put ${path.split('.').slice(1).join('.').replace('[]', '')}: ${marked.plain(value)} into the right one`,
        ),
      );
    else
      placed.push(
        ...group.map((field) => ({ ...field, path: [places[0], ...field.path.split('.').slice(1)].join('.') })),
      );
  }
  return { fields: placed, left };
}

/** What may not be done is no stage of the way: it stands by itself, else the way would hold a step that nobody may do. */
function forbids({ value }: NewField): boolean {
  return marked.plain(value).startsWith('{use: forbidden');
}

function isNeeded({ path }: NewField): boolean {
  return path === 'manual.needed' || path === 'manual.src';
}

function byHead(fields: readonly NewField[]): ReadonlyMap<string, NewField[]> {
  const groups = new Map<string, NewField[]>();
  for (const field of fields) {
    const head = field.path.split('.')[0] ?? '';
    groups.set(head, [...(groups.get(head) ?? []), field]);
  }
  return groups;
}

/** Ways from the top to each stage of the sort; `new` where one is to be added, `own` where the file keeps no list of stages. */
function placesFor(head: string, cleaning: Tree, root: MapTree, statement: string): readonly string[] | 'new' | 'own' {
  const found = stagesIn(cleaning, 'cleaning').filter(({ stage }) => stage === head);
  const citing = found.filter(({ node }) => cites(node, statement));
  const after = head === 'manual' && citing.length === 0 ? afterBath(found, cleaning, root, statement) : undefined;
  if (after !== undefined) return after;
  const chosen = citing.length === 1 ? citing : found;
  if (chosen.length > 0) return chosen.map(({ path }) => path);
  if (head === 'disinfection') return 'own';
  const isList = cleaning.node === 'map' && valueUnder(cleaning, 'all_of')?.node === 'list';
  return isList || cleaning.node === 'empty' ? 'new' : 'own';
}

/**
 * Steps by hand that the page names behind a bath, under the same heading, are done behind it: the stages of one way keep the order of the
 * page. Undefined where the bath is no part of that way.
 */
function afterBath(
  found: readonly Stage[],
  cleaning: Tree,
  root: MapTree,
  statement: string,
): readonly string[] | 'new' | undefined {
  const list = cleaning.node === 'map' ? valueUnder(cleaning, 'all_of') : undefined;
  const inOrder = list?.node === 'list' ? stagesIn(list, 'cleaning.all_of') : [];
  const [bath, last] = inOrder.slice(-2);
  const isOwn = (stage: Stage | undefined): boolean =>
    stage?.stage === 'ultrasonic' && isOfSection(stage.node, root, statement);
  if (found.length > 0 && isOwn(last)) return 'new';
  return found.length > 1 && last?.stage === 'manual' && isOwn(bath) ? [last.path] : undefined;
}

/** Something in it cites a sentence of the same section as the statement, and before it. */
function isOfSection(node: MapTree, root: MapTree, statement: string): boolean {
  const all = sentencesOf(root);
  const own = all.find(({ id }) => id === statement);
  const before = all.slice(0, own === undefined ? 0 : all.indexOf(own));
  return before.some(({ id, section }) => section !== '' && section === own?.section && citesInside(node, id));
}

export function citesInside(tree: Tree, statement: string): boolean {
  if (tree.node === 'list') return tree.items.some((item) => citesInside(item, statement));
  return (
    tree.node === 'map' && (cites(tree, statement) || tree.entries.some(({ value }) => citesInside(value, statement)))
  );
}

export interface Stage {
  readonly stage: string;
  readonly path: string;
  readonly node: MapTree;
}

/** Every stage below, with the way to it. */
export function stagesIn(tree: Tree, path: string): readonly Stage[] {
  if (tree.node === 'list') return tree.items.flatMap((item, index) => stagesIn(item, `${path}.${index}`));
  if (tree.node !== 'map') return [];
  const stage = valueUnder(tree, 'stage');
  const own = stage?.node === 'scalar' ? [{ stage: stage.text, path, node: tree }] : [];
  const inner = ['all_of', 'any_of'].flatMap((key) => {
    const list = valueUnder(tree, key);
    return list === undefined ? [] : stagesIn(list, `${path}.${key}`);
  });
  return [...own, ...inner];
}

export function cites(node: MapTree, statement: string): boolean {
  const src = valueUnder(node, 'src');
  if (src?.node === 'scalar') return src.text === statement;
  return src?.node === 'list' && src.items.some((item) => item.node === 'scalar' && item.text === statement);
}

/** `{stage: manual, steps: [...]}`: one new stage with all that the sentence says of it, and the same on lines of its own. */
function stageOf(head: string, group: readonly NewField[]): Pick<NewField, 'value' | 'lines'> {
  const own = group.filter(({ path }) => !path.includes('.')).map(({ value }) => value.slice(1, -1));
  const inner = group
    .filter(({ path }) => path.includes('.'))
    .map(({ path, value }) => ({ keys: path.split('.').slice(1), value }));
  const first = [`stage: ${head}`, ...own];
  const [steps, others] = [inner.filter(isStep), inner.filter((one) => !isStep(one))];
  const listed = steps.length === 0 ? [] : ['steps:', ...steps.map(({ value }) => `  - ${value}`)];
  const value = `{${[...first, ...entriesOf([...others, ...steps])].join(', ')}}`;
  // What the stage itself says (`use: required, src: s4`) is written on one line.
  return { value, lines: own.length > 0 ? [value] : [...first, ...entriesOf(others), ...listed] };
}

function isStep({ keys }: Keyed): boolean {
  return keys.length === 1 && keys[0] === 'steps[]';
}

function isEmpty(tree: Tree | undefined): boolean {
  return tree === undefined || tree.node === 'empty';
}
