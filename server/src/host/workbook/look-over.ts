import { tableLimits } from '../../sheet/cells.ts';

/**
 * Longest tag and longest text between two tags, in characters. No spreadsheet program comes near them, and what reads the parts next goes over
 * the whole of a long one again and again.
 */
const longest = { tag: 8_192, text: 200_000 } as const;

const somethingElse = 'it holds something else than cells';

/** Why a part of a workbook isn't read, or undefined. One pass over the text, whatever it holds. */
export function faultOfPart(name: string, text: string): string | undefined {
  if (text.includes('<!') || text.includes('\0')) return somethingElse;
  const extent = name.startsWith('xl/worksheets/') ? new Extent() : undefined;
  let after = 0;
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', after)) {
    const end = text.indexOf('>', at);
    if (at - after > longest.text || end < 0 || end - at > longest.tag) return somethingElse;
    const tag = text.slice(at, end + 1);
    const fault = isPlain(tag, after) ? extent?.faultOf(tag) : somethingElse;
    if (fault !== undefined) return fault;
    after = end + 1;
  }
  return text.length - after > longest.text ? somethingElse : undefined;
}

/** A tag that begins and ends where it seems to: quotation marks are closed in it, and no other begins in it. */
function isPlain(tag: string, before: number): boolean {
  if (tag.startsWith('<?') && (before > 0 || !tag.endsWith('?>'))) return false;
  return !tag.includes('<', 1) && !/["']/.test(tag.replace(/"[^"]*"|'[^']*'/g, ''));
}

/** How far the cells of a sheet reach: a single one far out would make a table of millions. */
class Extent {
  #rows = 0;
  #row = 0;
  #column = 0;

  faultOf(tag: string): string | undefined {
    const name = /^<(?:[\w.-]{1,60}:)?(row|c|f)[\s/>]/.exec(tag)?.[1];
    if (name === undefined) return undefined;
    if (name === 'f') return 'it holds formulas: put their values in their place';
    if (name === 'row') this.#rows += 1;
    for (const [, address = ''] of tag.matchAll(/\s(?:[\w.-]{1,60}:)?r\s*=\s*["']([^"']*)/g)) {
      const [, letters = '', row] = /^([A-Z]{0,3})(\d{1,7})$/.exec(address) ?? [];
      if (row === undefined) return somethingElse;
      this.#row = Math.max(this.#row, Number(row));
      this.#column = Math.max(this.#column, columnNumber(letters));
    }
    return this.#beyond();
  }

  #beyond(): string | undefined {
    if (Math.max(this.#rows, this.#row) > tableLimits.rows) return `it has more than ${tableLimits.rows} rows`;
    if (this.#column > tableLimits.columns) return `it has more than ${tableLimits.columns} columns`;
    return this.#row * this.#column > tableLimits.cells ? `it has more than ${tableLimits.cells} cells` : undefined;
  }
}

function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters) number = number * 26 + letter.charCodeAt(0) - 64;
  return number;
}
