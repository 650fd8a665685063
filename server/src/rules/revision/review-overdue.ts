import type { IsoDate } from '../../base/brand.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Review } from '../../model/entities/review.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { DateValue, Place } from '../../model/node.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { kinds } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';
import { dayAfter, daysBetween, inDays } from '../support/days.ts';
import { bySource, siteOf, sitePeriod } from '../support/site-limits.ts';

const message = {
  due: (day: string, days: number) => `This file was due for review on ${day}, ${inDays(days)} ago.`,
  byPeriod: (last: string, period: string, days: number) =>
    `This file was last reviewed on ${last}. The department reviews such files every ${period}, so it is ${inDays(days)} late.`,
  unjudged: (kind: string) =>
    `Whether this review is still good can't be judged: it names no due day, and the site gives no review period for a ${kind}.`,
};

export const rule = defineRule({
  id: 'review-overdue',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A library that nobody looks at again grows wrong without a sound.',
  source: 'practice',
  kinds,
  check(entity: AnyEntity & { readonly review?: Review }, { view, today, report }) {
    const { review } = entity;
    if (review?.due !== undefined) {
      const days = daysBetween(review.due.text, today);
      if (days > 0)
        report({ at: review.due.at, message: message.due(review.due.text, days), gap: `${inDays(days)} late` });
    } else if (review?.on !== undefined) {
      byPeriod(entity, review.on, view, today, report);
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pellamont-bone-clamp
review: {encoded_by: educator-1, approved_by: educator-2, on: 2018-01-10, due: 2019-01-10}
                                                                               ^^^^^^^^^^ This file was due for review on 2019-01-10, 2244 days ago.
`,
      `
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
review: {encoded_by: educator-1, on: 2024-01-31}
                                     ^^^^^^^^^^ This file was last reviewed on 2024-01-31. The department reviews such files every 12 months, so it is 31 days late.
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {chemistry: {at_most: 12 months, src: "policy P-3"}}
`,
      `
kind: device
id: pale-forceps
review: {encoded_by: educator-1, on: 2024-01-31}
                                     ^^^^^^^^^^ Whether this review is still good can't be judged: it names no due day, and the site gives no review period for a device.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
review: {encoded_by: educator-1, approved_by: educator-2, on: 2025-01-10, due: 2026-01-10}
`,
      `
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
review: {encoded_by: educator-1, on: 2024-06-30}
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {chemistry: {at_most: 12 months, src: "policy P-3"}}
`,
    ],
  },
});

type ReportOverdue = (report: {
  at: Place;
  message: string;
  severity?: 'advice';
  gap?: string;
  does?: string;
  related?: { at: Place; note: string }[];
}) => void;

function byPeriod(entity: AnyEntity, on: DateValue, view: LibraryView, today: IsoDate, report: ReportOverdue): void {
  const { kind } = rootOfEntity(entity);
  const period = sitePeriod(siteOf(entity as { site?: never }, view), kind);
  if (period === undefined) {
    report({ at: on.at, message: message.unjudged(kind), severity: 'advice' });
    return;
  }
  const due = dayAfter(on.text, period.quantity);
  const days = due === undefined ? 0 : daysBetween(due, today);
  if (days <= 0) return;
  report({
    at: on.at,
    message: message.byPeriod(on.text, formatQuantity(period.quantity), days),
    gap: `${inDays(days)} late`,
    related: [{ at: period.at, note: `the department’s review period${bySource(period)}` }],
  });
}
