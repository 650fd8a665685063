import { defaultLimits, type ReadLimits } from '../limits.ts';

export const SPACE = 32;
export const DOUBLE_QUOTE = 34;
export const NUMBER_SIGN = 35;
export const SINGLE_QUOTE = 39;
export const COMMA = 44;
export const DASH = 45;
export const COLON = 58;
export const BACKSLASH = 92;
const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/** The column at the end of the text: further left than any line. */
export const ENDED = -1;

/** How far a text is read. Lines end with LF or CRLF; the end of the text counts as a line's end. */
export class Scan {
  readonly text: string;
  readonly limits: ReadLimits;
  at = 0;
  /** Column of the line's first sign. */
  column = 0;
  #keysLeft: number;
  #depth = 0;

  constructor(text: string, limits = defaultLimits) {
    this.text = text;
    this.limits = limits;
    this.#keysLeft = limits.keys;
  }

  /** The code of the character at an offset. */
  code(at: number): number {
    return at < this.text.length ? this.text.charCodeAt(at) : LINE_FEED;
  }

  /** True for a space and at a line's end: what makes a sign of a colon or a dash in front of it. */
  isBlank(at: number): boolean {
    const code = this.code(at);
    return code === SPACE || isLineEnd(code);
  }

  isDash(): boolean {
    return this.code(this.at) === DASH && this.isBlank(this.at + 1);
  }

  skipSpaces(): void {
    while (this.code(this.at) === SPACE) this.at++;
  }

  spacesAt(from: number): number {
    let at = from;
    while (this.code(at) === SPACE) at++;
    return at - from;
  }

  /** Where the text of the line ends in which `at` stands. */
  lineEnd(at: number): number {
    const end = this.text.indexOf('\n', at);
    if (end < 0) return this.text.length;
    return end > at && this.code(end - 1) === CARRIAGE_RETURN ? end - 1 : end;
  }

  lineAfter(at: number): number {
    const end = this.text.indexOf('\n', at);
    return end < 0 ? this.text.length : end + 1;
  }

  /** False when this is one key more than a file may have. */
  countKey(): boolean {
    return --this.#keysLeft >= 0;
  }

  /** False when this is one level deeper than a file may go. */
  enter(): boolean {
    return ++this.#depth <= this.limits.depth;
  }

  leave(): void {
    this.#depth--;
  }

  /** From the end of a value to the next line that says something. False when more than a plain comment stands behind the value. */
  nextLine(): boolean {
    const from = this.at;
    this.skipSpaces();
    if (this.code(this.at) === NUMBER_SIGN && (this.at === from || !this.isBlank(this.at + 1))) return false;
    if (this.code(this.at) !== NUMBER_SIGN && !isLineEnd(this.code(this.at))) return false;
    this.toContent();
    return true;
  }

  /** To the first sign of the next line that is neither blank nor a comment, from a line's start, its comment or its end. */
  toContent(): void {
    for (;;) {
      const start = this.at;
      this.skipSpaces();
      const code = this.code(this.at);
      if (this.at >= this.text.length) {
        this.column = ENDED;
        return;
      }
      if (code !== NUMBER_SIGN && !isLineEnd(code)) {
        this.column = this.at - start;
        return;
      }
      this.at = this.lineAfter(this.at);
    }
  }
}

export function isLineEnd(code: number): boolean {
  return code === LINE_FEED || code === CARRIAGE_RETURN;
}
