import type { NewField } from '../writing/insert-fields.ts';

/** What a sentence says of one part of the work, in fields that name the sentence. */

/** The fields that words make, and what the reader is told of the rest. */
export interface ReadFields {
  readonly fields: readonly NewField[];
  readonly left: readonly string[];
}

export type FieldValue = readonly [field: string, value: string];

/** Values beside each other in one group, which names the sentence once; nothing for no value. A field that ends with `[]` is a list. */
export function inGroup(group: string, values: readonly FieldValue[], src: string): readonly NewField[] {
  if (values.length === 0) return [];
  return [...values, ['src', src] as const].map(([field, value]) => ({ path: `${group}.${field}`, value }));
}

/** The sentence as words of a field: without the stop at its end. */
export function withoutStop(quote: string): string {
  return quote.replace(/\s*[.!]\s*$/, '');
}
