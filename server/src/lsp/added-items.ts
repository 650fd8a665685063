import { askForItem, titleOf } from '../editor/items/add-item.ts';
import type { ItemList } from '../editor/items/item-lists.ts';
import { itemBefore, listAt, listsAround, listsIn } from '../editor/items/item-lists.ts';
import { shapeOf } from '../schema/shapes.ts';
import { readTree } from '../syntax/read.ts';
import type { MapTree, Tree } from '../syntax/tree.ts';
import { valueUnder } from '../syntax/value-under.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { fieldIn, textsIn } from './params.ts';
import { offsetOf } from './places.ts';
import { addressOf } from './uris.ts';
import { textEditsOf } from './workspace-edit.ts';

/** A list in the words of an editor's action. */
export interface NamedList {
  readonly path: string;
  readonly title: string;
  /** A dash of it waits with nothing behind it. */
  readonly waits: boolean;
  /** Its key stands there, and nothing else of it. */
  readonly begins: boolean;
}

const mostAnswers = 500;

/** The lists around a place, innermost first. */
export function namedListsAt(at: DocumentAt, offset: number): readonly NamedList[] {
  const tree = treeOf(at.record);
  const shape = at.record.kind === undefined ? undefined : shapeOf(at.record.kind);
  if (tree === undefined || shape === undefined) return [];
  return listsAround(tree, shape, at.record.text, offset).map(named);
}

function named(list: ItemList): NamedList {
  const waits = list.shape.item.form === 'record' && list.tree?.items.some(({ node }) => node === 'empty') === true;
  return { path: list.path.join('.'), title: titleOf(list), waits, begins: list.tree === undefined };
}

/** Every list of the file: those around the place first. */
export async function listsToAddTo(params: unknown, places: DocumentPlaces): Promise<unknown> {
  const uri = fieldIn(params, 'uri');
  const at = typeof uri === 'string' ? await places.text(uri) : undefined;
  const tree = at === undefined ? undefined : treeOf(at.record);
  if (at?.record.kind === undefined || tree === undefined) return null;
  const shape = shapeOf(at.record.kind);
  const around = listsAround(tree, shape, at.record.text, offsetIn(at, params) ?? -1);
  const rest = listsIn(tree, shape).filter(({ path }) => around.every((one) => one.path.join('.') !== path.join('.')));
  return [...around, ...rest].map((list) => ({
    path: list.path.join('.'),
    title: titleOf(list),
    about: list.field.description,
    where: placeWords(list, at),
    here: around.includes(list),
  }));
}

/** Which of several lists with one name it is. */
function placeWords({ path, key }: ItemList, { record }: DocumentAt): string {
  if (key === undefined) return 'not in the file yet';
  const line = record.text.slice(0, key.start).split('\n').length;
  return `${path
    .filter((part) => !/^\d+$/.test(part))
    .join(', ')
    .replaceAll('_', ' ')}, line ${line}`;
}

/** The next question about a new item, or the edits that put it in. */
export async function nextOfItem(
  params: unknown,
  places: DocumentPlaces,
  versions: ReadonlyMap<string, number>,
): Promise<unknown> {
  const uri = fieldIn(params, 'uri');
  const path = fieldIn(params, 'list');
  const answers = fieldIn(params, 'answers');
  if (typeof uri !== 'string' || typeof path !== 'string' || !Array.isArray(answers) || answers.length > mostAnswers)
    return null;
  const at = await places.document(uri);
  const root = at === undefined ? undefined : treeOf(at.record);
  if (at?.record.kind === undefined || root === undefined) return null;
  const kind = shapeOf(at.record.kind);
  const list = listAt(root, kind, path);
  if (list === undefined) return null;
  const view = at.home.engine.view();
  const offset = offsetIn(at, params);
  const step = askForItem(
    {
      text: at.record.text,
      root,
      kind,
      list,
      behind: offset === undefined ? undefined : itemBefore(list, offset),
      elsewhere: list.tree === undefined || list.tree.items.length === 0 ? itemsElsewhere(list, at) : [],
      about: {
        around: { entity: at.record.entity, view, rules: [] },
        today: view.today,
        title: titleOf(list),
        known: knownIn(fieldIn(params, 'known')),
      },
    },
    answers.map(textsIn),
  );
  if (step.is !== 'made') return step;
  return {
    is: step.is,
    words: step.words,
    edits: textEditsOf(at.record, step.edits),
    version: versions.get(addressOf(uri)) ?? null,
  };
}

/** What a sentence says of the item, by field. */
function knownIn(value: unknown): ReadonlyMap<string, string> {
  const entries = typeof value === 'object' && value !== null ? Object.entries(value).slice(0, mostKnown) : [];
  return new Map(entries.flatMap(([key, text]) => (typeof text === 'string' ? [[key, text] as const] : [])));
}

const mostKnown = 50;

function offsetIn(at: DocumentAt, params: unknown): number | undefined {
  const position = fieldIn(params, 'position');
  return offsetOf(at.record, {
    line: Number(fieldIn(position, 'line')),
    character: Number(fieldIn(position, 'character')),
  });
}

const mostFiles = 12;

/** What other files of the kind have in the same list: what people here say of such a thing. */
function itemsElsewhere({ path }: ItemList, { home, record }: DocumentAt): readonly MapTree[] {
  const { library } = home.engine;
  const found: MapTree[] = [];
  let files = 0;
  for (const file of library.files()) {
    const other = library.record(file);
    if (other === undefined || other.kind !== record.kind || other === record) continue;
    const { tree } = readTree(other.text);
    if (tree?.node === 'map')
      found.push(
        ...mapsUnder(
          tree,
          path.filter((part) => !/^\d+$/.test(part)),
        ),
      );
    files++;
    if (files === mostFiles) break;
  }
  return found;
}

function mapsUnder(tree: Tree, keys: readonly string[]): readonly MapTree[] {
  if (tree.node === 'list') return tree.items.flatMap((item) => mapsUnder(item, keys));
  const [key, ...rest] = keys;
  if (tree.node !== 'map') return [];
  if (key === undefined) return [tree];
  const inner = valueUnder(tree, key);
  return inner === undefined ? [] : mapsUnder(inner, rest);
}
