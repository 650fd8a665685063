import type { LibraryView } from '../../library/view.ts';
import { departmentOf } from '../../route/equipment.ts';

/** What no file describes yet of what a route needs, in words; empty once routes can be derived. */
export function undescribedIn(view: LibraryView): readonly string[] {
  const { sterilizing, packagings } = view.ask(departmentOf, '');
  const lacking: string[] = [];
  if (sterilizing.length === 0) lacking.push('a cycle of a sterilizer');
  if (packagings.length === 0) lacking.push('packaging');
  return lacking;
}
