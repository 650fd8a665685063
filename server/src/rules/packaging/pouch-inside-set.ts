import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { evidenceOfAll, nameIn } from '../support/use-reports.ts';

const message = {
  open: (pouch: string) =>
    `The maker of ${pouch} does not say that it may lie inside a set. A pouch that lies flat or folded can’t vent and holds water.`,
  forbidden: (pouch: string) => `The maker of ${pouch} forbids it inside a set.`,
};

export const rule = defineRule({
  id: 'pouch-inside-set',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'vendor',
  why: 'A pouch between trays can’t stand on edge, so that air stays in and water stays too.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    if (set.inner === undefined) return;
    const judged = (asPacked(set, view)?.common ?? []).filter(({ parameter }) => parameter === 'packaging');
    for (const { packaging: name } of set.inner.items) {
      if (name === undefined || view.get('packaging', name.text)?.type?.text !== 'pouch') continue;
      const about = judged.find(
        ({ demandedBy, outcome, factAt }) =>
          nameIn(demandedBy) === name.text && outcome !== 'meets' && factAt !== set.double?.at,
      );
      if (about === undefined) continue;
      const isForbidden = about.outcome === 'fails';
      report({
        at: name.at,
        message: isForbidden ? message.forbidden(name.text) : message.open(name.text),
        ...evidenceOfAll([about], view),
        ...(isForbidden && { severity: 'error' as const }),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/knives.ifu.yaml
kind: set
id: knives
members: [{device: hook, qty: 2}]
packaging: wrap
inner: [{packaging: paper-pouch, items: [scalpel-handle]}]
                    ^^^^^^^^^^^ The maker of paper-pouch does not say that it may lie inside a set. A pouch that lies flat or folded can’t vent and holds water.
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
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/paper-pouch.ifu.yaml
kind: packaging
id: paper-pouch
type: pouch
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/small-parts.ifu.yaml
kind: set
id: small-parts
members: [{device: hook, qty: 2}]
packaging: wrap
inner: [{packaging: paper-pouch, items: [springs]}]
                    ^^^^^^^^^^^ The maker of paper-pouch forbids it inside a set.
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
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/paper-pouch.ifu.yaml
kind: packaging
id: paper-pouch
type: pouch
inside_set: {use: forbidden, src: s4}
validated: [{modality: steam-prevac, context: terminal}]
statements:
  s4: {doc: PC-P4, rev: "2", page: 2, quote: "Do not place pouches inside trays."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/knives.ifu.yaml
kind: set
id: knives
members: [{device: hook, qty: 2}]
packaging: wrap
inner: [{packaging: inner-pouch, items: [scalpel-handle]}]
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
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/inner-pouch.ifu.yaml
kind: packaging
id: inner-pouch
type: pouch
inside_set: {use: allowed}
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/knives.ifu.yaml
kind: set
id: knives
members: [{device: hook, qty: 2}]
packaging: wrap
inner: [{packaging: small-wrap, items: [scalpel-handle]}]
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
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/small-wrap.ifu.yaml
kind: packaging
id: small-wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});
