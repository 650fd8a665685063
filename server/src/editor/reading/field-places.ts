import type { Kind } from '../../schema/kinds.ts';
import type { Field, RecordShape, Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';

/** A field into which what a sentence says may be written, by hand or by choice. */
export interface FieldPlace {
  /** `storage.time`; `[]` stands for a new item of a list. */
  readonly path: string;
  /** Titles from the top to the field, in the words of the trade. */
  readonly titles: readonly string[];
  readonly about: string;
  readonly shape: Shape;
  /** Words often written there, each with its meaning. */
  readonly words: ReadonlyMap<string, string>;
  /** Whether it can name the sentence where it stands, or the group around it can. */
  readonly cites: 'itself' | 'group' | 'no';
}

/** What says which file it is and where it comes from; stages of cleaning are offered under the name of each. */
const ofTheFile: ReadonlySet<string> = new Set([
  'kind',
  'id',
  'name',
  'maker',
  'site',
  'room',
  'covers',
  'excludes',
  'identifiers',
  'applies_from',
  'applies_to',
  'market',
  'lang',
  'class',
  'sources',
  'statements',
  'inherits',
  'overrides',
  'cleaning',
  'stock',
  'review',
  'proposed',
  'qualified',
  'maintained',
  'withdrawn_on',
  'discontinued_on',
  'replaced_by',
]);

const deepest = 4;
const made = new Map<Kind, readonly FieldPlace[]>();

/** Every field of a kind of file that can hold what a sentence says, in the order of the file. */
export function fieldPlaces(kind: Kind): readonly FieldPlace[] {
  const known = made.get(kind);
  if (known !== undefined) return known;
  const root = shapeOf(kind);
  const found = [...root.fields.values()]
    .filter(({ key }) => !ofTheFile.has(key))
    .flatMap((field) => placesIn(field, { path: '', titles: [], owner: root, depth: 1 }));
  made.set(kind, found);
  return found;
}

/**
 * The same, with the fields of the items of those lists that stand in the file: a sentence often says more of what is there already, of one
 * cycle or of all. `.*` stands in the path for the item.
 */
export function fieldPlacesIn(kind: Kind, root: MapTree): readonly FieldPlace[] {
  const all = fieldPlaces(kind);
  return [...all, ...all.flatMap((place) => (isWritten(root, place.path) ? placesInItems(place) : []))];
}

function isWritten(root: MapTree, path: string): boolean {
  let tree: Tree | undefined = root;
  for (const key of path.replace('[]', '').split('.')) tree = tree?.node === 'map' ? valueUnder(tree, key) : undefined;
  return tree?.node === 'list' && tree.items.some(({ node }) => node === 'map');
}

/** Items that have names of their own, such as cycles and channels; steps are told apart by their sentences. */
function placesInItems({ path, titles, shape }: FieldPlace): readonly FieldPlace[] {
  const item = shape.form === 'list' ? shape.item : undefined;
  if (item?.form !== 'record' || !item.fields.has('id') || item.fields.has('do')) return [];
  const around = path.endsWith('any_of[]') ? [...titles.slice(0, -1), 'Cycle'] : titles;
  const above = { path: path.replace('[]', '.*'), titles: around, owner: item, depth: titles.length + 1 };
  return inside(item, above).filter((place) => place.path !== `${above.path}.id`);
}

interface Above {
  readonly path: string;
  readonly titles: readonly string[];
  readonly owner: RecordShape;
  readonly depth: number;
}

function placesIn(field: Field, above: Above): readonly FieldPlace[] {
  const { shape } = field;
  const path = above.path === '' ? field.key : `${above.path}.${field.key}`;
  const titles = [...above.titles, field.title];
  const cites = above.owner.fields.has('src') ? 'group' : 'no';
  const place = { titles, about: field.description, shape, words: wordsOf(field), cites } as const;
  switch (shape.form) {
    case 'record':
      if (shape.dimension !== undefined) return [{ ...place, path, cites: 'itself' }];
      return above.depth < deepest ? inside(shape, { path, titles, owner: shape, depth: above.depth + 1 }) : [];
    case 'list':
      if (shape.item.form === 'record')
        return headOf(shape.item) === undefined && above.depth > 1
          ? []
          : [{ ...place, path: `${path}[]`, cites: 'itself' }];
      return isChosen(shape.item, place.words) ? [{ ...place, path: `${path}[]` }] : [];
    case 'words':
    case 'flag':
    case 'text':
      return [{ ...place, path }];
    default:
      return [];
  }
}

function inside(shape: RecordShape, above: Above): readonly FieldPlace[] {
  const skipped = aboutTheSaying();
  return [...shape.fields.values()].filter(({ key }) => !skipped.has(key)).flatMap((field) => placesIn(field, above));
}

function isChosen({ form }: Shape, words: ReadonlyMap<string, string>): boolean {
  return form === 'text' || form === 'words' || (form === 'reference' && words.size > 0);
}

/** What an item of a list begins with: the field that the schema asks for, or the method. */
export function headOf({ fields, required }: RecordShape): Field | undefined {
  const head = fields.get(required[0] ?? 'modality');
  return head !== undefined && (head.shape.form === 'text' || head.shape.form === 'words') ? head : undefined;
}

export function wordsOf({ shape, suggestions }: Field): ReadonlyMap<string, string> {
  const item = shape.form === 'list' ? shape.item : shape;
  if (item.form === 'words') return item.words;
  return suggestions ?? shape.suggestions ?? item.suggestions ?? new Map();
}

/** Fields that every group has: they say how the page says it, not what. The schema lists them where a group has nothing else. */
function aboutTheSaying(): ReadonlySet<string> {
  const bare = shapeOf('device').fields.get('point_of_use')?.shape;
  const wipe = bare?.form === 'record' ? bare.fields.get('wipe')?.shape : undefined;
  const keys = wipe?.form === 'record' ? [...wipe.fields.keys()] : [];
  return new Set(keys.filter((key) => key !== 'use'));
}
