import type { Span } from '../../base/span.ts';

/** A map or list that is open at a place of a text, as far as it can be made out. */
export interface Frame {
  readonly of: 'map' | 'list';
  readonly style: 'block' | 'flow';
  /** Column of its keys or dashes; of one between brackets the column of the line's own map or list. */
  readonly column: number;
  /** Keys of the map with what stands behind them on the line, as written. Those below the cursor count too. */
  readonly present: Map<string, string>;
  /** Plain items of the list, as written. */
  readonly items: string[];
  /** The key whose value comes now. */
  key: string | undefined;
}

/** The frames around the cursor, outermost first, each with the key that leads to the next one. */
export type FramePath = readonly { readonly frame: Frame; readonly key: string | undefined }[];

/** What may be written at the cursor, before any schema is asked. */
export interface Slot {
  readonly path: FramePath;
  /** `key`: a key of the innermost map. `value`: behind its key's colon, or an item between brackets. `content`: a key or a value, as the schema wants it. */
  readonly at: 'key' | 'value' | 'content';
  /** What is being written: to be replaced. */
  readonly word: Span;
  /** A colon stands behind the word already. */
  readonly hasColon: boolean;
  /** To be written before anything else: a missing space or comma. */
  readonly lead: string;
  /** To be written after everything else: a comma before what follows between brackets. */
  readonly tail: string;
  /** Column of the word. */
  readonly column: number;
  /** At `content`: the map that goes on below the cursor, when what stands there is a key above all its others. */
  readonly below: Frame | undefined;
}

/** The scan's memory: open frames, and the slot once the cursor was met. */
export class OpenFrames {
  readonly #stack: Frame[] = [];
  readonly cursor: number;
  #found: Omit<Slot, 'below'> | undefined;
  #below: Frame | undefined;
  /** The cursor stands where nothing can be offered: in a comment, in text over several lines. */
  barred = false;

  constructor(cursor: number) {
    this.cursor = cursor;
  }

  get top(): Frame | undefined {
    return this.#stack[this.#stack.length - 1];
  }

  get depth(): number {
    return this.#stack.length;
  }

  get found(): Slot | undefined {
    return this.#found === undefined ? undefined : { ...this.#found, below: this.#below };
  }

  path(): FramePath {
    return this.#stack.map((frame) => ({ frame, key: frame.key }));
  }

  push(of: Frame['of'], style: Frame['style'], column: number): Frame {
    const frame: Frame = { of, style, column, present: new Map(), items: [], key: undefined };
    if (of === 'map' && this.#goesOnIn(column)) this.#below = frame;
    this.#stack.push(frame);
    return frame;
  }

  /** A map that opens now, at the column of what is being written and below the same key or dash. */
  #goesOnIn(column: number): boolean {
    const found = this.#found;
    if (found?.at !== 'content' || found.column !== column || this.#below !== undefined) return false;
    const last = found.path[found.path.length - 1];
    return this.depth === found.path.length && this.top === last?.frame && this.top?.key === last?.key;
  }

  pop(): void {
    this.#stack.pop();
  }

  cutTo(depth: number): void {
    this.#stack.length = Math.min(depth, this.#stack.length);
  }

  /** Leaves every frame that a line beginning at `column` ends. */
  leave(column: number): void {
    while ((this.top?.column ?? -1) > column) this.pop();
  }

  isAt(start: number, end: number): boolean {
    return this.#found === undefined && !this.barred && start <= this.cursor && this.cursor <= end;
  }

  take(slot: Omit<Slot, 'path' | 'tail' | 'below'> & { readonly tail?: string }): void {
    this.#found = { tail: '', ...slot, path: this.path() };
  }
}

/** Where text between quotes ends: behind the closing quote, or at `limit` when there is none. */
export function quoteEnd(text: string, start: number, limit: number): number {
  const quote = text[start];
  for (let at = start + 1; at < limit; at++) {
    if (quote === '"' && text[at] === '\\') at++;
    else if (text[at] === quote) {
      if (quote === "'" && text[at + 1] === "'") at++;
      else return at + 1;
    }
  }
  return limit;
}

export function isBlankAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return Number.isNaN(code) || code === 32 || code === 10 || code === 13 || code === 9;
}

export function skipSpaces(text: string, from: number, limit: number): number {
  let at = from;
  while (at < limit && (text[at] === ' ' || text[at] === '\t')) at++;
  return at;
}

/** The end of a line without what ends it. */
export function lineEndAt(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  const stop = end < 0 ? text.length : end;
  return stop > from && text[stop - 1] === '\r' ? stop - 1 : stop;
}
