import type { Rows } from './rows.ts';

/** So many lists can be told apart beside a number of 32 bits in the 53 that a number holds whole. */
export const mostRows = 2 ** 21;

/** In which of the lists a number stands: number and place of the list in one, in order, so that it is looked up where it lies. */
export function indexOf(rows: Rows<Uint32Array>): Float64Array {
  const entries = new Float64Array(rows.values.length);
  let at = 0;
  for (let place = 0; place < rows.count; place++)
    for (const end = rows.ends[place] ?? 0; at < end; at++) entries[at] = (rows.values[at] ?? 0) * mostRows + place;
  return entries.sort();
}

/** The lists that hold the number. */
export function placesIn(index: Float64Array, number: number): readonly number[] {
  const least = number * mostRows;
  const places: number[] = [];
  for (let at = firstFrom(index, least); (index[at] ?? Number.POSITIVE_INFINITY) < least + mostRows; at++)
    places.push((index[at] ?? 0) - least);
  return places;
}

/** Where the first of these numbers in order stands that is not below `least`. */
export function firstFrom(numbers: Float64Array | Uint32Array, least: number): number {
  let [from, behind] = [0, numbers.length];
  while (from < behind) {
    const middle = (from + behind) >>> 1;
    if ((numbers[middle] ?? 0) < least) from = middle + 1;
    else behind = middle;
  }
  return from;
}
