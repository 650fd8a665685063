import { LineIndex } from '../../base/line-index.ts';
import type { Edit } from '../../base/problem.ts';
import { applyEdits, fileForm } from '../../syntax/edits.ts';
import { readTree } from '../../syntax/read.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';

/**
 * Tidies the layout: indents by whole steps, no blanks at line ends, one line end at the end of the file. Lines are never joined, broken or
 * re-ordered, and nothing between quotes or in text over several lines changes. No edits when the file can't be read, or when
 * tidying would change what is read.
 */
export function layoutEdits(text: string): readonly Edit[] {
  const { tree, problems } = readTree(text);
  if (tree?.node !== 'map' || problems.some(({ severity }) => severity === 'error')) return [];
  const layout = new Layout(text, tree);
  const edits = layout.edits();
  const after = applyEdits(text, edits);
  if (!('text' in after)) return [];
  const again = readTree(after.text).tree;
  return again !== undefined && meaning(again) === meaning(tree) ? edits : [];
}

function meaning(tree: Tree): string {
  switch (tree.node) {
    case 'map':
      return `{${tree.entries.map(({ key, value }) => `${JSON.stringify(key.text)}:${meaning(value)}`).join()}}`;
    case 'list':
      return `[${tree.items.map(meaning).join()}]`;
    case 'scalar':
      return `${tree.style} ${JSON.stringify(tree.text)}`;
    case 'empty':
      return '';
  }
}

class Layout {
  readonly #text: string;
  readonly #lines: LineIndex;
  readonly #step: number;
  readonly #lineEnd: string;
  /** How far each line moves to the right. */
  readonly #moves: number[];
  /** Lines whose end belongs to a text over several lines. */
  readonly #inText = new Set<number>();

  constructor(text: string, tree: MapTree) {
    this.#text = text;
    this.#lines = new LineIndex(text);
    const { step, lineEnd } = fileForm(text);
    this.#step = step;
    this.#lineEnd = lineEnd;
    this.#moves = new Array<number>(this.#lines.lineCount).fill(0);
    this.#place(tree, 0);
  }

  edits(): readonly Edit[] {
    const edits: Edit[] = [];
    for (let line = 0; line < this.#lines.lineCount; line++) edits.push(...this.#lineEdits(line));
    const written = this.#text.trimEnd().length;
    const end = { start: written, end: this.#text.length };
    const isLast = (edit: Edit): boolean => edit.span.start >= written;
    const kept = edits.filter((edit) => !isLast(edit));
    if (this.#text.slice(written) !== this.#lineEnd && written > 0 && !this.#inText.has(this.#lines.lineCount - 1))
      kept.push({ span: end, text: this.#lineEnd });
    return kept;
  }

  #lineEdits(line: number): readonly Edit[] {
    const start = this.#lines.lineStart(line);
    const raw = this.#text.slice(start, this.#lines.lineStart(line + 1));
    const content = raw.replace(/[\r\n]{1,2}$/, '');
    const indent = content.length - content.trimStart().length;
    const edits: Edit[] = [];
    const move = this.#moves[line] ?? 0;
    if (move !== 0 && indent < content.length)
      edits.push({ span: { start, end: start + indent }, text: ' '.repeat(Math.max(0, indent + move)) });
    const kept = content.trimEnd().length;
    if (kept < content.length && !this.#inText.has(line))
      edits.push({ span: { start: start + kept, end: start + content.length }, text: '' });
    return edits;
  }

  /** Moves a group that begins on a line of its own to `column`, with all that is inside it. */
  #place(tree: Tree, column: number): void {
    const first = this.#lines.position(tree.span.start);
    if (tree.node === 'scalar') {
      const last = this.#lines.position(tree.span.end).line;
      for (let line = first.line; line < last; line++) this.#inText.add(line);
      if (tree.style === 'block') for (let line = first.line; line <= last; line++) this.#inText.add(line);
      return;
    }
    if (tree.node === 'empty' || '{['.includes(this.#text[tree.span.start] ?? '')) {
      this.#textsIn(tree);
      return;
    }
    const now = first.character + (this.#moves[first.line] ?? 0);
    if (this.#isFirstOnLine(tree.span.start)) this.#move(tree, column - now);
    const at = this.#isFirstOnLine(tree.span.start) ? column : now;
    if (tree.node === 'map') for (const { value } of tree.entries) this.#placeValue(value, at);
    else for (const item of tree.items) this.#place(item, at + this.#gapBehindDash(item));
  }

  /** A list may stand at the column of its key: it stays so. */
  #placeValue(value: Tree, keyColumn: number): void {
    const { line, character } = this.#lines.position(value.span.start);
    const now = character + (this.#moves[line] ?? 0);
    const onDashes = value.node === 'list' && this.#text[value.span.start] === '-' && now <= keyColumn;
    this.#place(value, onDashes ? keyColumn : keyColumn + this.#step);
  }

  #gapBehindDash(item: Tree): number {
    const { line, character } = this.#lines.position(item.span.start);
    const before = this.#text.slice(this.#lines.lineStart(line), item.span.start);
    const dash = before.lastIndexOf('-');
    return dash < 0 ? this.#step : character - dash;
  }

  #move(tree: Tree, by: number): void {
    if (by === 0) return;
    const from = this.#lines.position(tree.span.start).line;
    const to = this.#lines.position(Math.max(tree.span.start, tree.span.end - 1)).line;
    for (let line = from; line <= to; line++) this.#moves[line] = (this.#moves[line] ?? 0) + by;
  }

  #isFirstOnLine(offset: number): boolean {
    const start = this.#lines.lineStart(this.#lines.position(offset).line);
    return this.#text.slice(start, offset).trim() === '';
  }

  #textsIn(tree: Tree): void {
    if (tree.node === 'map') for (const { value } of tree.entries) this.#place(value, 0);
    else if (tree.node === 'list') for (const item of tree.items) this.#place(item, 0);
  }
}
