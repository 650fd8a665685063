import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { isSoftPackaging, limitsExceeded } from '../support/set-mass.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { siteLimit } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';
import { evidenceOfAll, whoDemands } from '../support/use-reports.ts';

const message = {
  heavy: (mass: string, who: string, split: string) =>
    `The set weighs ${mass}. That is more than is allowed by ${who}.${split}`,
  split: (levels: string) => ` It has ${levels} levels: packed apart, each is lighter.`,
  what: 'Whether sets are too heavy',
};

export const rule = defineRule({
  id: 'set-overweight',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'More metal makes more water than drying takes out, and a heavy set hurts backs and tears packaging.',
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
mass: 11.9 kg
      ^^^^^^^ The set weighs 11.9 kg. That is more than is allowed by "lakeside" (at most 11.3 kg). It has 3 levels: packed apart, each is lighter.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
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
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 20}]
packaging: container
mass: 9.5 kg
      ^^^^^^ The set weighs 9.5 kg. That is more than is allowed by "container" (at most 7 kg) and "hook" (at most 8 kg).
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
packaging: {max_mass: {at_most: 8 kg, src: s1}}
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes. Sets of at most 8 kg."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
mass_max: 7.0 kg
mass_of: gross
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
mass: 4.2 kg
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether sets are too heavy can't be judged: the limits of this site give no "set_mass".
`,
    ],
    good: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee
packaging: wrap
mass: 25 lb
cycle: pv132-4-30
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.4 kg, src: policy P-12}}
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
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: light-wrap
mass: 5.6 kg
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/light-wrap.ifu.yaml
kind: packaging
id: light-wrap
type: wrap
mass_max: 5.0 kg
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {set_mass: {at_most: 11.3 kg, src: policy P-12}}
`,
    ],
  },
});

/** What only a wrap or pouch can't carry is another finding: it is mended with another wrap. */
function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  const exceeded = limitsExceeded(set, view).filter((one) => !isSoftPackaging(one, view));
  if (set.mass === undefined || exceeded.length === 0) return;
  const { levels } = set;
  const split = levels !== undefined && levels.value > 1 ? message.split(levels.text) : '';
  report({
    at: set.mass.at,
    message: message.heavy(shown(set.mass), whoDemands(exceeded, view), split),
    ...evidenceOfAll(exceeded, view),
  });
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (siteLimit(site, 'set_mass') !== undefined) return;
  if (view.all('set').some(({ mass }) => mass !== undefined))
    report(unjudged(site, 'thresholds', 'set_mass', message.what));
}
