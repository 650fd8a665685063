import { demanderCalled } from '../../library/called.ts';
import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { evidenceOfAll } from '../support/use-reports.ts';

const message = {
  other: (given: string, packaging: string, required: string) =>
    `"${given}" is not the part that ${packaging} takes for this kind of cycle (${required}).`,
};

export const rule = defineRule({
  id: 'container-parts-mismatch',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'Filter, valve and bottom decide whether the method gets in and water gets out.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    if (set.filter === undefined && set.valve === undefined && set.bottom === undefined) return;
    for (const judgement of asPacked(set, view)?.common ?? []) {
      const { parameter, outcome, factAt, given, demandedBy, required } = judgement;
      if (parameter !== 'filter' || outcome !== 'fails' || factAt === undefined) continue;
      report({
        at: factAt,
        message: message.other(given, demanderCalled(demandedBy, view), required),
        ...evidenceOfAll([judgement], view),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
members: [{device: camera-head, qty: 1}]
packaging: container
filter: cellulose
        ^^^^^^^^^ "cellulose" is not the part that container takes for this kind of cycle (polymer).
cycle: "P9:surface"
=== devices/camera-head.ifu.yaml
kind: device
id: camera-head
manual: {use: required}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle SURFACE."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: vh2o2, context: terminal, filter: [polymer], src: s1}]
statements:
  s1: {doc: KL-5, rev: A, page: 7, quote: "Peroxide: polymer filters."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
bottom: solid
        ^^^^^ "solid" is not the part that container takes for this kind of cycle (perforated).
cycle: gr121-30-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-gravity, context: terminal, bottom: perforated}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
bottom: perforated
filter: single-use-polymer
cycle: gr121-30-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
filter: [single-use-polymer]
validated: [{modality: steam-gravity, context: terminal, bottom: perforated}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: wrap
cycle: gr121-30-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});
