import type { LibraryView, SterilizerCycle } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { departmentOf } from '../route/equipment.ts';
import type { SetRoute } from '../route/model.ts';
import { asking, rankOf } from '../route/ranks.ts';
import { derive } from '../route/route.ts';
import type { Subject } from '../route/subject.ts';
import { subjectOfDevice, subjectOfSet } from '../route/subject.ts';
import { offersImmediateUse } from '../rules/support/iuss.ts';

/** What can be said about immediate use of a device or set here. */
export interface ImmediateUse {
  readonly answer: 'yes' | 'ask' | 'not-listed' | 'not-here';
  /** Members whose page does not offer it; silence offers nothing. */
  readonly lacking: readonly string[];
  readonly route: SetRoute;
  readonly machine?: EntityOf['sterilizer'];
  readonly cycle?: SterilizerCycle;
  readonly packaging?: EntityOf['packaging'];
}

export function immediateUseOfDevice(view: LibraryView, device: EntityOf['device']): ImmediateUse {
  return judged(view, subjectOfDevice(view, device));
}

export function immediateUseOfSet(view: LibraryView, set: EntityOf['set']): ImmediateUse {
  const { packaging: _packaging, ...subject } = subjectOfSet(view, set);
  return judged(view, { ...subject, contents: { ...subject.contents, filter: undefined }, weighed: 'not-yet' });
}

/** The same derivation as for any route, for packs that are used at once. */
function judged(view: LibraryView, subject: Subject): ImmediateUse {
  const lacking = subject.members.flatMap(({ id, device }) =>
    device !== undefined && offersImmediateUse(device) ? [] : [id],
  );
  const { route } = derive({ ...subject, context: 'iuss' }, view.ask(departmentOf, subject.site ?? ''));
  if (lacking.length > 0 || subject.members.length === 0) return { answer: 'not-listed', lacking, route };
  const fit = urgentFit(view, route);
  const found = fit === undefined ? undefined : view.sterilizerCycle(fit.cycle);
  if (fit === undefined || found === undefined || route.status === 'none')
    return { answer: 'not-here', lacking, route };
  const packaging = view.get('packaging', fit.packaging);
  const isOpen = route.status === 'provisional' || rankOf(fit.outcome) >= asking;
  return { answer: isOpen ? 'ask' : 'yes', lacking, route, ...found, ...(packaging && { packaging }) };
}

/** Only a cycle that is itself for immediate use answers the question. */
function urgentFit(view: LibraryView, { chosen, alternatives }: SetRoute) {
  return [chosen, ...alternatives].find(
    (one) => one !== undefined && view.sterilizerCycle(one.cycle)?.cycle.context?.text === 'iuss',
  );
}
