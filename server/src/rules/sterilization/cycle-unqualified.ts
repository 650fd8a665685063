import type { IsoDate } from '../../base/brand.ts';
import type { SterilizerCycle } from '../../model/entities/sterilizer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { DateValue, Place } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { dayAfter } from '../support/days.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';
import type { Site, SiteLimit } from '../support/site-limits.ts';
import { bySource, siteOf, sitePeriod } from '../support/site-limits.ts';

const message = {
  never: (cycle: string, evidence: string) =>
    `No ${evidence} of the cycle ${cycle} is on record. A programmed cycle is only a wish until it has been shown here.`,
  changed: (cycle: string, evidence: string, changed: string, last: string) =>
    `The cycle ${cycle} was changed on ${changed}, after its ${evidence} of ${last}.`,
  ended: (cycle: string, evidence: string, day: string) => `The ${evidence} of the cycle ${cycle} ran out on ${day}.`,
  used: (users: string) => `It is used by ${users}.`,
  unused: 'No set or procedure names it yet.',
  noPeriod: (cycles: string, evidence: string) =>
    `Whether the ${evidence} of ${cycles} is still current can't be judged: the site gives no review period "sterilizer_qualification".`,
};

export const rule = defineRule({
  id: 'cycle-unqualified',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'biomed',
  why: 'Nobody has shown that this machine delivers this cycle here.',
  source: 'standard',
  kinds: ['sterilizer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'sterilizer')) checkSterilizer(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
cycles:
  - {id: S2-pv134-4-30, modality: steam-prevac, qualified: 2025-01-20, qualified_until: 2026-01-20}
  - {id: S2-pv134-4-50, modality: steam-prevac, qualified: null}
         ^^^^^^^^^^^^^ No qualification of the cycle S2-pv134-4-50 is on record. A programmed cycle is only a wish until it has been shown here.
=== sets/robot.ifu.yaml
kind: set
id: robot
cycle: S2-pv134-4-50
`,
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
cycles:
  - {id: pv132, qualified: 2024-02-01, changed: 2024-11-05}
                                                ^^^^^^^^^^ The cycle pv132 was changed on 2024-11-05, after its process validation of 2024-02-01.
  - {id: pv134, qualified: 2024-02-01}
                           ^^^^^^^^^^ The process validation of the cycle pv134 ran out on 2025-02-01.
=== site.ifu.yaml
kind: site
id: sea-view
vocabulary: iso
review_periods: {sterilizer_qualification: {at_most: 12 months, src: "plan Q-1"}}
`,
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
cycles: [{id: pv132, qualified: 2024-02-01}]
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the qualification of pv132 is still current can't be judged: the site gives no review period "sterilizer_qualification".
`,
    ],
    good: [
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
cycles:
  - {id: pv132, qualified: 2024-06-01, changed: 2024-05-05}
  - {id: old, qualified: null, withdrawn_on: 2023-01-01}
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {sterilizer_qualification: {at_most: 12 months, src: "plan Q-1"}}
`,
      `
kind: sterilizer
id: S9
proposed: true
cycles: [{id: pv132-4-40, modality: steam-prevac}]
`,
    ],
  },
});

function checkSterilizer(sterilizer: EntityOf['sterilizer'], { view, today, report }: RuleContext): void {
  if (sterilizer.proposed?.on === true || sterilizer.withdrawn_on !== undefined) return;
  const site = siteOf(sterilizer, view);
  const period = sitePeriod(site, 'sterilizer_qualification');
  for (const cycle of sterilizer.cycles?.items ?? []) {
    if (cycle.withdrawn_on !== undefined) continue;
    const found = faultOf(cycle, qualifiedOn(sterilizer, cycle), { period, today, evidence: evidenceWord(site) });
    if (found === undefined) continue;
    const users = usersOf(cycle, view);
    report({
      at: found.at,
      message: found.message,
      does: users.length === 0 ? message.unused : message.used(listed(users.map((user) => rootOfEntity(user).id))),
      ...(users.length === 0 && { severity: 'warning' as const }),
      related: [
        ...users.map((user) => ({ at: user.at, note: 'uses this cycle' })),
        ...(found.limit === undefined
          ? []
          : [{ at: found.limit.at, note: `every ${shown(found.limit.quantity)}${bySource(found.limit)}` }]),
      ],
    });
  }
}

interface Judging {
  readonly period: SiteLimit | undefined;
  readonly today: IsoDate;
  readonly evidence: string;
}

interface Fault {
  readonly at: Place;
  readonly message: string;
  readonly limit?: SiteLimit;
}

function faultOf(
  cycle: SterilizerCycle,
  qualified: DateValue | undefined,
  { period, today, evidence }: Judging,
): Fault | undefined {
  const name = cycle.id?.text ?? 'without id';
  if (qualified === undefined) return { at: cycle.at, message: message.never(name, evidence) };
  const { changed, qualified_until: until } = cycle;
  if (changed !== undefined && changed.text > qualified.text) {
    return { at: changed.at, message: message.changed(name, evidence, changed.text, qualified.text) };
  }
  if (until !== undefined)
    return until.text < today ? { at: until.at, message: message.ended(name, evidence, until.text) } : undefined;
  const end = period === undefined ? undefined : dayAfter(qualified.text, period.quantity);
  if (period === undefined || end === undefined || end >= today) return undefined;
  return { at: qualified.at, message: message.ended(name, evidence, end), limit: period };
}

/** That of the machine counts for its cycles only where no cycle carries a day of its own. */
function qualifiedOn(sterilizer: EntityOf['sterilizer'], cycle: SterilizerCycle): DateValue | undefined {
  const isPerCycle = sterilizer.cycles?.items.some((other) => other.qualified !== undefined) === true;
  return isPerCycle ? cycle.qualified : sterilizer.qualified;
}

/** The everyday word of the site's vocabulary for the same evidence. */
function evidenceWord(site: Site | undefined): string {
  return site?.vocabulary?.text === 'iso' ? 'process validation' : 'qualification';
}

function usersOf(cycle: SterilizerCycle, view: RuleContext['view']): readonly AnyEntity[] {
  if (cycle.id === undefined) return [];
  return [...view.users('cycle', cycle.id.text, 'set'), ...view.users('cycle', cycle.id.text, 'procedure')];
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (sitePeriod(site, 'sterilizer_qualification') !== undefined) return;
  const undated: string[] = [];
  for (const sterilizer of view.all('sterilizer')) {
    if (siteOf(sterilizer, view) !== site || sterilizer.proposed?.on === true) continue;
    for (const cycle of sterilizer.cycles?.items ?? []) {
      if (qualifiedOn(sterilizer, cycle) !== undefined && cycle.qualified_until === undefined)
        undated.push(cycle.id?.text ?? 'a cycle');
    }
  }
  if (undated.length === 0) return;
  const at = site.review_periods?.at ?? site.id?.at ?? site.at;
  report({ at, severity: 'advice', message: message.noPeriod(listed(undated), evidenceWord(site)) });
}
