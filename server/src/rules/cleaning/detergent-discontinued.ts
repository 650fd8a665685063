import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { DateValue, Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { daysBetween, inDays } from '../support/days.ts';
import { partsOf } from '../support/entity-parts.ts';
import { demandInWords } from '../support/limits-of.ts';
import { bySource, siteLimit, siteOf } from '../support/site-limits.ts';

type Chemistry = EntityOf['chemistry'];

const message = {
  gone: (name: string, day: string) =>
    `${name} was discontinued on ${day} and is still named here. Choose another before the cupboard is filled with something else.`,
  going: (name: string, day: string, days: number) =>
    `${name} will be discontinued on ${day}, in ${inDays(days)}, and is still named here.`,
  unjudged: (name: string, day: string) =>
    `${name} will be discontinued on ${day}. Whether that is near can't be judged: the site gives no limit "discontinued_notice".`,
  substitute: (chemistry: Chemistry) => {
    const ph = chemistry.ph_in_use === undefined ? '' : `, in-use pH ${demandInWords(chemistry.ph_in_use)}`;
    return `could take its place: ${chemistry.class?.text ?? 'class not given'}${ph}`;
  },
};

export const rule = defineRule({
  id: 'detergent-discontinued',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'When a detergent is no longer sold, the bottle will be filled with something else.',
  source: 'logic',
  kinds: ['washer', 'ultrasonic', 'procedure'],
  check(entity: AnyEntity, context) {
    const judged = new Map<string, Text[]>();
    for (const reference of partsOf(entity).references) {
      if (reference.refers.includes('chemistry'))
        judged.set(reference.text, [...(judged.get(reference.text) ?? []), reference]);
    }
    for (const [id, places] of judged) {
      const chemistry = context.view.get('chemistry', id);
      if (chemistry?.discontinued_on !== undefined)
        judge(chemistry, chemistry.discontinued_on, places, entity, context);
    }
  },
  examples: {
    bad: [
      `
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
class: neutral
discontinued_on: 2025-02-28
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
steps:
  - {stage: manual, do: soak, chemistry: C4, time: 3 min}
                                         ^^ C4 was discontinued on 2025-02-28 and is still named here. Choose another before the cupboard is filled with something else.
`,
      `
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
discontinued_on: 2025-05-01
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-gentle
    doses: [C4]
            ^^ C4 will be discontinued on 2025-05-01, in 59 days, and is still named here.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {discontinued_notice: {at_most: 90 d, src: "purchasing note B-2"}}
`,
      `
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
discontinued_on: 2025-05-01
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
chemistry: C4
           ^^ C4 will be discontinued on 2025-05-01. Whether that is near can't be judged: the site gives no limit "discontinued_notice".
`,
    ],
    good: [
      `
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
discontinued_on: 2025-02-28
replaced_by: C5
=== chemistry/c5.ifu.yaml
kind: chemistry
id: C5
=== procedures/eye.ifu.yaml
kind: procedure
id: eye
steps:
  - {stage: manual, do: soak, chemistry: C5, time: 3 min}
`,
      `
=== chemistry/c4.ifu.yaml
kind: chemistry
id: C4
discontinued_on: 2026-05-01
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-gentle, doses: [C4]}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {discontinued_notice: {at_most: 90 d, src: "purchasing note B-2"}}
`,
    ],
  },
});

function judge(
  chemistry: Chemistry,
  day: DateValue,
  places: readonly Text[],
  entity: AnyEntity,
  { view, today, report }: RuleContext,
): void {
  const [first, ...others] = places;
  if (first === undefined) return;
  const days = daysBetween(today, day.text);
  const notice = days > 0 ? siteLimit(siteOf(entity as { site?: Text }, view), 'discontinued_notice') : undefined;
  if (notice !== undefined && days * 86_400 > notice.value) return;
  const { id } = rootOfEntity(chemistry);
  const related = [
    { at: day.at, note: 'where it is written' },
    ...others.map(({ at }) => ({ at, note: 'named here too' })),
    ...substitutesOf(chemistry, view, today).map((other) => ({ at: other.at, note: message.substitute(other) })),
    ...(notice === undefined ? [] : [{ at: notice.at, note: `how long before a warning is given${bySource(notice)}` }]),
  ];
  if (days <= 0) report({ at: first.at, message: message.gone(id, day.text), gap: `${inDays(-days)} ago`, related });
  else if (notice === undefined)
    report({ at: first.at, message: message.unjudged(id, day.text), severity: 'advice', related });
  else
    report({
      at: first.at,
      message: message.going(id, day.text, days),
      severity: 'warning',
      gap: `${inDays(days)} left`,
      related,
    });
}

/** What its file names as its replacement, then those of the same class for the same methods. Whether each device allows them is another question. */
function substitutesOf(chemistry: Chemistry, view: LibraryView, today: string): readonly Chemistry[] {
  const named = chemistry.replaced_by === undefined ? undefined : view.get('chemistry', chemistry.replaced_by.text);
  if (named !== undefined) return [named];
  const methods = chemistry.methods?.items.map((method) => method.text) ?? [];
  return view.all('chemistry').filter((other) => {
    const has = new Set(other.methods?.items.map((method) => method.text));
    const isSold = other.discontinued_on === undefined || other.discontinued_on.text > today;
    return (
      other !== chemistry &&
      isSold &&
      other.class !== undefined &&
      other.class.text === chemistry.class?.text &&
      methods.every((method) => has.has(method))
    );
  });
}
