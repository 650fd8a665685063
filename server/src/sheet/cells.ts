/** Most rows, columns and cells of a table that is taken in, and most characters of a cell (spreadsheets keep no more). */
export const tableLimits = { rows: 100_000, columns: 200, cells: 4_000_000, characters: 32_767 } as const;

/** Beginnings that a spreadsheet takes for a formula, and the sign that takes that away. */
const formula = /^[=+\-@'\t\r\n]/;

/**
 * Text as it may stand in a cell: what would be run as a formula gets an apostrophe in front, and so does what begins with one, so that
 * `fromCell` always gives the text back. `loose`: for tables whose cells have no type of their own, where a spreadsheet would also make
 * dates and numbers of ids.
 */
export function toCell(text: string, type: 'text' | 'loose'): string {
  return formula.test(text) || (type === 'loose' && isTakenForElse(text)) ? `'${text}` : text;
}

export function fromCell(cell: string): string {
  return cell.startsWith("'") ? cell.slice(1) : cell;
}

/** Names of months as spreadsheets know them, with what may follow: `MARCH1`, `Sep-4`, `May`. */
const month =
  /^(?:jan(?:uary|uar)?|feb(?:ruary|ruar)?|mar(?:ch)?|märz?|apr(?:il)?|may|mai|june?|juni|july?|juli|aug(?:ust)?|sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?)[-. /]{0,3}\d{0,4}$/i;
/** `4 min`, `8.9 kg`: what follows the number is neither half of a day nor a month. */
const numberAndUnit =
  /^\d[\d.,]{0,15} (?!(?:[ap]m?|jan|feb|mar|mär|apr|may|mai|jun|jul|aug|sep|o[ck]t|nov|de[cz])[a-z]{0,8}\b)[^\d\s]/i;
const wholeNumber = /^(?:0|[1-9]\d{0,14})$/;

/** Whether a spreadsheet that opens a table without types may show or keep something else than the text. Rather too often than too seldom. */
function isTakenForElse(text: string): boolean {
  if (/^\s|\s$/.test(text) || /^(?:true|false|wahr|falsch|vrai|faux)$/i.test(text) || month.test(text)) return true;
  return /^[\d.,(%$€£]/.test(text) && !wholeNumber.test(text) && !numberAndUnit.test(text);
}

/** Control signs but tab and line feed, halves of signs, and those that are none. */
const unholdable = /(?![\t\n])\p{Cc}|\p{Cs}|\p{Noncharacter_Code_Point}/gu;

/** The text without what a cell can't hold, and with one kind of line end: cells are compared in this form. */
export function portable(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(unholdable, '');
}
