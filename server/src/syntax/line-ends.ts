import type { Problem } from '../base/problem.ts';
import { type Span, span } from '../base/span.ts';
import type { ScalarTree, Tree } from './tree.ts';

/**
 * Files with CRLF are read with LF and every place is moved back afterwards, so that a file means the same and is faulted in the
 * same lines and columns whatever its line ends are. (The library's own treatment of CRLF differs in rare cases.)
 */
export class LineEnds {
  /** Offsets, in the text with LF, of the line feeds that had a carriage return before them. */
  readonly #feeds: readonly number[];
  readonly text: string;

  constructor(source: string) {
    const feeds: number[] = [];
    for (let at = source.indexOf('\r\n'); at >= 0; at = source.indexOf('\r\n', at + 2)) feeds.push(at - feeds.length);
    this.#feeds = feeds;
    this.text = source.replaceAll('\r\n', '\n');
  }

  /** The place in the source: one further for each line end before it. */
  #offset(at: number): number {
    let low = 0;
    let high = this.#feeds.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#feeds[middle] ?? 0) < at) low = middle + 1;
      else high = middle;
    }
    return at + low;
  }

  #span(at: Span): Span {
    return span(this.#offset(at.start), this.#offset(at.end));
  }

  moveProblem(problem: Problem): Problem {
    const { fixes, related } = problem;
    const moved = { ...problem, span: this.#span(problem.span) };
    return {
      ...moved,
      ...(related === undefined ? {} : { related: related.map((one) => ({ ...one, span: this.#span(one.span) })) }),
      ...(fixes === undefined ? {} : { fixes: fixes.map((fix) => ({ ...fix, edits: this.#edits(fix.edits) })) }),
    };
  }

  #edits<Edit extends { readonly span: Span }>(edits: readonly Edit[]): Edit[] {
    return edits.map((edit) => ({ ...edit, span: this.#span(edit.span) }));
  }

  moveTree(tree: Tree): Tree {
    const at = this.#span(tree.span);
    if (tree.node === 'scalar' || tree.node === 'empty') return { ...tree, span: at };
    if (tree.node === 'list') return { ...tree, span: at, items: tree.items.map((item) => this.moveTree(item)) };
    const entries = tree.entries.map(({ key, value }) => ({ key: this.#scalar(key), value: this.moveTree(value) }));
    return { ...tree, span: at, entries };
  }

  #scalar(scalar: ScalarTree): ScalarTree {
    return { ...scalar, span: this.#span(scalar.span) };
  }
}
