import type { LibraryView, Query } from '../../library/view.ts';
import { departmentOf } from '../../route/equipment.ts';
import { listOfIds } from './brief.ts';

/** What no file describes yet of what a route needs, in words; empty once routes can be derived. */
export function undescribedIn(view: LibraryView): readonly string[] {
  return view.ask(undescribed, '');
}

/** Asked for with every device, and nearly always nothing: so nobody has to read the whole department for it. */
export const undescribed: Query<'', readonly string[]> = {
  name: 'what no file describes yet of what a route needs',
  work(view) {
    const { sterilizing, packagings } = view.ask(departmentOf, '');
    const lacking: string[] = [];
    if (sterilizing.length === 0) lacking.push('a cycle of a sterilizer');
    if (packagings.length === 0) lacking.push('packaging');
    return lacking;
  },
  brief: listOfIds,
};
