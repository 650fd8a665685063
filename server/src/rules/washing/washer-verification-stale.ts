import { judgeWasherEvidence } from '../../judge/wash-evidence.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { settingFor } from '../support/judging.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, siteOf, sitePeriod } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';
import { isInService } from '../support/washer-uses.ts';

const message = {
  stale: (cycle: string, reason: string) => `${cycle} has no current test of how it cleans. ${reason}`,
  period: (limit: string) => `every ${limit}`,
  what: 'Whether tests of how washers clean are still current',
};

export const rule = defineRule({
  id: 'washer-verification-stale',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'The number of a cycle tells what was programmed, not whether it still cleans.',
  source: 'standard',
  kinds: ['washer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, last_cleaning_test: null}]
              ^^^^^^ W2-std has no current test of how it cleans. Evidence: no test of cleaning: a cycle number is no evidence.
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {washer_cleaning_test: {at_most: 31 d, src: policy P-20}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-std, last_cleaning_test: 2025-01-10}
                                     ^^^^^^^^^^ W1-std has no current test of how it cleans. Evidence: the last test of cleaning is older than the site accepts.
  - {id: W1-gentle, last_cleaning_test: 2025-02-10, changed: 2025-02-20}
                                                             ^^^^^^^^^^ W1-gentle has no current test of how it cleans. Evidence: changed after it was qualified.
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {washer_cleaning_test: {at_most: 31 d, src: policy P-20}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, last_cleaning_test: 2019-01-10}]
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether tests of how washers clean are still current can't be judged: the review periods of this site give no "washer_cleaning_test".
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-std, last_cleaning_test: 2025-03-01}
  - {id: W1-old, withdrawn_on: 2023-01-01}
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {washer_cleaning_test: {at_most: 31 d, src: policy P-20}}
`,
      `
kind: washer
id: W9
proposed: true
cycles: [{id: W9-std}]
`,
    ],
  },
});

function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  if (!isInService(washer)) return;
  const period = sitePeriod(siteOf(washer, view), 'washer_cleaning_test');
  for (const cycle of washer.cycles?.items ?? []) {
    const judgement = judgeWasherEvidence(washer, cycle, settingFor(washer, view));
    if (judgement.outcome !== 'fails' || cycle.withdrawn_on !== undefined) continue;
    report({
      at: cycle.last_cleaning_test === undefined ? cycle.at : judgement.demandAt,
      message: message.stale(cycle.id?.text ?? '', judgement.reason),
      does: judgement.given,
      related:
        period === undefined
          ? []
          : [{ at: period.at, note: message.period(`${shown(period.quantity)}${bySource(period)}`) }],
    });
  }
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (sitePeriod(site, 'washer_cleaning_test') !== undefined) return;
  const isTested = view
    .all('washer')
    .some((washer) => washer.cycles?.items.some((cycle) => cycle.last_cleaning_test !== undefined));
  if (isTested) report(unjudged(site, 'review_periods', 'washer_cleaning_test', message.what));
}
