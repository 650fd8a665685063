import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { commonWith, doesOf, evidenceOfAll, insteadOf, isAbout, whoDemands } from '../support/use-reports.ts';

const message = {
  short: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} dries for ${given}. The packaging itself needs more, whatever lies in it: ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'container-dry-governs',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'The instructions of items and of packaging bind together, so the longer drying counts.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const use of cycleUses(set, view)) {
      const failures = commonWith('fails', use, isAbout('packaging-dry'));
      const [first] = failures;
      if (first === undefined) continue;
      const perPackaging = failures.filter(
        (one, index) => failures.findIndex(({ demandedBy }) => demandedBy === one.demandedBy) === index,
      );
      report({
        at: use.name.at,
        message: message.short(use.name.text, first.given, whoDemands(perPackaging, view), insteadOf(use, view)),
        does: doesOf(use, first.given),
        ...evidenceOfAll(failures, view),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
cycle: pv132-4-20
       ^^^^^^^^^^ pv132-4-20 dries for 20 min. The packaging itself needs more, whatever lies in it: "container" (at least 30 min).
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [rigid-container]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, in a container."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, dry: {at_least: 30 min}, src: s1}]
statements:
  s1: {doc: KL-3, rev: C, page: 11, quote: "Pre-vacuum steam only, with a dry time of at least 30 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/graspers.ifu.yaml
kind: set
id: graspers
members: [{device: grasper, qty: 2}]
packaging: wrap
case: bracket-case
cycle: pv134-4-30
       ^^^^^^^^^^ pv134-4-30 dries for 30 min. The packaging itself needs more, whatever lies in it: "bracket-case" (at least 50 min).
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, src: s1}
statements:
  s1: {doc: GR-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 20 minutes."}
=== packaging/bracket-case.ifu.yaml
kind: packaging
id: bracket-case
type: case
dry: {at_least: 50 min, src: s1}
validated: [{modality: steam-prevac, context: terminal}]
statements:
  s1: {doc: SK-CASE, rev: B, page: 2, quote: "Dry at least 50 minutes."}
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
    ],
    good: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
cycle: pv132-4-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [rigid-container]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, in a container."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, dry: {at_least: 30 min}}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: wrap
cycle: pv132-4-20
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
`,
    ],
  },
});
