/**
 * editor/: what a writer is shown or offered at one place of a file: hover, definitions, outline. Works on trees, shapes and entities with
 * offsets and strings only. It must not know any protocol, editor, disk or clock, nor judge anything itself.
 */
import type { Span } from '../../base/span.ts';
import type { Node, Requirement } from '../../model/node.ts';
import { childrenOf, isRequirement } from '../../model/walk.ts';
import type { Field, Shape } from '../../schema/shape.ts';
import type { MapTree, ScalarTree, Tree } from '../../syntax/tree.ts';

/** One step on the way from the root of a file to a place in it. */
export interface Step {
  readonly tree: Tree;
  /** Undefined below a key that the schema does not know. */
  readonly shape: Shape | undefined;
  /** The key that leads here, when the step is a value of a map. */
  readonly key?: ScalarTree;
  /** What the schema says of that key; undefined in tables and below unknown keys. */
  readonly field?: Field;
}

export interface Location {
  /** From the root inwards; the last one is the innermost that holds the offset. Never empty. */
  readonly steps: readonly [Step, ...Step[]];
  /** `key`: on the key of the last step. `value`: inside its value. `gap`: between things, as on an empty line or after a colon. */
  readonly on: 'key' | 'value' | 'gap';
}

/** Finds what stands at `offset`, walking tree and shape together. Both ends of a word count as on it. */
export function locate(tree: MapTree, shape: Shape | undefined, offset: number): Location {
  const steps: [Step, ...Step[]] = [{ tree, shape }];
  for (;;) {
    const here = steps[steps.length - 1] ?? steps[0];
    const next = stepInto(here, offset);
    if (next === undefined) return { steps, on: here.tree.node === 'scalar' ? 'value' : 'gap' };
    steps.push(next.step);
    if (next.onKey) return { steps, on: 'key' };
  }
}

interface Move {
  readonly step: Step;
  readonly onKey: boolean;
}

function stepInto({ tree, shape }: Step, offset: number): Move | undefined {
  if (tree.node === 'map') return stepIntoMap(tree, shape, offset);
  if (tree.node !== 'list') return undefined;
  const item = tree.items.find(({ span }) => touches(span, offset));
  if (item === undefined) return undefined;
  return { step: { tree: item, shape: itemShape(shape) }, onKey: false };
}

function stepIntoMap(tree: MapTree, shape: Shape | undefined, offset: number): Move | undefined {
  for (const { key, value } of tree.entries) {
    const onKey = touches(key.span, offset);
    if (!onKey && !touches(value.span, offset)) continue;
    const field = shape?.form === 'record' ? shape.fields.get(key.text) : undefined;
    const valueShape = shape?.form === 'table' ? shape.value : field?.shape;
    return { step: { tree: value, shape: valueShape, key, ...(field && { field }) }, onKey };
  }
  return undefined;
}

function itemShape(shape: Shape | undefined): Shape | undefined {
  return shape?.form === 'list' ? shape.item : shape?.form === 'citation' ? shape : undefined;
}

function touches(span: Span, offset: number): boolean {
  return span.start <= offset && offset <= span.end;
}

/** The nodes of an entity that hold the offset (their key counts), outermost first. */
export function nodesAt(root: Node, offset: number): readonly Node[] {
  const chain: Node[] = [root];
  for (let inner = childAt(root, offset); inner !== undefined; inner = childAt(inner, offset)) chain.push(inner);
  return chain;
}

function childAt(node: Node, offset: number): Node | undefined {
  for (const child of childrenOf(node)) {
    const { span, keySpan } = child.at;
    if (touches(span, offset) || (keySpan !== undefined && touches(keySpan, offset))) return child;
  }
  return undefined;
}

/** The innermost demand among the nodes of a chain. */
export function requirementIn(chain: readonly Node[]): Requirement | undefined {
  for (let i = chain.length - 1; i >= 0; i--) {
    const node = chain[i];
    if (node !== undefined && isRequirement(node)) return node;
  }
  return undefined;
}
