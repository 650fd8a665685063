import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Report } from '../rule.ts';
import type { Site } from './site-limits.ts';

type Part = 'thresholds' | 'policies' | 'review_periods';

const places: Readonly<Record<Part, string>> = {
  thresholds: 'the limits of this site give no',
  policies: 'the policies of this site give no',
  review_periods: 'the review periods of this site give no',
};

/** Said once, on the file of the site: what can't be judged until the department adopts a number. */
export function unjudged(site: Site, part: Part, name: string, what: string): Report {
  return {
    at: site[part]?.at ?? site.id?.at ?? site.at,
    message: `${what} can't be judged: ${places[part]} "${name}".`,
    severity: 'advice',
    settledBy: 'manager',
  };
}

/** True when any procedure has such a step. Reads every procedure: ask it only where a number is missing. */
export function anyStep(view: LibraryView, isSuch: (step: ProcedureStep) => boolean): boolean {
  return view.all('procedure').some((procedure) => procedure.steps?.items.some(isSuch) === true);
}
