import type { Span } from '../base/span.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Node, Quantity } from '../model/node.ts';
import { isRequirement, nodesIn } from '../model/walk.ts';
import { sayingWords } from '../schema/saying-words.ts';
import type { Shape } from '../schema/shape.ts';
import type { Tree } from '../syntax/tree.ts';

/** What a word of a file is, for those who show kinds of words apart. */
export interface WordMark {
  readonly span: Span;
  readonly as: 'bound-word' | 'number' | 'unit' | 'id' | 'own-id' | 'closed-word';
}

/** Bound words, numbers with their units, ids, and words of closed lists, in the order of the file. They never overlap. */
export function wordMarksOf(entity: AnyEntity, tree: Tree, shape: Shape): readonly WordMark[] {
  const marks: WordMark[] = [];
  for (const node of nodesIn(entity)) markNode(node, marks);
  closedWords(tree, shape, marks);
  marks.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  return marks.filter(({ span }, at) => span.end > span.start && span.start >= (marks[at - 1]?.span.end ?? 0));
}

function markNode(node: Node, marks: WordMark[]): void {
  if (node.node === 'quantity') markQuantity(node, marks);
  else if (node.node === 'text' && node.refers !== undefined) marks.push({ span: node.at.span, as: 'id' });
  else if (node.node === 'text' && node.at.key === 'id') marks.push({ span: node.at.span, as: 'own-id' });
  else if (isRequirement(node)) {
    for (const word of sayingWords) {
      const value = (node as unknown as Readonly<Record<string, Node | undefined>>)[word];
      if (value?.at.keySpan !== undefined) marks.push({ span: value.at.keySpan, as: 'bound-word' });
    }
  }
}

function markQuantity({ at, text, problem }: Quantity, marks: WordMark[]): void {
  if (problem !== undefined || at.span.end - at.span.start !== text.length) return;
  const number = /^[-+0-9.,]{1,40}/.exec(text)?.[0].length ?? 0;
  const { start, end } = at.span;
  const unit = start + text.length - text.slice(number).trimStart().length;
  marks.push({ span: { start, end: start + number }, as: 'number' }, { span: { start: unit, end }, as: 'unit' });
}

function closedWords(tree: Tree, shape: Shape | undefined, marks: WordMark[]): void {
  if (shape === undefined) return;
  if (tree.node === 'scalar') {
    if (shape.form === 'words' && shape.words.has(tree.text)) marks.push({ span: tree.span, as: 'closed-word' });
  } else if (tree.node === 'list') {
    for (const item of tree.items) closedWords(item, shape.form === 'list' ? shape.item : undefined, marks);
  } else if (tree.node === 'map') {
    for (const { key, value } of tree.entries) {
      const inner =
        shape.form === 'record' ? shape.fields.get(key.text)?.shape : shape.form === 'table' ? shape.value : undefined;
      closedWords(value, inner, marks);
    }
  }
}
