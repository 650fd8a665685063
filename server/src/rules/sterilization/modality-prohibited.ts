import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { named } from '../support/failures.ts';
import { insteadOf, isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  forbidden: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} is ${given}, which the instruction of ${who} forbids. No other document lifts that.${instead}`,
};

export const rule = defineRule({
  id: 'modality-prohibited',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'A prohibition stays, whatever other papers offer.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith('fails', use, isAbout('prohibition'));
      const [first] = failures;
      if (first === undefined) continue;
      const who = named(failures.map(({ device }) => device));
      report({
        at: use.name.at,
        message: message.forbidden(use.name.text, first.judgement.given, who, insteadOf(use, view)),
        ...membersEvidence(use, failures),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members: [{device: camera, qty: 1}, {device: hook, qty: 2}]
packaging: wrap
cycle: pv132-4-30
       ^^^^^^^^^^ pv132-4-30 is steam-prevac, which the instruction of "camera" forbids. No other document lifts that.
=== devices/camera.ifu.yaml
kind: device
id: camera
not: [{what: steam, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour only. Do not use steam."}
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, wrapped."}
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
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 3}]
packaging: wrap
cycle: gr121-30-30
       ^^^^^^^^^^^ gr121-30-30 is steam-gravity, which the instruction of "tube" forbids. No other document lifts that.
=== devices/tube.ifu.yaml
kind: device
id: tube
not: [{what: steam-gravity, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: QM-31, rev: A, page: 2, quote: "Do not use gravity displacement for tubes made since 2019."}
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
    good: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 3}]
packaging: wrap
cycle: pv132-4-30
=== devices/tube.ifu.yaml
kind: device
id: tube
not: [{what: steam-gravity, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: QM-31, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped. Do not use gravity displacement."}
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
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:surface"}]
=== devices/camera.ifu.yaml
kind: device
id: camera
not: [{what: steam, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour only. Do not use steam."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
  },
});
