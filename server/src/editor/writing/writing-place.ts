import { scanFlow, unquoted } from './writing-flow.ts';
import type { Slot } from './writing-scan.ts';
import { isBlankAt, lineEndAt, OpenFrames, quoteEnd, skipSpaces } from './writing-scan.ts';

/** Longer files are not scanned: nobody writes them by hand. */
const longestScanned = 2_000_000;

/**
 * What is being written at `cursor`, made out from indents, dashes and brackets alone, so that it also works while the file is broken.
 * Undefined in comments, in text over several lines, and where the indent fits nothing.
 */
export function slotAt(text: string, cursor: number): Slot | undefined {
  if (text.length > longestScanned) return undefined;
  const frames = new OpenFrames(cursor);
  frames.push('map', 'block', 0);
  new BlockScan(text, frames).run();
  return frames.barred ? undefined : frames.found;
}

class BlockScan {
  readonly #text: string;
  readonly #frames: OpenFrames;

  constructor(text: string, frames: OpenFrames) {
    this.#text = text;
    this.#frames = frames;
  }

  run(): void {
    for (let start = 0; start <= this.#text.length; ) {
      const end = this.#line(start, lineEndAt(this.#text, start));
      const next = this.#text.indexOf('\n', end);
      if (next < 0) break;
      start = next + 1;
    }
  }

