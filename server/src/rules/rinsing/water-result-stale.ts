import { isOlderThan, isPast } from '../../judge/evidence.ts';
import type { Setting } from '../../judge/setting.ts';
import { judgeWater } from '../../judge/water.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import { rowOf } from '../../model/walk.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { daysBetween, inDays } from '../support/days.ts';
import { settingFor } from '../support/judging.ts';
import { bySource, siteOf, sitePeriod } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

type Water = EntityOf['water'];

const message = {
  none: (grade: string) => `This water counts as ${grade}, and no result says that it is.`,
  stale: (day: string, period: string, source: string) =>
    `The last result is of ${day}. The department asks for one every ${period}${source}.`,
  outside: (reason: string) => `The last result is outside what the department asks of this grade. ${reason}`,
  late: (days: number) => `${inDays(days)} late`,
};

export const rule = defineRule({
  id: 'water-result-stale',
  stage: 'rinsing',
  severity: 'warning',
  settledBy: 'engineering',
  why: 'A grade is a measurement, not a label on a tap.',
  source: 'standard',
  kinds: ['water', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'water')) checkWater(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== water/ro.ifu.yaml
kind: water
id: RO-sink-2
grade: critical
last_result: 2023-11-01
             ^^^^^^^^^^ The last result is of 2023-11-01. The department asks for one every 90 d (policy P-20).
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {water_result: {at_most: 90 d, src: policy P-20}}
`,
      `
=== water/ro.ifu.yaml
kind: water
id: RO-1
grade: critical
       ^^^^^^^^ This water counts as critical, and no result says that it is.
conductivity: 4 uS/cm
=== water/di.ifu.yaml
kind: water
id: DI-1
grade: critical
conductivity: 26 uS/cm
              ^^^^^^^^ The last result is outside what the department asks of this grade. Conductivity of the water: the water holds more of this than allowed.
last_result: 2025-02-10
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {water_result: {at_most: 90 d}}
water_grades:
  critical: {grade: critical, conductivity: {at_most: 10 uS/cm}, src: water plan W-3}
`,
      `
=== water/ro.ifu.yaml
kind: water
id: RO-1
grade: critical
last_result: 2025-02-10
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {device: {at_most: 366 d, src: policy P-20}}
^^^^^^^^^^^^^^ Whether results of water are too old can't be judged: the review periods of this site give no "water_result".
`,
    ],
    good: [
      `
=== water/ro.ifu.yaml
kind: water
id: RO-1
grade: critical
conductivity: 4 uS/cm
last_result: 2025-02-10
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {water_result: {at_most: 90 d, src: policy P-20}}
water_grades: {critical: {grade: critical, conductivity: {at_most: 10 uS/cm}}}
`,
      `
=== water/tap.ifu.yaml
kind: water
id: tap
grade: utility
conductivity: 310 uS/cm
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

/** Plain mains water has no grade that must be shown. */
function isGraded(water: Water, today: string): boolean {
  return water.grade !== undefined && water.grade.text !== 'utility' && !isPast(water.withdrawn_on, today);
}

function checkWater(water: Water, { view, today, report }: RuleContext): void {
  const { grade, last_result } = water;
  if (grade === undefined || !isGraded(water, today)) return;
  const setting = settingFor(water, view);
  const period = sitePeriod(setting.site, 'water_result');
  if (last_result === undefined) {
    report({ at: grade.at, message: message.none(grade.text) });
  } else if (period !== undefined && isOlderThan(last_result, 'water_result', setting)) {
    const late = daysBetween(last_result.text, today) - Math.floor(period.value / 86_400);
    report({
      at: last_result.at,
      message: message.stale(last_result.text, formatQuantity(period.quantity), bySource(period)),
      gap: message.late(late),
      related: [{ at: period.at, note: 'how often the department asks for a result' }],
    });
  } else {
    reportOutside(water, grade.text, setting, report);
  }
}

function reportOutside(water: Water, grade: string, setting: Setting, report: RuleContext['report']): void {
  const limits = rowOf(setting.site?.water_grades, grade);
  if (limits === undefined || setting.site === undefined) return;
  const { src: _source, edition: _edition, note: _note, grade: _grade, ...quality } = limits;
  const judgement = judgeWater({ by: setting.site, quality, water, waterName: grade, setting }).find(
    (one) => one.outcome === 'fails',
  );
  if (judgement === undefined) return;
  report({
    at: judgement.factAt ?? water.at,
    message: message.outside(judgement.reason),
    does: judgement.given,
    ...(judgement.gap !== undefined && { gap: judgement.gap }),
    related: [{ at: judgement.demandAt, note: `what the department asks: ${judgement.required}` }],
  });
}

function checkSite(site: EntityOf['site'], { view, today, report }: RuleContext): void {
  if (sitePeriod(site, 'water_result') !== undefined) return;
  const isNeeded = view
    .all('water')
    .some((water) => isGraded(water, today) && water.last_result !== undefined && siteOf(water, view) === site);
  if (isNeeded) report(unjudged(site, 'review_periods', 'water_result', 'Whether results of water are too old'));
}
