/** A place as editors count it: both zero-based, `character` in UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** Turns offsets into lines and columns, once, at the edge. Line ends: LF, CRLF, CR. */
export class LineIndex {
  readonly #starts: number[] = [0];
  readonly #length: number;

  constructor(text: string) {
    this.#length = text.length;
    for (let at = 0; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (code === 13 && text.charCodeAt(at + 1) === 10) continue;
      if (code === 10 || code === 13) this.#starts.push(at + 1);
    }
  }

  get lineCount(): number {
    return this.#starts.length;
  }

  /** Offsets outside the text are clamped to it. */
  position(offset: number): Position {
    const at = Math.max(0, Math.min(offset, this.#length));
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.lineStart(middle) <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low, character: at - this.lineStart(low) };
  }

  /** Positions outside the text are clamped to it. */
  offset(position: Position): number {
    if (position.line < 0) return 0;
    if (position.line >= this.#starts.length) return this.#length;
    const next = position.line + 1 < this.#starts.length ? this.lineStart(position.line + 1) : this.#length;
    return Math.min(this.lineStart(position.line) + Math.max(0, position.character), next);
  }

  lineStart(line: number): number {
    return this.#starts[line] ?? this.#length;
  }
}
