import type { Span } from '../base/span.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Node, Quantity, Text } from '../model/node.ts';
import { isRequirement } from '../model/walk.ts';
import { formatBothUnits } from '../quantity/format.ts';
import type { Field, Shape } from '../schema/shape.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { MapTree } from '../syntax/tree.ts';
import { physicsBlocks } from './hover-physics.ts';
import { citationsAt, sayingsAt } from './naming/cited.ts';
import { governsBlocks } from './naming/governs.ts';
import type { Location, Step } from './naming/locate.ts';
import { locate, nodesAt } from './naming/locate.ts';
import { describeTarget } from './naming/target-words.ts';
import { indexCaution } from './words/cautions.ts';
import { examplesLine, whereLine } from './words/field-words.ts';
import type { Block } from './writing/text-blocks.ts';

export interface Hover {
  /** What the hover speaks of: the word under the pointer. */
  readonly span: Span;
  readonly blocks: readonly Block[];
}

/** What is shown over `offset`: on a key what it means, on a value what it says and where that is written. Undefined over nothing. */
export function hoverAt(record: FileRecord, tree: MapTree, offset: number, view: LibraryView): Hover | undefined {
  const shape = record.kind === undefined ? undefined : shapeOf(record.kind);
  const location = locate(tree, shape, offset);
  const last = location.steps[location.steps.length - 1] ?? location.steps[0];
  if (location.on === 'gap') return undefined;
  const ownWords =
    location.on === 'key' ? keyBlocks(last, location) : valueBlocks(location, record.entity, offset, view);
  const cited = record.entity === undefined ? [] : citedBlocks(record.entity, offset);
  const beside = record.entity === undefined || location.on === 'key' ? [] : besideBlocks(record.entity, offset, view);
  const said = [...ownWords, ...cited, ...beside];
  const blocks = said.length > 0 ? said : plainValueBlocks(location);
  if (blocks.length === 0) return undefined;
  const span = location.on === 'key' && last.key !== undefined ? last.key.span : last.tree.span;
  const saysHow = cited.length > 0 || beside.length > 0;
  return { span, blocks: saysHow ? [...blocks, { block: 'note', text: indexCaution }] : blocks };
}

function keyBlocks({ field, shape, key }: Step, { steps }: Location): readonly Block[] {
  if (field === undefined) return shape === undefined || key === undefined ? [] : describeShape(key.text, shape);
  const about = fieldWords(field, whereIn(steps));
  return about.length === 0 ? [] : [{ block: 'heading', text: field.title || field.key }, ...about];
}

function describeShape(name: string, shape: Shape): readonly Block[] {
  if (shape.title === '') return [];
  return [{ block: 'heading', text: `${shape.title} “${name}”` }, ...lines([shape.description])];
}

/** Of the innermost field that says it: what holds for a chapter holds for each value in it. */
function whereIn(steps: readonly Step[]): string | undefined {
  const said = steps.map(({ field, shape }) => field?.where ?? field?.shape.where ?? shape?.where);
  return said.findLast((where) => where !== undefined);
}

function fieldWords(field: Field, where: string | undefined): readonly Block[] {
  const { shape } = field;
  return lines([
    field.description || shape.description,
    shape.form === 'words' ? wordList(shape.words) : '',
    examplesLine(field),
    whereLine(where),
  ]);
}

function wordList(words: ReadonlyMap<string, string>): string {
  const named = [...words.keys()];
  return `One of: ${named.slice(0, 12).join(', ')}${named.length > 12 ? ', …' : ''}`;
}

function valueBlocks(
  location: Location,
  entity: AnyEntity | undefined,
  offset: number,
  view: LibraryView,
): readonly Block[] {
  const last = location.steps[location.steps.length - 1] ?? location.steps[0];
  const named = [...location.steps].reverse().find((step) => step.field !== undefined)?.field;
  const chain = entity === undefined ? [] : nodesAt(entity, offset);
  const node = chain[chain.length - 1];
  if (node?.node === 'quantity') return quantityBlocks(node, rangeAround(chain), named, location);
  const target = node?.node === 'text' && node.refers !== undefined ? referenceBlocks(node, entity, view) : [];
  if (target.length > 0) return target;
  const words = last.shape?.form === 'words' ? last.shape.words : (named?.suggestions ?? last.shape?.suggestions);
  return words === undefined || last.tree.node !== 'scalar' ? [] : wordBlocks(last.tree.text, words, named);
}

/** On words that say all there is themselves, such as a catalogue number: what their key means. */
function plainValueBlocks({ on, steps }: Location): readonly Block[] {
  const last = steps[steps.length - 1] ?? steps[0];
  const field = last.key === undefined ? steps[steps.length - 2]?.field : last.field;
  if (on !== 'value' || last.tree.node !== 'scalar' || field === undefined) return [];
  const about = lines([field.description || field.shape.description, whereLine(whereIn(steps))]);
  return about.length === 0 ? [] : [{ block: 'heading', text: field.title || field.key }, ...about];
}

/** Both ends of the range that a number belongs to: one end alone says the wrong thing. */
function rangeAround(chain: readonly Node[]): readonly Quantity[] {
  const around = chain.findLast(isRequirement)?.between?.items ?? [];
  const number = chain[chain.length - 1];
  return around.some((end) => end === number) ? around : [];
}

function quantityBlocks(
  quantity: Quantity,
  range: readonly Quantity[],
  named: Field | undefined,
  { steps }: Location,
): readonly Block[] {
  if (quantity.problem !== undefined) return [];
  const carrier = steps[steps.length - 2];
  const outer = [...steps].reverse().find((step) => step.field !== undefined && step.field !== named)?.field;
  const bound = carrier?.shape?.form === 'record' || steps.length < 3 ? named : (carrier?.field ?? named);
  const heading = [outer?.title, bound?.title].filter((title) => title !== undefined && title !== '').join(': ');
  const whole = range.length === 2 && range.every(({ problem }) => problem === undefined) ? range : [quantity];
  const both = whole.map(formatBothUnits).join(' and ');
  return [
    { block: 'heading', text: heading === '' ? both : `${heading} ${both}` },
    ...lines([bound?.description ?? '']),
  ];
}

function referenceBlocks(text: Text, entity: AnyEntity | undefined, view: LibraryView): readonly Block[] {
  return entity === undefined ? [] : describeTarget(text, entity, view);
}

function wordBlocks(word: string, words: ReadonlyMap<string, string>, field: Field | undefined): readonly Block[] {
  const meaning = words.get(word);
  if (meaning === undefined || meaning === '') return [];
  const title = field === undefined || field.title === '' ? word : `${field.title}: ${word}`;
  return [{ block: 'heading', text: title }, ...lines([meaning])];
}

/** On a number: what physics says of it here, and the sets in which it decides. */
function besideBlocks(entity: AnyEntity, offset: number, view: LibraryView): readonly Block[] {
  const chain = nodesAt(entity, offset);
  if (chain[chain.length - 1]?.node !== 'quantity') return [];
  return [...governsBlocks(entity, chain, view), ...physicsBlocks(entity, chain, view)];
}

/** The quotes behind a place: those of the innermost citation around it. */
function citedBlocks(entity: AnyEntity, offset: number): readonly Block[] {
  const chain: readonly Node[] = nodesAt(entity, offset);
  return sayingsAt(entity, citationsAt(chain)).map(({ quote, from }) => ({ block: 'quote', text: quote, from }));
}

function lines(texts: readonly string[]): readonly Block[] {
  return texts.filter((text) => text !== '').map((text) => ({ block: 'line', text }));
}
