import type { Problem } from '../base/problem.ts';
import { movedProblem, movedTree } from './moved.ts';
import type { Tree } from './tree.ts';

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

  moveProblem(problem: Problem): Problem {
    return movedProblem(problem, (at) => this.#offset(at));
  }

  moveTree(tree: Tree): Tree {
    return movedTree(tree, (at) => this.#offset(at));
  }
}
