import type { Judgement } from '../../judge/outcome.ts';
import { demanderCalled, nameOrId } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { isSoftPackaging, limitInKg, limitsExceeded } from '../support/set-mass.ts';
import { shown } from '../support/shown.ts';
import { evidenceOfAll, nameIn } from '../support/use-reports.ts';

const message = {
  weak: (mass: string, packaging: string, limit: string, others: string) =>
    `The set weighs ${mass}. ${packaging} carries ${limit}.${others}`,
  others: (names: string) => ` Of the same kind and strong enough: ${names}.`,
};

export const rule = defineRule({
  id: 'wrap-grade-under-load',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'A sheet that is too light tears at the corners, and nobody sees it.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const exceeded = limitsExceeded(set, view);
    const [weak] = exceeded.filter((one) => isSoftPackaging(one, view));
    if (set.mass === undefined || weak === undefined || isTooHeavyAnyway(weak, exceeded, view)) return;
    const others = strongerThan(weak, set.mass.value, view);
    report({
      at: set.mass.at,
      message: message.weak(
        shown(set.mass),
        demanderCalled(weak.demandedBy, view),
        weak.required,
        others.length === 0 ? '' : message.others(listed(others)),
      ),
      ...evidenceOfAll([weak], view),
    });
  },
  examples: {
    bad: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: light-wrap
mass: 7.2 kg
      ^^^^^^ The set weighs 7.2 kg. light-wrap carries at most 5 kg. Of the same kind and strong enough: heavy-wrap.
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
mass_src: s2
validated: [{modality: steam-prevac, context: terminal}]
statements:
  s2: {doc: PC-W1, rev: "4", page: 3, quote: "Contents of at most 5.0 kg."}
=== packaging/heavy-wrap.ifu.yaml
kind: packaging
id: heavy-wrap
type: wrap
mass_max: 11.3 kg
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/retractor.ifu.yaml
kind: set
id: retractor
members: [{device: retractor, qty: 1}]
packaging: pouch
mass: 0.7 kg
      ^^^^^^ The set weighs 0.7 kg. pouch carries at most 0.5 kg.
cycle: pv132-4-30
=== devices/retractor.ifu.yaml
kind: device
id: retractor
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: RE-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
mass_max: 0.5 kg
mass_of: net
validated: [{modality: steam-prevac, context: terminal}]
mass: 20 g
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: light-wrap
mass: 4.8 kg
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
`,
      `
=== sets/knee.ifu.yaml
kind: set
id: knee
members: [{device: hook, qty: 2}]
packaging: heavy-wrap
mass: 11.9 kg
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
=== packaging/heavy-wrap.ifu.yaml
kind: packaging
id: heavy-wrap
type: wrap
mass_max: 11.3 kg
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

/** A set that no other limit lets be so heavy either is told once, by that limit. */
function isTooHeavyAnyway(weak: Judgement, exceeded: readonly Judgement[], view: LibraryView): boolean {
  const limit = limitInKg(weak, view);
  return exceeded.some((one) => !isSoftPackaging(one, view) && limitInKg(one, view) <= limit);
}

/** Packaging of the same type that is said to carry the mass. */
function strongerThan(weak: Judgement, massKg: number, view: LibraryView): readonly string[] {
  const ours = view.get('packaging', nameIn(weak.demandedBy));
  const stronger = view
    .all('packaging')
    .filter(
      ({ type, mass_max: limit }) => type?.text === ours?.type?.text && limit !== undefined && limit.value >= massKg,
    );
  return stronger.map(nameOrId);
}
