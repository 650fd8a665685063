import type { Setting, Stock } from '../../judge/setting.ts';
import { routineSetting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Text } from '../../model/node.ts';
import { siteOf } from './site-limits.ts';

/** What holds around a judgement of routine work: the department's policies and limits, and the answers of makers. */
export function settingFor(entity: { readonly site?: Text }, view: LibraryView): Setting {
  return routineSetting(view.today, siteOf(entity, view), view.all('response'));
}

/** What the department keeps, looked up one id at a time. */
export function stockIn(view: LibraryView): Stock {
  return { chemistry: (id) => view.get('chemistry', id), water: (id) => view.get('water', id) };
}
