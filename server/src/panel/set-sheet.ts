/**
 * panel/: the forms of what the server tells the panels of an editor, as plain data: texts without markup, places as numbers. The one
 * definition for both sides; whoever draws it looks at each message first (client/page). It imports nothing and must not know what the
 * texts mean.
 */

/** The set sheet but for its places, which each side has in its own form. */
export interface SheetContent {
  /** Id of the set. */
  readonly set: string;
  readonly name: string;
  readonly place?: PlaceIndex;
  readonly mark: Mark;
  readonly status: string;
  /** What is only imagined, in words; empty when the sheet shows the files as they are. */
  readonly imagined: readonly string[];
  /** What could not be imagined. */
  readonly problems: readonly string[];
  readonly choices: readonly Choices[];
  readonly sections: readonly SheetSection[];
  readonly cautions: readonly string[];
}

/** Position in the list of places. */
export type PlaceIndex = number;

/** Shown as a sign and a word, never by colour alone. */
export type Mark = 'fits' | 'note' | 'asks' | 'fails';

/** Changes that can be tried without touching a file. `one`: at most one of them at a time. */
export interface Choices {
  readonly title: string;
  readonly takes: 'one' | 'many';
  readonly options: readonly Choice[];
}

export interface Choice {
  readonly key: string;
  readonly label: string;
  readonly about: string;
  readonly on: boolean;
}

export interface SheetSection {
  readonly title: string;
  readonly blocks: readonly SheetBlock[];
}

export type SheetBlock = TextBlock | TableBlock | ListBlock | BarsBlock;

export interface TextBlock {
  readonly is: 'text';
  readonly text: string;
}

export interface TableBlock {
  readonly is: 'table';
  readonly head: readonly string[];
  readonly rows: readonly Row[];
}

export interface ListBlock {
  readonly is: 'list';
  readonly ordered: boolean;
  readonly items: readonly SheetItem[];
}

export interface BarsBlock {
  readonly is: 'bars';
  readonly bars: readonly Bars[];
}

/** Cells of a row; each holds one part, or several that lead to different places. */
export type Row = readonly (readonly Cell[])[];

export interface Cell {
  readonly text: string;
  readonly mark?: Mark;
  readonly place?: PlaceIndex;
}

export interface SheetItem extends Cell {
  readonly quote?: string;
  /** Document, revision and page of the quote. */
  readonly from?: string;
  readonly details: readonly string[];
}

/** One number that is required, and how near each cycle comes. Lengths are shares of the drawn width, from 0 to 1. */
export interface Bars {
  readonly title: string;
  readonly required: string;
  readonly place?: PlaceIndex;
  readonly band?: Stretch;
  readonly rows: readonly BarRow[];
}

export interface BarRow {
  readonly name: string;
  readonly given: string;
  readonly gap: string;
  readonly mark: Mark;
  readonly stretch?: Stretch;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}
