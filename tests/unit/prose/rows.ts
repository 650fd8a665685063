/**
 * One row of the quote table: a sentence in the style of an instruction, the fields that cite it (written as `parameter bound value`,
 * separated by `|`), and what a careful reader finds: `right`, or the names of the faults. All sentences are invented.
 */
export type Row = readonly [quote: string, claims: string, truth: string];
