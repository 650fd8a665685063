/**
 * quantity/identifiers/: device identifiers as printed or scanned: GS1, HIBCC, ICCBBA. Text in, values or faults out. It must not know
 * who issued a number, look anything up, or know today's date: the current year is an input where two digits stand for a year.
 */

/** Why an identifier could not be read. */
export type IdentifierFault =
  | { readonly fault: 'empty' }
  | { readonly fault: 'too-long'; readonly length: number; readonly most: number }
  /** A character that this field cannot hold. */
  | { readonly fault: 'character'; readonly found: string; readonly field: string }
  | { readonly fault: 'length'; readonly field: string; readonly found: number; readonly allowed: string }
  | { readonly fault: 'check-character'; readonly found: string; readonly expected: string }
  | { readonly fault: 'date-impossible'; readonly field: string; readonly found: string }
  | { readonly fault: 'field-unknown'; readonly field: string }
  | { readonly fault: 'field-twice'; readonly field: string }
  | { readonly fault: 'device-identifier-missing' }
  | { readonly fault: 'agency-unknown' };

/** A date in an identifier. Where the day is not given (or is 00) the last day of the month is meant. */
export interface IdentifierDate {
  /** `YYYY-MM-DD`, a day that exists. */
  readonly date: string;
  readonly dayGiven: boolean;
}

/** The production part that the three agencies share. */
export interface Production {
  readonly lot?: string;
  readonly serial?: string;
  readonly made?: IdentifierDate;
  readonly expires?: IdentifierDate;
}

export function isIdentifierFault(result: object): result is IdentifierFault {
  return 'fault' in result;
}
