import type { SettledBy } from '../model/roles.ts';
import type { Outcome, Parameter } from './outcome.ts';

/** One cell of the direction table: what it means for the device, why, and who can settle it. */
export interface Cell {
  readonly outcome: Outcome;
  readonly because: string;
  readonly settledBy: SettledBy;
}

/** What it means when ours lies in the given direction from the number on the page. */
export interface NumberRow {
  readonly parameter: Parameter;
  /** How the parameter is called at the start of a sentence. */
  readonly title: string;
  /** Less than `at_least`, than the low end of `between`, or than `exactly`. */
  readonly belowLowest: Cell;
  /** More than `at_least`, where the page gives no highest value. */
  readonly aboveLowest: Cell;
  /** More than `times` an `at_least`, where the page gives no highest value. */
  readonly farAboveLowest?: Cell & { readonly times: number };
  /** More than `at_most`, than the high end of `between`, or than `exactly`. */
  readonly aboveHighest: Cell;
  /** More than `exactly`, where that is another answer than `aboveHighest`. */
  readonly aboveExactly?: Cell;
  /** Less than `at_most`, where the page gives no lowest value. */
  readonly belowHighest: Cell;
  /** More than a bare number that counts as the one value. */
  readonly aboveBare: Cell;
  /** More than a bare number that the site counts as a minimum. */
  readonly aboveBareMinimum: Cell;
  /** Less than a bare number. */
  readonly belowBare: Cell;
  /** More or less than an "approximately". It is never a limit, so neither is ever `fails`. */
  readonly aboveAbout: Cell;
  readonly belowAbout: Cell;
  /** The document says nothing. */
  readonly silent: Cell;
  /** Where the answer comes from. */
  readonly source: string;
}

/** A parameter that is not a number: the cases that can occur, each with its answer. */
export interface CategoryRow<Case extends string = string> {
  readonly parameter: Parameter;
  readonly title: string;
  readonly cases: Readonly<Record<Case, Cell>>;
  readonly source: string;
}

export function meets(because: string): Cell {
  return { outcome: 'meets', because, settledBy: 'educator' };
}

export function note(because: string, settledBy: SettledBy = 'educator'): Cell {
  return { outcome: 'meets-with-note', because, settledBy };
}

export function asks(because: string, settledBy: SettledBy = 'manufacturer'): Cell {
  return { outcome: 'needs-answer', because, settledBy };
}

export function fails(because: string, settledBy: SettledBy = 'educator'): Cell {
  return { outcome: 'fails', because, settledBy };
}
