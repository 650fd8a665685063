import { Remembered } from '../base/remembered.ts';
import { parseQuantity } from '../quantity/parse.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { findUnit } from '../quantity/units.ts';
import type { Field, RecordShape, Shape, TableShape } from '../schema/shape.ts';
import { withShape } from '../schema/shape.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import type { Citation, DateValue, Flag, List, Node, Place, Quantity, Rec, Root, Row, Table, Text } from './node.ts';
import { placeOfFile, placeOfItem, placeOfScalar, placeUnder } from './places.ts';

/**
 * Lowers one file's tree to its entity. Lenient: a part that does not fit its shape is left out (schema/ has reported it), so that
 * rules see every part that does fit.
 */
export function lower(tree: MapTree, shape: RecordShape, root: Root): Rec {
  return lowerRecord(tree, shape, placeOfFile(tree, root));
}

function lowerNode(tree: Tree, shape: Shape, at: Place): Node | undefined {
  switch (shape.form) {
    case 'record':
      return tree.node === 'map' ? lowerRecord(tree, shape, at) : undefined;
    case 'list':
      return lowerList(tree, shape.item, at);
    case 'table':
      return tree.node === 'map' ? lowerTable(tree, shape, at) : undefined;
    case 'citation':
      return lowerCitation(tree, at);
    default:
      return tree.node === 'scalar' ? lowerScalar(tree, shape, at) : undefined;
  }
}

function lowerScalar(tree: ScalarTree, shape: Shape, at: Place): Node | undefined {
  switch (shape.form) {
    case 'quantity':
      return lowerQuantity(tree, shape.dimension, at);
    case 'reference':
      return shape.open === true
        ? { node: 'text', at, text: tree.text, refers: shape.refers, open: true }
        : { node: 'text', at, text: tree.text, refers: shape.refers };
    case 'words':
      return shape.words.has(tree.text) ? { node: 'text', at, text: tree.text } : undefined;
    case 'flag':
      return lowerFlag(tree, at);
    case 'date':
    case 'datetime':
      return /^\d/.test(tree.text) ? ({ node: 'date', at, text: tree.text } satisfies DateValue) : undefined;
    default:
      return lowerText(tree, at);
  }
}

function lowerText(tree: ScalarTree, at: Place): Text {
  const marks = tree.style === 'plain' ? 0 : 2;
  const isVerbatim = tree.style !== 'block' && tree.span.end - tree.span.start === tree.text.length + marks;
  return isVerbatim ? { node: 'text', at, text: tree.text } : { node: 'text', at, text: tree.text, rewritten: true };
}

function lowerFlag(tree: ScalarTree, at: Place): Flag | undefined {
  if (tree.text !== 'true' && tree.text !== 'false') return undefined;
  return { node: 'flag', at, on: tree.text === 'true' };
}

function lowerQuantity(tree: ScalarTree, wanted: Dimension | 'any', at: Place): Quantity {
  const dimension = wanted === 'any' ? dimensionOfText(tree.text) : wanted;
  const parsed = quantitiesIn.of(dimension).of(tree.text);
  if (!('fault' in parsed)) return { node: 'quantity', at, text: tree.text, ...parsed };
  return {
    node: 'quantity',
    at,
    text: tree.text,
    dimension,
    value: Number.NaN,
    amount: Number.NaN,
    unit: '',
    decimals: 0,
    problem: parsed,
  };
}

/** `4 min` stands in thousands of files. */
const quantitiesIn = new Remembered(
  100,
  (dimension: Dimension) => new Remembered(1000, (text: string) => parseQuantity(text, dimension)),
);

/** What a bare amount measures, by its unit alone. */
function dimensionOfText(text: string): Dimension {
  const unit = findUnit(text.replace(/^[-+0-9.\s]{1,40}/, ''));
  return unit.found === 'unit' ? unit.unit.dimension : 'number';
}

function lowerRecord(tree: MapTree, shape: RecordShape, at: Place): Rec {
  const record: Record<string, unknown> =
    shape.dimension === undefined ? { node: 'record', at } : { node: 'record', at, dimension: shape.dimension };
  let unread: string[] | undefined;
  for (const { key, value } of tree.entries) {
    const field = shape.fields.get(key.text);
    if (field === undefined || record[field.key] !== undefined) continue;
    const lowered = lowerNode(value, field.shape, placeUnder(key, value, field.key, at));
    if (lowered === undefined) unread = [...(unread ?? []), field.key];
    else record[field.key] = lowered;
  }
  const lowered = record as unknown as Rec;
  return unread === undefined ? lowered : { ...lowered, unread };
}

function lowerList(tree: Tree, item: Shape, at: Place): List<Node> | undefined {
  if (tree.node !== 'list') return undefined;
  const items: Node[] = [];
  let index = 0;
  for (const child of tree.items) {
    const lowered = lowerNode(child, item, placeOfItem(child, index++, at));
    if (lowered !== undefined) items.push(lowered);
  }
  // An array that was grown has room to spare; its copy has none, and is kept by the hundred thousand.
  return { node: 'list', at, items: items.slice() };
}

function lowerTable(tree: MapTree, shape: TableShape, at: Place): Table<Node> {
  const rows = new Map<string, Row<Node>>();
  for (const { key, value } of tree.entries) {
    if (rows.has(key.text)) continue;
    const lowered = lowerNode(
      value,
      measured(shape.value, shape.keys.get(key.text)?.dimension),
      placeUnder(key, value, key.text, at),
    );
    if (lowered === undefined) continue;
    rows.set(key.text, {
      key: { node: 'text', at: placeOfScalar(key, key.text, at), text: key.text },
      value: lowered,
    });
  }
  return { node: 'table', at, rows };
}

const statementOnly: readonly string[] = ['statement'];

function lowerCitation(tree: Tree, at: Place): Citation | undefined {
  const statement = (scalar: ScalarTree, key: string | number): Text => ({
    node: 'text',
    at: placeOfScalar(scalar, key, at),
    text: scalar.text,
    refers: statementOnly,
  });
  if (tree.node === 'scalar')
    return { node: 'citation', at, statements: [{ node: 'text', at, text: tree.text, refers: statementOnly }] };
  if (tree.node === 'list') {
    const scalars = tree.items.filter((item) => item.node === 'scalar');
    return { node: 'citation', at, statements: scalars.map((item, index) => statement(item, index)) };
  }
  return tree.node === 'map' ? { node: 'citation', at, statements: [], inline: inlineCitation(tree, at) } : undefined;
}

function inlineCitation(tree: MapTree, at: Place): NonNullable<Citation['inline']> {
  const parts: Record<string, Text> = {};
  for (const { key, value } of tree.entries) {
    const known = key.text === 'doc' || key.text === 'rev' || key.text === 'page' || key.text === 'text';
    if (!known || value.node !== 'scalar') continue;
    parts[key.text] = { node: 'text', at: placeUnder(key, value, key.text, at), text: value.text };
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
