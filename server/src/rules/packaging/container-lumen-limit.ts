import { called } from '../../library/called.ts';
import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { evidenceOfAll } from '../support/use-reports.ts';

const message = {
  outside: (packaging: string, which: string) => `Channels lie outside what ${packaging} was tested with. ${which}`,
  which: (reason: string, given: string, required: string) => `${reason.replace(/\.$/, '')} (${given}, ${required}).`,
};

export const rule = defineRule({
  id: 'container-lumen-limit',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'A container lets the method into the channels that its maker tested inside it, and no others.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    const use = asPacked(set, view);
    const failures = (use?.common ?? []).filter(
      ({ outcome, parameter, demandedBy }) =>
        outcome === 'fails' && parameter === 'lumen' && demandedBy.startsWith('packaging/'),
    );
    if (set.packaging === undefined || failures.length === 0) return;
    report({
      at: set.packaging.at,
      message: message.outside(
        called('packaging', set.packaging.text, view),
        failures.map(({ reason, given, required }) => message.which(reason, given, required)).join(' '),
      ),
      ...evidenceOfAll(failures, view),
    });
  },
  examples: {
    bad: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: tip, qty: 2}]
packaging: container
           ^^^^^^^^^ Channels lie outside what container was tested with. Bore of bore of tip: narrower or shorter than what was covered (0.9 mm, at least 2 mm).
cycle: pv134-4-30
=== devices/tip.ifu.yaml
kind: device
id: tip
lumens: [{id: bore, bore: 0.9 mm, length: 40 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 15 min}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 15 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal}]
lumens: {bore: {at_least: 2.0 mm}, length: {at_most: 400 mm}, src: s2}
statements:
  s2: {doc: KL-3, rev: C, page: 12, quote: "Lumens must be at least 2.0 mm wide and at most 400 mm long."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 3}]
packaging: container
           ^^^^^^^^^ Channels lie outside what container was tested with. Length of shaft of grasper: longer, wider or more than what was covered (450 mm, at most 400 mm).
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
lumens: [{id: shaft, bore: 5 mm, length: 450 mm, ends: open-both}, {id: cable, bore: 3 mm, length: 300 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, src: s1}
statements:
  s1: {doc: GR-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 50 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, lumens: {length: {at_most: 400 mm}}}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: tip, qty: 2}]
packaging: wrap
cycle: pv134-4-30
=== devices/tip.ifu.yaml
kind: device
id: tip
lumens: [{id: bore, bore: 0.9 mm, length: 40 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 15 min}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 15 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members: [{device: scissors, qty: 3}]
packaging: container
cycle: pv132-4-30
=== devices/scissors.ifu.yaml
kind: device
id: scissors
lumens: [{id: shaft, bore: 4 mm, length: 340 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: SC-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal}]
lumens: {bore: {at_least: 2.0 mm}, length: {at_most: 400 mm}}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});
