/** The source text, and a same-length copy in which single characters may have been replaced by the ones that were meant. */
export class MendedText {
  readonly source: string;
  readonly unseen: { readonly at: number; readonly lineStart: number }[] = [];
  /** Where the line being looked at starts; kept by the one pass over the text. */
  lineStart = 0;
  readonly loneReturns: number[] = [];
  /** Tabs that stand in front of a line's first character, by the offset of each. */
  readonly indentTabs: number[] = [];
  /** Lines that have such tabs. */
  tabbedLines = 0;
  /** Tabs right after a colon or a dash. */
  readonly signTabs: number[] = [];
  readonly #hidden: { readonly start: number; readonly end: number }[] = [];
  readonly #swaps: { readonly at: number; readonly to: string }[] = [];

  constructor(source: string) {
    this.source = source;
  }

  /** Blanks a range, line ends excepted. */
  hide(start: number, end: number): void {
    this.#hidden.push({ start, end });
  }

  isHidden(at: number): boolean {
    return this.#hidden.length > 0 && this.#hidden.some((range) => range.start <= at && at < range.end);
  }

  replace(at: number, to: string): void {
    this.#swaps.push({ at, to });
  }

  noteLoneReturn(at: number): void {
    this.loneReturns.push(at);
    this.replace(at, '\n');
    this.lineStart = at + 1;
  }

  lineEnd(at: number): number {
    const end = this.source.indexOf('\n', at);
    if (end < 0) return this.source.length;
    return end > at && this.source.charCodeAt(end - 1) === 13 ? end - 1 : end;
  }

  text(): string {
    if (this.#hidden.length === 0 && this.#swaps.length === 0) return this.source;
    const parts: string[] = [];
    let done = 0;
    for (const { at, to } of this.#swaps) {
      if (at < done) continue;
      parts.push(this.source.slice(done, at), to);
      done = at + 1;
    }
    parts.push(this.source.slice(done));
    return this.#blanked(parts.join(''));
  }

  /** Hidden ranges are in order and do not overlap. */
  #blanked(text: string): string {
    const parts: string[] = [];
    let done = 0;
    for (const { start, end } of this.#hidden) {
      parts.push(text.slice(done, start), text.slice(start, end).replace(/[^\r\n]/g, ' '));
      done = end;
    }
    parts.push(text.slice(done));
    return parts.join('');
  }
}
