import { fromCell, tableLimits, toCell } from './cells.ts';

/** Largest file with tables, in bytes. */
export const csvLimit = 16_000_000;

export type Separator = ',' | ';';

/** A table as text for spreadsheets: every cell in quotation marks, CRLF, and a mark in front that tells them the encoding. */
export function csvOf(rows: readonly (readonly string[])[], separator: Separator): string {
  const lines = rows.map((row) =>
    row.map((cell) => `"${toCell(cell, 'loose').replaceAll('"', '""')}"`).join(separator),
  );
  return `\ufeff${lines.join('\r\n')}\r\n`;
}

export type CsvRead = { readonly rows: readonly (readonly string[])[] } | { readonly why: string };

/** Rows of a text as spreadsheets write it: commas, semicolons or tabs between cells, whichever the first line has most of. */
export function readCsv(text: string): CsvRead {
  const body = text.startsWith('\ufeff') ? text.slice(1) : text;
  const reader = new CsvReader(body, separatorOf(body));
  return reader.read();
}

function separatorOf(text: string): string {
  const end = text.search(/[\r\n]/);
  const head = text.slice(0, end < 0 ? 10_000 : Math.min(end, 10_000)).replace(/"[^"]{0,1000}"/g, '');
  const count = (sign: string) => head.split(sign).length;
  return [',', ';', '\t'].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

class CsvReader {
  readonly #text: string;
  readonly #separator: string;
  readonly #rows: string[][] = [];
  #row: string[] = [];
  #at = 0;

  constructor(text: string, separator: string) {
    this.#text = text;
    this.#separator = separator;
  }

  read(): CsvRead {
    while (this.#at < this.#text.length) {
      const cell = this.#text[this.#at] === '"' ? this.#quoted() : this.#bare();
      if (cell === undefined) return { why: `row ${this.#rows.length + 1} opens a quotation mark that nothing closes` };
      this.#row.push(fromCell(cell));
      const isOver = this.#endOfCell();
      if (this.#row.length > tableLimits.columns) return { why: `it has more than ${tableLimits.columns} columns` };
      if (isOver) this.#endRow();
      if (this.#rows.length > tableLimits.rows) return { why: `it has more than ${tableLimits.rows} rows` };
    }
    if (this.#row.length > 0) this.#endRow();
    return { rows: this.#rows };
  }

  #endRow(): void {
    this.#rows.push(this.#row);
    this.#row = [];
  }

  #quoted(): string | undefined {
    let cell = '';
    for (let from = this.#at + 1; ; ) {
      const end = this.#text.indexOf('"', from);
      if (end < 0) return undefined;
      cell += this.#text.slice(from, end);
      this.#at = end + 1;
      if (this.#text[this.#at] !== '"') return cell + this.#bare();
      cell += '"';
      from = this.#at + 1;
    }
  }

  #bare(): string {
    const start = this.#at;
    for (; this.#at < this.#text.length; this.#at++) {
      const sign = this.#text[this.#at];
      if (sign === this.#separator || sign === '\n' || sign === '\r') break;
    }
    return this.#text.slice(start, this.#at);
  }

  /** Steps over what stands behind a cell. True at the end of a row. A separator right before the end begins one more, empty cell. */
  #endOfCell(): boolean {
    const sign = this.#text[this.#at++];
    if (sign === '\r' && this.#text[this.#at] === '\n') this.#at++;
    if (sign !== this.#separator) return true;
    if (this.#at === this.#text.length) this.#row.push('');
    return false;
  }
}
