import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { DateValue, Place, Quantity } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { dayAfter } from '../support/days.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, likeQuantity, siteLimit, siteOf, sitePeriod } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

type InstrumentSet = EntityOf['set'];

const message = {
  none: 'The set has not been weighed. Every limit of mass stays unjudged until it is.',
  undated: 'It is not said when the set was weighed.',
  before: (day: string, changed: string) => `The set was weighed on ${day}, before it changed on ${changed}.`,
  old: (day: string, limit: string) => `The set was weighed on ${day}, longer ago than ${limit}.`,
  apart: (mass: string, sum: string, what: string, limit: string) =>
    `${mass} was weighed, and ${what} add up to ${sum}. That is more than ${limit} apart.`,
  materials: 'its materials',
  members: 'its members',
  unjudgedAge: 'Whether the masses of sets are still current',
  unjudgedSum: 'Whether the mass of sets agrees with what is in them',
};

export const rule = defineRule({
  id: 'set-mass-unmeasured',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Sets grow one instrument at a time, and nobody notices when a limit is passed.',
  source: 'practice',
  kinds: ['set', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/ortho.ifu.yaml
kind: set
id: ortho
packaging: wrap
mass: 8.4 kg
mass_measured: 2022-05-01
               ^^^^^^^^^^ The set was weighed on 2022-05-01, before it changed on 2025-01-20.
changed: 2025-01-20
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
    ^^^ The set has not been weighed. Every limit of mass stays unjudged until it is.
members: [{device: hook, qty: 2}]
=== sets/knee.ifu.yaml
kind: set
id: knee
mass: 8.4 kg
      ^^^^^^ 8.4 kg was weighed, and its materials add up to 7.2 kg. That is more than 10 % (policy P-12) apart.
mass_measured: 2023-05-01
               ^^^^^^^^^^ The set was weighed on 2023-05-01, longer ago than 366 d (policy P-20).
masses: {steel: 6 kg, aluminium: 1.2 kg}
=== devices/hook.ifu.yaml
kind: device
id: hook
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {mass_difference: {at_most: 10 %, src: policy P-12}}
review_periods: {mass: {at_most: 366 d, src: policy P-20}}
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
mass: 6.0 kg
mass_measured: 2025-02-01
masses: {steel: 6 kg}
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the mass of sets agrees with what is in them can't be judged: the limits of this site give no "mass_difference".
review_periods: {mass: {at_most: 366 d, src: policy P-20}}
`,
    ],
    good: [
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
members: [{device: hook, qty: 10}]
mass: 6.2 kg
mass_measured: 2025-01-20
changed: 2025-01-20
=== devices/hook.ifu.yaml
kind: device
id: hook
mass: 600 g
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {mass_difference: {at_most: 10 %, src: policy P-12}}
review_periods: {mass: {at_most: 366 d, src: policy P-20}}
`,
      `
kind: set
id: single
members: []
mass: 0.4 kg
mass_measured: 2025-02-20
`,
    ],
  },
});

interface Fault {
  readonly at: Place;
  readonly message: string;
  readonly gap?: string;
}

function checkSet(set: InstrumentSet, { view, today, report }: RuleContext): void {
  const { mass, mass_measured: day } = set;
  if (mass === undefined) {
    report({ at: set.id?.at ?? set.at, message: message.none });
    return;
  }
  if (mass.problem !== undefined) return;
  const site = siteOf(set, view);
  const fault = day === undefined ? { at: mass.at, message: message.undated } : ageFault(set, day, site, today);
  if (fault !== undefined) report(fault);
  const apart = sumFault(set, mass, site, view);
  if (apart !== undefined) report(apart);
}

function ageFault(
  { changed }: InstrumentSet,
  day: DateValue,
  site: Site | undefined,
  today: string,
): Fault | undefined {
  if (changed !== undefined && day.text < changed.text)
    return { at: day.at, message: message.before(day.text, changed.text) };
  const period = sitePeriod(site, 'mass');
  const end = period === undefined ? undefined : dayAfter(day.text, period.quantity);
  if (period === undefined || end === undefined || end >= today) return undefined;
  return { at: day.at, message: message.old(day.text, `${shown(period.quantity)}${bySource(period)}`) };
}

/** What was weighed against what is listed, where everything listed has a mass. */
function sumFault(set: InstrumentSet, mass: Quantity, site: Site | undefined, view: LibraryView): Fault | undefined {
  const limit = siteLimit(site, 'mass_difference');
  const listed = sumOf([...(set.masses?.rows.values() ?? [])].map(({ value }) => value));
  const sum = listed ?? sumOfMembers(set, view);
  if (limit === undefined || sum === undefined || mass.value === 0) return undefined;
  const difference = Math.abs(mass.value - sum);
  if ((100 * difference) / mass.value <= limit.value) return undefined;
  const what = listed === undefined ? message.members : message.materials;
  const adopted = `${shown(limit.quantity)}${bySource(limit)}`;
  return {
    at: mass.at,
    message: message.apart(shown(mass), likeQuantity(sum, mass, 1), what, adopted),
    gap: likeQuantity(difference, mass, 1),
  };
}

function sumOf(masses: readonly Quantity[]): number | undefined {
  if (masses.length === 0 || masses.some(({ problem }) => problem !== undefined)) return undefined;
  return masses.reduce((sum, { value }) => sum + value, 0);
}

/** In kilograms, the packaging included where its mass is known. */
function sumOfMembers(set: InstrumentSet, view: LibraryView): number | undefined {
  let sum = (set.packaging === undefined ? undefined : view.get('packaging', set.packaging.text)?.mass?.value) ?? 0;
  const members = set.members?.items ?? [];
  for (const { mass, device, qty } of members) {
    const one = mass ?? (device === undefined ? undefined : view.get('device', device.text)?.mass);
    if (one === undefined || one.problem !== undefined) return undefined;
    sum += one.value * (qty === undefined || qty.problem !== undefined ? 1 : qty.value);
  }
  return members.length === 0 ? undefined : sum;
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  // Sets are asked for only where something is missing: else the site would be judged again with each of them.
  const period = sitePeriod(site, 'mass');
  if (period === undefined && view.all('set').some(({ mass_measured: day }) => day !== undefined))
    report(unjudged(site, 'review_periods', 'mass', message.unjudgedAge));
  if (siteLimit(site, 'mass_difference') === undefined && view.all('set').some(({ masses }) => masses !== undefined))
    report(unjudged(site, 'thresholds', 'mass_difference', message.unjudgedSum));
}
