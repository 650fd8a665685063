import { Remembered } from '../base/remembered.ts';
import { parseQuantity } from '../quantity/parse.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { findUnit } from '../quantity/units.ts';
import type { Field, RecordShape, Shape, TableShape } from '../schema/shape.ts';
import { withShape } from '../schema/shape.ts';
import type { ListTree, MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Citation, List, Node, Place, Rec, Root, Row, Table, Text } from './node.ts';
import type { Spot } from './places.ts';
import { placeAt, placeOfFile } from './places.ts';
import type { ReadQuantity } from './scalars.ts';
import {
  DateScalar,
  FlagScalar,
  OpenReference,
  PlainText,
  QuantityScalar,
  Reference,
  RewrittenText,
} from './scalars.ts';

/**
 * Lowers one file's tree to its entity. Lenient: a part that does not fit its shape is left out (schema/ has reported it), so that
 * rules see every part that does fit.
 */
export function lower(tree: MapTree, shape: RecordShape, root: Root): Rec {
  return lowerRecord(tree, shape, placeOfFile(tree, root));
}

function lowerNode(tree: Tree, shape: Shape, spot: Spot): Node | undefined {
  switch (shape.form) {
    case 'record':
      return tree.node === 'map' ? lowerRecord(tree, shape, placeAt(tree, spot)) : undefined;
    case 'list':
      return tree.node === 'list' ? lowerList(tree, shape.item, placeAt(tree, spot)) : undefined;
    case 'table':
      return tree.node === 'map' ? lowerTable(tree, shape, placeAt(tree, spot)) : undefined;
    case 'citation':
      return lowerCitation(tree, spot);
    default:
      return tree.node === 'scalar' ? lowerScalar(tree, shape, spot) : undefined;
  }
}

function lowerScalar(tree: ScalarTree, shape: Shape, spot: Spot): Node | undefined {
  switch (shape.form) {
    case 'quantity':
      return new QuantityScalar(tree, spot, readQuantity(tree.text, shape.dimension));
    case 'reference':
      return shape.open === true
        ? new OpenReference(tree, spot, shape.refers)
        : new Reference(tree, spot, shape.refers);
    case 'words':
      return shape.words.has(tree.text) ? new PlainText(tree, spot) : undefined;
    case 'flag':
      return tree.text === 'true' || tree.text === 'false' ? new FlagScalar(tree, spot) : undefined;
    case 'date':
    case 'datetime':
      return /^\d/.test(tree.text) ? new DateScalar(tree, spot) : undefined;
    default:
      return isVerbatim(tree) ? new PlainText(tree, spot) : new RewrittenText(tree, spot);
  }
}

function isVerbatim({ style, span, text }: ScalarTree): boolean {
  const marks = style === 'plain' ? 0 : 2;
  return style !== 'block' && span.end - span.start === text.length + marks;
}

function readQuantity(text: string, wanted: Dimension | 'any'): ReadQuantity {
  return quantitiesIn.of(wanted === 'any' ? dimensionOfText(text) : wanted).of(text);
}

/** `4 min` stands in thousands of files. */
const quantitiesIn = new Remembered(
  100,
  (dimension: Dimension) => new Remembered(1000, (text: string) => quantityOf(text, dimension)),
);

function quantityOf(text: string, dimension: Dimension): ReadQuantity {
  const parsed = parseQuantity(text, dimension);
  if (!('fault' in parsed)) return { text, ...parsed };
  return { text, dimension, value: Number.NaN, amount: Number.NaN, unit: '', decimals: 0, problem: parsed };
}

/** What a bare amount measures, by its unit alone. */
function dimensionOfText(text: string): Dimension {
  const unit = findUnit(text.replace(/^[-+0-9.\s]{1,40}/, ''));
  return unit.found === 'unit' ? unit.unit.dimension : 'number';
}

