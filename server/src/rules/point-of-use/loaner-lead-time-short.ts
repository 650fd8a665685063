import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { hasTimes, inHours, isBorrowed, longestLead, secondsBetween } from '../support/lead-time.ts';
import { unjudged } from '../support/unjudged.ts';

type LoanSet = EntityOf['set'];

const message = {
  short: (left: string, lead: string, whose: string) =>
    `This loan set comes ${left} before it is needed, and ${whose} ${lead}. Tell the vendor, or move the case.`,
  late: 'This loan set comes after it is needed. Check both times.',
  does: (received: string, needed: string) => `received ${received}, needed ${needed}`,
};

export const rule = defineRule({
  id: 'loaner-lead-time-short',
  stage: 'point-of-use',
  severity: 'warning',
  settledBy: 'vendor',
  why: 'A set that comes late tempts people to leave out steps.',
  source: 'practice',
  kinds: ['set', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee-loaner
loaner: true
received: 2025-03-03T18:00
          ^^^^^^^^^^^^^^^^ This loan set comes 13.5 h before it is needed, and the department needs 48 h. Tell the vendor, or move the case.
needed: 2025-03-04T07:30
=== site.ifu.yaml
kind: site
id: lakeside
policies: {loaner_lead: 48 h}
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip-loaner
traits: [loaner]
members: [{device: hip-trials, qty: 1}]
received: 2025-03-03
          ^^^^^^^^^^ This loan set comes at most 48 h before it is needed, and the instruction of "hip-trials" asks for 72 h. Tell the vendor, or move the case.
needed: 2025-03-04
=== devices/trials.ifu.yaml
kind: device
id: hip-trials
receipt: {lead_time: {at_least: 72 h, src: s1}}
statements:
  s1: {doc: HT-2, rev: A, page: 1, quote: "Deliver at least 72 hours before surgery."}
=== site.ifu.yaml
kind: site
id: lakeside
policies: {loaner_lead: 24 h}
`,
      `
=== sets/knee.ifu.yaml
kind: set
id: knee-loaner
loaner: true
received: 2025-03-03T18:00
needed: 2025-03-06T07:30
=== site.ifu.yaml
kind: site
id: lakeside
policies: {shelf_life: event-related}
^^^^^^^^ Whether loan sets come early enough can't be judged: the policies of this site give no "loaner_lead".
`,
    ],
    good: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee-loaner
loaner: true
received: 2025-02-28T18:00
needed: 2025-03-04T07:30
=== site.ifu.yaml
kind: site
id: lakeside
policies: {loaner_lead: 48 h}
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
received: 2025-03-03T18:00
needed: 2025-03-04T07:30
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkSet(set: LoanSet, { view, report }: RuleContext): void {
  const { received, needed } = set;
  if (!isBorrowed(set) || received === undefined || needed === undefined) return;
  const left = secondsBetween(received, needed);
  if (Number.isNaN(left)) return;
  const does = message.does(received.text, needed.text);
  const related = [{ at: needed.at, note: 'when it is needed' }];
  if (left < 0) {
    report({ at: received.at, message: message.late, does, related });
    return;
  }
  const lead = longestLead(set, view);
  if (lead === undefined || left >= lead.quantity.value) return;
  report({
    at: received.at,
    message: message.short(
      hasTimes(received, needed) ? inHours(left) : `at most ${inHours(left)}`,
      formatQuantity(lead.quantity),
      lead.whose,
    ),
    does,
    gap: `${inHours(lead.quantity.value - left)} short`,
    says: lead.says,
    related: [...related, { at: lead.quantity.at, note: 'time that is asked for' }],
  });
}

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  if (site.policies?.loaner_lead !== undefined) return;
  const isNeeded = view
    .all('set')
    .some((set) => isBorrowed(set) && set.received !== undefined && set.needed !== undefined);
  if (isNeeded) report(unjudged(site, 'policies', 'loaner_lead', 'Whether loan sets come early enough'));
}
