import type { Setting, Stock } from '../../judge/setting.ts';
import { routineSetting } from '../../judge/setting.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { Text } from '../../model/node.ts';

/** What holds around a judgement of routine work: the department's policies and limits, and the answers of makers. */
export function settingFor(entity: { readonly site?: Text }, view: LibraryView): Setting {
  return view.ask(settingOfSite, entity.site?.text ?? '');
}

/** One and the same for all that belong to a site, so that what was worked out for it is found again. */
const settingOfSite: Query<string, Setting> = {
  name: 'routine setting of a site',
  work(view, id) {
    const site = (id === '' ? undefined : view.get('site', id)) ?? view.site();
    return routineSetting(view.today, site, view.answersOfMakers());
  },
};

/** What the department keeps, looked up one id at a time. */
export function stockIn(view: LibraryView): Stock {
  return { chemistry: (id) => view.get('chemistry', id), water: (id) => view.get('water', id) };
}