  /** Reads one line and whatever its value goes on over. Returns where that ends. */
  #line(start: number, end: number): number {
    const first = skipSpaces(this.#text, start, end);
    if (first === end) return this.#emptyLine(start, end);
    if (this.#text[first] === '#') {
      if (this.#frames.isAt(first + 1, end)) this.#frames.barred = true;
      return end;
    }
    if (this.#text.startsWith('---', first) || this.#text.startsWith('...', first)) return end;
    return this.#content(start, first, end);
  }

  #emptyLine(start: number, end: number): number {
    const { cursor } = this.#frames;
    if (!this.#frames.isAt(start, end)) return end;
    this.#take(start, { start: cursor, end }, cursor - start);
    return end;
  }

  #content(start: number, first: number, end: number): number {
    let at = first;
    while (this.#text[at] === '-' && isBlankAt(this.#text, at + 1)) {
      this.#item(at - start);
      const next = skipSpaces(this.#text, at + 1, end);
      if (next === end) return this.#emptyItem(start, at, end);
      at = next;
    }
    const colon = this.#keyEnd(at, end);
    return colon === undefined ? this.#loose(start, at, end) : this.#entry(start, at, colon, end);
  }

  #item(column: number): void {
    this.#frames.leave(column);
    const { top } = this.#frames;
    if (top?.of === 'list' && top.column === column) return;
    this.#frames.push('list', 'block', column);
  }

  /** A dash with nothing behind it. */
  #emptyItem(start: number, dash: number, end: number): number {
    const { cursor } = this.#frames;
    if (!this.#frames.isAt(dash + 1, end)) return end;
    const lead = cursor === dash + 1 ? ' ' : '';
    const column = cursor - start + lead.length;
    this.#frames.take({ at: 'content', word: { start: cursor, end }, hasColon: false, lead, column });
    return end;
  }

  /** Offset of the colon when a key stands at `at`. */
  #keyEnd(at: number, end: number): number | undefined {
    const first = this.#text[at] ?? '';
    if ('{[|>#&*!%@`?'.includes(first)) return undefined;
    const from = first === '"' || first === "'" ? quoteEnd(this.#text, at, end) : at;
    for (let next = from; next < end; next++) {
      if (this.#text[next] === ':' && isBlankAt(this.#text, next + 1)) return next;
      if (this.#text[next] === '#' && isBlankAt(this.#text, next - 1)) return undefined;
    }
    return undefined;
  }

  #entry(start: number, at: number, colon: number, end: number): number {
    const column = at - start;
    this.#openMap(column);
    const { top } = this.#frames;
    if (top === undefined) return end;
    const keyEnd = this.#trimEnd(at, colon);
    if (this.#frames.isAt(at, keyEnd)) {
      top.key = undefined;
      this.#frames.take({ at: 'key', word: { start: at, end: keyEnd }, hasColon: true, lead: '', column });
    }
    top.key = unquoted(this.#text.slice(at, keyEnd));
    top.present.set(top.key, '');
    return this.#value(colon, end, column);
  }

  #openMap(column: number): void {
    this.#frames.leave(column);
    const { top } = this.#frames;
    // A list may stand at the column of the key above it: a key there ends the list.
    if (top?.of === 'list' && top.column === column) this.#frames.pop();
    const now = this.#frames.top;
    if (now?.of !== 'map' || now.column !== column) this.#frames.push('map', 'block', column);
  }

  #value(colon: number, end: number, column: number): number {
    const { cursor, top } = this.#frames;
    const at = skipSpaces(this.#text, colon + 1, end);
    const lead = cursor === colon + 1 ? ' ' : '';
    if (at === end || this.#text[at] === '#') {
      if (this.#frames.isAt(colon + 1, at === end ? end : at - 1))
        this.#frames.take({ at: 'value', word: { start: cursor, end: cursor }, hasColon: false, lead, column });
      else if (this.#frames.isAt(at, end)) this.#frames.barred = true;
      return end;
    }
    if (this.#frames.isAt(colon + 1, at - 1)) this.#frames.barred = true;
    const stop = this.#scalar(at, end, column, 'value');
    if (top?.key !== undefined) top.present.set(top.key, this.#text.slice(at, this.#trimEnd(at, Math.min(stop, end))));
    return stop;
  }

  /** No key: an item, the rest of a text, or a key whose colon is not written yet. */
  #loose(start: number, at: number, end: number): number {
    const column = at - start;
    if ('{['.includes(this.#text[at] ?? '')) return this.#scalar(at, end, column, 'content');
    const { top } = this.#frames;
    const wordEnd = this.#plainEnd(at, end);
    if (this.#frames.isAt(at, wordEnd)) this.#take(start, { start: at, end: wordEnd }, column);
    else if (this.#frames.isAt(wordEnd, end)) this.#frames.barred = true;
    if (top?.of === 'list' && top.column < column) top.items.push(this.#text.slice(at, wordEnd));
    return end;
  }

  #scalar(at: number, end: number, column: number, where: Slot['at']): number {
    const first = this.#text[at] ?? '';
    if (first === '{' || first === '[') {
      if (this.#frames.isAt(at, at)) this.#frames.barred = true;
      const stop = scanFlow(this.#text, at, this.#flowLimit(end), this.#frames);
      const lineEnd = lineEndAt(this.#text, stop);
      if (this.#frames.isAt(stop, lineEnd)) this.#frames.barred = true;
      return lineEnd;
    }
    if (first === '|' || first === '>') return this.#blockText(end, column);
    const stop = first === '"' || first === "'" ? quoteEnd(this.#text, at, end) : this.#plainEnd(at, end);
    if (this.#frames.isAt(at, stop))
      this.#frames.take({ at: where, word: { start: at, end: stop }, hasColon: false, lead: '', column });
    else if (this.#frames.isAt(stop, end)) this.#frames.barred = true;
    return end;
  }

  /** A key, an item or a value, on a line by itself at `column`: the frame that this column belongs to. */
  #take(start: number, word: { start: number; end: number }, column: number): void {
    this.#frames.leave(column);
    const { top } = this.#frames;
    const onDashColumn = top?.of === 'list' && top.column === column;
    if (top?.of === 'map' && top.column === column) {
      top.key = undefined;
      this.#frames.take({ at: 'key', word, hasColon: false, lead: '', column });
    } else if (onDashColumn) {
      this.#frames.take({ at: 'content', word, hasColon: false, lead: '- ', column: column + 2 });
    } else if (top !== undefined && column > top.column && this.#isOpen()) {
      this.#frames.take({ at: 'content', word, hasColon: false, lead: '', column });
    } else this.#frames.barred = this.#frames.isAt(start, word.end);
  }

  /** The innermost map waits for a value below its key, or the innermost list for an item. */
  #isOpen(): boolean {
    const { top } = this.#frames;
    if (top?.of === 'list') return true;
    return top?.key !== undefined && top.present.get(top.key) === '';
  }

  #blockText(end: number, column: number): number {
    const own = Math.min(column, this.#frames.top?.column ?? column);
    const stop = this.#below(end, own);
    if (this.#frames.isAt(end, stop)) this.#frames.barred = true;
    return stop;
  }

  /** Brackets go on over lines that stand deeper than the map or list around them; a line that does not ends them, closed or not. */
  #flowLimit(end: number): number {
    return this.#below(end, this.#frames.top?.column ?? 0);
  }

  #below(end: number, column: number): number {
    let stop = end;
    for (let from = end; ; ) {
      const next = this.#text.indexOf('\n', from);
      if (next < 0) return stop;
      const lineEnd = lineEndAt(this.#text, next + 1);
      const first = skipSpaces(this.#text, next + 1, lineEnd);
      if (first < lineEnd && first - next - 1 <= column) return stop;
      if (first < lineEnd) stop = lineEnd;
      from = Math.max(lineEnd, next + 1);
      if (from >= this.#text.length) return stop;
    }
  }

  #plainEnd(at: number, end: number): number {
    for (let next = at; next < end; next++)
      if (this.#text[next] === '#' && isBlankAt(this.#text, next - 1)) return this.#trimEnd(at, next);
    return this.#trimEnd(at, end);
  }

  #trimEnd(start: number, end: number): number {
    let at = end;
    while (at > start && isBlankAt(this.#text, at - 1)) at--;
    return at;
  }
}
