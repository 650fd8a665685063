import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, likeQuantity, siteLimit, siteOf, sitePeriod } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

type Sterilizer = EntityOf['sterilizer'];

const message = {
  none: 'This machine removes air by vacuum, and no test of the empty chamber is on record.',
  seldom: (every: string, limit: string) =>
    `The test of air removal is run every ${every}; the department asks for every ${limit}.`,
  long: (exposure: string, limit: string) =>
    `The test of air removal runs ${exposure}, longer than ${limit}. Held too long, the sheet changes colour even where air was left.`,
  gap: (difference: string) => `${difference} over`,
  unjudgedPeriod: 'Whether the test of air removal is run often enough',
  unjudgedExposure: 'Whether the test of air removal is too long',
};

export const rule = defineRule({
  id: 'air-removal-test-missing-or-long',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'biomed',
  why: 'Where air stays, steam does not come, and only this test finds it before the first load.',
  source: 'standard',
  kinds: ['sterilizer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'sterilizer')) checkSterilizer(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
modality: steam-prevac
air_removal_test: {every: 7 d, exposure: 10 min, last: 2025-03-03}
                          ^^^ The test of air removal is run every 7 d; the department asks for every 1 d (policy P-16).
                                         ^^^^^^ The test of air removal runs 10 min, longer than 4 min (policy P-16). Held too long, the sheet changes colour even where air was left.
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
    ^^ This machine removes air by vacuum, and no test of the empty chamber is on record.
cycles: [{id: pv134, modality: steam-prevac}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {air_removal_exposure: {at_most: 4 min, src: policy P-16}}
review_periods: {air_removal_test: {at_most: 1 d, src: policy P-16}}
`,
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
modality: steam-prevac
air_removal_test: {every: 1 d, exposure: 5 min}
                                         ^^^^^ The test of air removal runs 5 min, longer than 4 min (policy P-16). Held too long, the sheet changes colour even where air was left.
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the test of air removal is run often enough can't be judged: the review periods of this site give no "air_removal_test".
thresholds: {air_removal_exposure: {at_most: 4 min, src: policy P-16}}
`,
    ],
    good: [
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
modality: steam-prevac
air_removal_test: {every: 1 d, exposure: 3.5 min, last: 2025-03-03}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {air_removal_exposure: {at_most: 4 min, src: policy P-16}}
review_periods: {air_removal_test: {at_most: 1 d, src: policy P-16}}
`,
      `
=== sterilizers/s3.ifu.yaml
kind: sterilizer
id: S3
modality: vh2o2
=== sterilizers/s4.ifu.yaml
kind: sterilizer
id: S4
modality: steam-gravity
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkSterilizer(sterilizer: Sterilizer, { view, report }: RuleContext): void {
  if (!drawsVacuum(sterilizer) || sterilizer.proposed?.on === true || sterilizer.withdrawn_on !== undefined) return;
  const { air_removal_test: test } = sterilizer;
  if (test === undefined) {
    report({ at: (sterilizer.id ?? sterilizer).at, message: message.none });
    return;
  }
  const site = siteOf(sterilizer, view);
  const period = sitePeriod(site, 'air_removal_test');
  const longest = siteLimit(site, 'air_removal_exposure');
  const { every, exposure } = test;
  if (every !== undefined && period !== undefined && every.value > period.value)
    report({
      at: every.at,
      message: message.seldom(shown(every), `${shown(period.quantity)}${bySource(period)}`),
      related: [{ at: period.at, note: 'what the department has adopted' }],
    });
  if (exposure !== undefined && longest !== undefined && exposure.value > longest.value)
    report({
      at: exposure.at,
      message: message.long(shown(exposure), `${shown(longest.quantity)}${bySource(longest)}`),
      gap: message.gap(likeQuantity(exposure.value - longest.value, exposure)),
      related: [{ at: longest.at, note: 'what the department has adopted' }],
    });
}

function drawsVacuum({ modality, cycles }: Sterilizer): boolean {
  const methods = cycles?.items.map((cycle) => cycle.modality ?? modality) ?? [modality];
  return methods.some((method) => method?.text === 'steam-prevac');
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  const tests = view.all('sterilizer').flatMap(({ air_removal_test: test }) => test ?? []);
  if (sitePeriod(site, 'air_removal_test') === undefined && tests.some(({ every }) => every !== undefined))
    report(unjudged(site, 'review_periods', 'air_removal_test', message.unjudgedPeriod));
  if (siteLimit(site, 'air_removal_exposure') === undefined && tests.some(({ exposure }) => exposure !== undefined))
    report(unjudged(site, 'thresholds', 'air_removal_exposure', message.unjudgedExposure));
}