function lowerRecord(tree: MapTree, shape: RecordShape, at: Place): Rec {
  const record = emptyRecord(shape, at) as unknown as Record<string, unknown>;
  if (shape.dimension !== undefined) record.dimension = shape.dimension;
  let unread: string[] | undefined;
  for (const { key, value } of tree.entries) {
    const field = shape.fields.get(key.text);
    if (field === undefined || record[field.key] !== undefined) continue;
    const lowered = lowerNode(value, field.shape, { keyAt: key.span, key: field.key, parent: at });
    if (lowered === undefined) unread = [...(unread ?? []), field.key];
    else record[field.key] = lowered;
  }
  const lowered = record as unknown as Rec;
  return unread === undefined ? lowered : { ...lowered, unread };
}

/**
 * Records of one shape are made by one class: the engine then gives each room for its fields within the object itself, and does not take
 * one with many fields for a dictionary.
 */
function emptyRecord(shape: RecordShape, at: Place): Rec {
  let made = classes.get(shape);
  if (made === undefined) {
    made = class implements Rec {
      readonly node = 'record';
      readonly at: Place;

      constructor(place: Place) {
        this.at = place;
      }
    };
    classes.set(shape, made);
  }
  return new made(at);
}

const classes = new WeakMap<RecordShape, new (at: Place) => Rec>();

function lowerList(tree: ListTree, item: Shape, at: Place): List<Node> {
  const items: Node[] = [];
  let index = 0;
  for (const child of tree.items) {
    const lowered = lowerNode(child, item, { keyAt: undefined, key: index++, parent: at });
    if (lowered !== undefined) items.push(lowered);
  }
  // An array that was grown has room to spare; its copy has none, and is kept by the hundred thousand.
  return { node: 'list', at, items: items.slice() };
}

function lowerTable(tree: MapTree, shape: TableShape, at: Place): Table<Node> {
  const rows = new Map<string, Row<Node>>();
  for (const { key, value } of tree.entries) {
    if (rows.has(key.text)) continue;
    const lowered = lowerNode(value, measured(shape.value, shape.keys.get(key.text)?.dimension), {
      keyAt: key.span,
      key: key.text,
      parent: at,
    });
    if (lowered === undefined) continue;
    const name = new PlainText(key, { keyAt: undefined, key: key.text, parent: at });
    rows.set(key.text, { key: name, value: lowered });
  }
  return { node: 'table', at, rows };
}

const statementOnly: readonly string[] = ['statement'];

function lowerCitation(tree: Tree, spot: Spot): Citation | undefined {
  if (tree.node === 'scalar') {
    const statement = new Reference(tree, spot, statementOnly);
    return { node: 'citation', at: statement, statements: [statement] };
  }
  if (tree.node === 'empty') return undefined;
  const at = placeAt(tree, spot);
  if (tree.node === 'map') return { node: 'citation', at, statements: [], inline: inlineCitation(tree, at) };
  const scalars = tree.items.filter((item) => item.node === 'scalar');
  const statements = scalars.map(
    (item, key) => new Reference(item, { keyAt: undefined, key, parent: at }, statementOnly),
  );
  return { node: 'citation', at, statements };
}

function inlineCitation(tree: MapTree, at: Place): NonNullable<Citation['inline']> {
  const parts: Record<string, Text> = {};
  for (const { key, value } of tree.entries) {
    const known = key.text === 'doc' || key.text === 'rev' || key.text === 'page' || key.text === 'text';
    if (!known || value.node !== 'scalar') continue;
    parts[key.text] = new PlainText(value, { keyAt: key.span, key: key.text, parent: at });
  }
  return parts;
}

/** The shape with its `any` amounts taken as `dimension`: a named limit measures what its name says. */
function measured(shape: Shape, dimension: Dimension | undefined): Shape {
  if (dimension === undefined) return shape;
  if (shape.form === 'quantity') return shape.dimension === 'any' ? { ...shape, dimension } : shape;
  if (shape.form === 'list') return { ...shape, item: measured(shape.item, dimension) };
  if (shape.form !== 'record') return shape;
  const fields = new Map<string, Field>();
  for (const [key, field] of shape.fields) fields.set(key, withShape(field, measured(field.shape, dimension)));
  return { ...shape, fields };
}
