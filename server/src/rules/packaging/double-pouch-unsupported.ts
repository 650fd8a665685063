import { demanderCalled } from '../../library/called.ts';
import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { evidenceOfAll } from '../support/use-reports.ts';

const message = {
  open: (pouch: string) =>
    `The set is packed twice, and the maker of ${pouch} does not say that it may be. The way in leads through both layers.`,
  forbidden: (pouch: string) => `The set is packed twice, and the maker of ${pouch} forbids it.`,
};

export const rule = defineRule({
  id: 'double-pouch-unsupported',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'vendor',
  why: 'What goes in must pass porous side after porous side, and only the maker has tried that.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    const { double } = set;
    if (double?.on !== true) return;
    const about = (asPacked(set, view)?.common ?? []).find(
      ({ parameter, factAt }) => parameter === 'packaging' && factAt === double.at,
    );
    if (about === undefined) return;
    const pouch = demanderCalled(about.demandedBy, view);
    const isForbidden = about.outcome === 'fails';
    report({
      at: double.at,
      message: isForbidden ? message.forbidden(pouch) : message.open(pouch),
      ...evidenceOfAll([about], view),
      ...(isForbidden && { severity: 'error' as const }),
    });
  },
  examples: {
    bad: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: pouch
double: true
        ^^^^ The set is packed twice, and the maker of pouch does not say that it may be. The way in leads through both layers.
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
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
double: {silent: true, checked: 2025-02-24}
validated: [{modality: steam-prevac, context: terminal}]
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
members: [{device: hook, qty: 2}]
packaging: pouch
double: true
        ^^^^ The set is packed twice, and the maker of pouch forbids it.
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
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
double: {use: forbidden, src: s3}
validated: [{modality: steam-prevac, context: terminal}]
statements:
  s3: {doc: PC-P6, rev: "1", page: 2, quote: "Do not put one pouch into another."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: pouch
double: true
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
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
double: {use: allowed, src: s3}
validated: [{modality: steam-prevac, context: terminal}]
statements:
  s3: {doc: PC-P6, rev: "1", page: 2, quote: "Pouches may be used in pairs, paper to paper."}
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
members: [{device: hook, qty: 2}]
packaging: pouch
double: false
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
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
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
