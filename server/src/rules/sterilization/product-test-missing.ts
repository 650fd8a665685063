import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { dayAfter } from '../support/days.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, siteLimit, siteOf, sitePeriod } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

type InstrumentSet = EntityOf['set'];

const message = {
  none: (reasons: string) =>
    `No test with this set is on record, and it needs one: ${reasons}. What was shown for the cycle was not shown with this load.`,
  otherwise: (what: string, tested: string, now: string) =>
    `The test with this set was made ${what} ${tested}; it is now ${now}.`,
  before: (day: string, what: string, changed: string) =>
    `The test with this set is of ${day}, before ${what} changed on ${changed}.`,
  old: (day: string, limit: string) => `The test with this set is of ${day}, older than ${limit}.`,
  unjudged: (what: string) => `Whether sets need a test of their own because of ${what}`,
  levels: (levels: string) => `${levels} levels`,
  mass: (mass: string) => `${mass}`,
  fresh: 'it is new',
  lumens: 'it holds channels',
};

export const rule = defineRule({
  id: 'product-test-missing',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'educator',
  why: 'The loads with which a cycle was shown to work are not your sets: the heavy, layered and hollow ones must be tried as they are packed.',
  source: 'standard',
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
id: knee
packaging: wrap
levels: 3
        ^ No test with this set is on record, and it needs one: 3 levels and 10.2 kg. What was shown for the cycle was not shown with this load.
mass: 10.2 kg
cycle: pv132-4-30
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {heavy_set_mass: {at_least: 8.0 kg, src: policy P-12}, many_levels: {at_least: 2 pieces, src: policy P-12}}
review_periods: {product_test: {at_most: 366 d, src: policy P-20}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
packaging: wrap
levels: 2
changed: 2025-02-10
cycle: pv132-4-30
product_test: {on: 2025-01-15, packaging: wrap, cycle: pv132-4-30}
                   ^^^^^^^^^^ The test with this set is of 2025-01-15, before its contents changed on 2025-02-10.
=== sets/small.ifu.yaml
kind: set
id: small
packaging: wrap
levels: 2
cycle: pv132-4-30
product_test: {on: 2025-02-15, packaging: wrap, cycle: pv132-4-20}
                                                       ^^^^^^^^^^ The test with this set was made on pv132-4-20; it is now pv132-4-30.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {heavy_set_mass: {at_least: 8.0 kg, src: policy P-12}, many_levels: {at_least: 2 pieces, src: policy P-12}}
review_periods: {product_test: {at_most: 366 d, src: policy P-20}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
levels: 2
mass: 6.1 kg
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {many_levels: {at_least: 3 pieces, src: policy P-12}}
^^^^^^^^^^ Whether sets need a test of their own because of their mass can't be judged: the limits of this site give no "heavy_set_mass".
review_periods: {product_test: {at_most: 366 d, src: policy P-20}}
`,
    ],
    good: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee
packaging: wrap
levels: 3
mass: 10.2 kg
changed: 2025-01-10
cycle: pv132-4-30
product_test: {on: 2025-01-15, packaging: wrap, cycle: pv132-4-30, loads: 3, record: PT-25-07}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {heavy_set_mass: {at_least: 8.0 kg, src: policy P-12}, many_levels: {at_least: 2 pieces, src: policy P-12}}
review_periods: {product_test: {at_most: 366 d, src: policy P-20}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/small.ifu.yaml
kind: set
id: small
levels: 1
mass: 1.2 kg
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {heavy_set_mass: {at_least: 8.0 kg, src: policy P-12}, many_levels: {at_least: 2 pieces, src: policy P-12}}
`,
    ],
  },
});

interface Reason {
  readonly at: Place;
  readonly words: string;
}

function checkSet(set: InstrumentSet, { view, today, report }: RuleContext): void {
  const site = siteOf(set, view);
  const reasons = reasonsFor(set, site, view);
  const [first] = reasons;
  if (first === undefined) return;
  const related = reasons.map(({ at, words }) => ({ at, note: words }));
  const { product_test: test } = set;
  if (test === undefined)
    report({ at: first.at, message: message.none(listed(reasons.map(({ words }) => words))), related });
  else {
    const fault = faultOf(set, test, site, today);
    if (fault !== undefined) report({ at: fault.at, message: fault.words, related });
  }
}

/** Why the set needs a test of its own. */
function reasonsFor(set: InstrumentSet, site: Site | undefined, view: RuleContext['view']): readonly Reason[] {
  const reasons: Reason[] = [];
  const { levels, mass, new: fresh } = set;
  const many = siteLimit(site, 'many_levels');
  const heavy = siteLimit(site, 'heavy_set_mass');
  if (levels !== undefined && many !== undefined && levels.value >= many.value)
    reasons.push({ at: levels.at, words: message.levels(levels.text) });
  if (mass !== undefined && heavy !== undefined && mass.value >= heavy.value)
    reasons.push({ at: mass.at, words: message.mass(shown(mass)) });
  if (fresh?.on === true) reasons.push({ at: fresh.at, words: message.fresh });
  const hollow = set.members?.items.find(
    ({ device }) => device !== undefined && (view.get('device', device.text)?.lumens?.items.length ?? 0) > 0,
  );
  if (hollow !== undefined) reasons.push({ at: (hollow.device ?? hollow).at, words: message.lumens });
  return reasons;
}

type ProductTest = NonNullable<InstrumentSet['product_test']>;

function faultOf(set: InstrumentSet, test: ProductTest, site: Site | undefined, today: string): Reason | undefined {
  for (const [field, what] of [
    ['packaging', 'in'],
    ['cycle', 'on'],
  ] as const) {
    const tested = test[field];
    const now = set[field];
    if (tested !== undefined && now !== undefined && tested.text !== now.text)
      return { at: tested.at, words: message.otherwise(what, tested.text, now.text) };
  }
  const { on } = test;
  if (on === undefined) return undefined;
  for (const [changed, what] of [
    [set.changed, 'its contents'],
    [set.packaging_changed, 'its packaging'],
  ] as const) {
    if (changed !== undefined && on.text < changed.text)
      return { at: on.at, words: message.before(on.text, what, changed.text) };
  }
  const period = sitePeriod(site, 'product_test');
  const end = period === undefined ? undefined : dayAfter(on.text, period.quantity);
  if (period === undefined || end === undefined || end >= today) return undefined;
  return { at: on.at, words: message.old(on.text, `${shown(period.quantity)}${bySource(period)}`) };
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  const wanted = [
    { name: 'many_levels', field: 'levels', what: 'their levels' },
    { name: 'heavy_set_mass', field: 'mass', what: 'their mass' },
  ] as const;
  for (const { name, field, what } of wanted) {
    if (siteLimit(site, name) !== undefined) continue;
    if (view.all('set').some((set) => set[field] !== undefined))
      report(unjudged(site, 'thresholds', name, message.unjudged(what)));
  }
  if (sitePeriod(site, 'product_test') !== undefined) return;
  if (view.all('set').some(({ product_test: test }) => test !== undefined))
    report(unjudged(site, 'review_periods', 'product_test', 'Whether tests with sets are still current'));
}
