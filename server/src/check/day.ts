import type { IsoDate } from '../base/brand.ts';
import type { LibraryView } from '../library/view.ts';

/** The day as which a library is checked: its own `as_of` (a sample, an archived state), else the day that counts outside. */
export function dayOf(view: LibraryView, outside: IsoDate): IsoDate {
  const asOf = view.all('library')[0]?.as_of?.text;
  return asOf !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(asOf) ? (asOf as IsoDate) : outside;
}
