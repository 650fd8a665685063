import type { Frame, OpenFrames } from './writing-scan.ts';
import { isBlankAt, quoteEnd } from './writing-scan.ts';

/**
 * Part `writing`: where one writes in a text that need not be readable yet, and how fields are put into it. Knows nothing of pages,
 * sentences or what a field means.
 */

/** Reads what stands between brackets from `start` to where they close, at `limit` at the latest. Returns where it ended. */
export function scanFlow(text: string, start: number, limit: number, frames: OpenFrames): number {
  return new FlowScan(text, limit, frames).run(start);
}

class FlowScan {
  readonly #text: string;
  readonly #limit: number;
  readonly #frames: OpenFrames;
  readonly #base: number;
  readonly #column: number;
  /** A value or item has been written since the last bracket or comma. */
  #full = false;

  constructor(text: string, limit: number, frames: OpenFrames) {
    this.#text = text;
    this.#limit = limit;
    this.#frames = frames;
    this.#base = frames.depth;
    this.#column = frames.top?.column ?? 0;
  }

  run(start: number): number {
    let at = start;
    do at = this.#step(at);
    while (at < this.#limit && this.#frames.depth > this.#base);
    if (this.#frames.depth > this.#base && this.#frames.isAt(at, at)) this.#gap(at, at);
    this.#frames.cutTo(this.#base);
    return at;
  }

  #step(at: number): number {
    const character = this.#text[at];
    switch (character) {
      case '{':
      case '[':
        this.#frames.push(character === '{' ? 'map' : 'list', 'flow', this.#column);
        this.#full = false;
        return at + 1;
      case '}':
      case ']':
        if (this.#frames.isAt(at, at)) this.#gap(at, at);
        this.#frames.pop();
        this.#full = true;
        return at + 1;
      case ',':
        if (this.#frames.isAt(at, at)) this.#gap(at, at);
        this.#next();
        return at + 1;
      case '"':
      case "'":
        return this.#word(at, quoteEnd(this.#text, at, this.#limit));
      case '#':
        if (isBlankAt(this.#text, at - 1)) return this.#comment(at);
        break;
      default:
    }
    return isBlankAt(this.#text, at) ? this.#space(at) : this.#word(at, this.#plainEnd(at));
  }

  #next(): void {
    const { top } = this.#frames;
    if (top !== undefined) top.key = undefined;
    this.#full = false;
  }

  #comment(at: number): number {
    const end = this.#text.indexOf('\n', at);
    const stop = end < 0 || end > this.#limit ? this.#limit : end;
    if (this.#frames.isAt(at, stop)) this.#frames.barred = true;
    return stop;
  }

  #space(at: number): number {
    let end = at;
    while (end < this.#limit && isBlankAt(this.#text, end)) end++;
    const atSomething = end < this.#limit && !'}],'.includes(this.#text[end] ?? '');
    // A word that starts right behind the spaces is what is being written there.
    if (this.#frames.isAt(at, atSomething ? end - 1 : end)) this.#gap(this.#frames.cursor, this.#frames.cursor);
    return end;
  }

  /** Between words. */
  #gap(start: number, end: number): void {
    const { top } = this.#frames;
    if (top === undefined) return;
    const before = this.#text[start - 1] ?? ' ';
    const space = ':,'.includes(before) ? ' ' : '';
    const lead = this.#full ? (before === ' ' ? ', ' : ', ') : space;
    const at = top.of === 'list' || (top.key !== undefined && !this.#full) ? 'value' : 'key';
    if (this.#full && top.of === 'map') top.key = undefined;
    const tail = this.#tailAfter(end);
    if (at === 'value' && top.of === 'map' && tail !== '') {
      // The key has its value already, further on.
      this.#frames.barred = true;
      return;
    }
    this.#frames.take({
      at,
      word: { start, end },
      hasColon: false,
      lead,
      tail: this.#tailAfter(end),
      column: this.#column,
    });
  }

  /** What follows needs a comma before it, unless it is one or a closing bracket. */
  #tailAfter(end: number): string {
    let at = end;
    while (at < this.#limit && isBlankAt(this.#text, at)) at++;
    return at >= this.#limit || '}],#'.includes(this.#text[at] ?? '') ? '' : at === end ? ', ' : ',';
  }

  #word(start: number, end: number): number {
    const { top } = this.#frames;
    if (top === undefined) return end;
    const colon = this.#colonAfter(end);
    if (top.of === 'map' && top.key === undefined && colon !== undefined) return this.#key(start, end, colon, top);
    if (this.#frames.isAt(start, end)) {
      const at = top.of === 'list' || top.key !== undefined ? 'value' : 'key';
      const lead = this.#text[start - 1] === ',' ? ' ' : '';
      this.#frames.take({ at, word: { start, end }, hasColon: false, lead, column: this.#column });
    }
    const written = this.#text.slice(start, end);
    if (top.of === 'list') top.items.push(written);
    else if (top.key !== undefined) top.present.set(top.key, written);
    this.#full = true;
    return end;
  }

  #key(start: number, end: number, colon: number, top: Frame): number {
    const key = unquoted(this.#text.slice(start, end));
    if (this.#frames.isAt(start, end))
      this.#frames.take({ at: 'key', word: { start, end }, hasColon: true, lead: '', column: this.#column });
    top.key = key;
    top.present.set(key, '');
    this.#full = false;
    return colon + 1;
  }

  #colonAfter(end: number): number | undefined {
    let at = end;
    while (at < this.#limit && this.#text[at] === ' ') at++;
    return this.#text[at] === ':' && at < this.#limit ? at : undefined;
  }

  #plainEnd(start: number): number {
    let end = start;
    let last = start;
    while (end < this.#limit) {
      const character = this.#text[end] ?? '';
      if (',[]{}\n\r'.includes(character)) break;
      if (character === ':' && (isBlankAt(this.#text, end + 1) || ',[]{}'.includes(this.#text[end + 1] ?? ''))) break;
      if (character === '#' && isBlankAt(this.#text, end - 1)) break;
      end++;
      if (character !== ' ') last = end;
    }
    return Math.max(last, start + 1);
  }
}

export function unquoted(word: string): string {
  const quote = word[0];
  if ((quote !== '"' && quote !== "'") || word.length < 2 || !word.endsWith(quote)) return word;
  return word.slice(1, -1);
}
