import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { whoAsks } from '../support/failures.ts';
import { insteadOf, isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  short: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} dries for ${given}. That is too short for ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'cycle-dry-short',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'The item that needs the longest drying sets the drying of the whole set.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith('fails', use, isAbout('steam-dry'));
      const [first] = failures;
      if (first === undefined) continue;
      report({
        at: use.name.at,
        message: message.short(use.name.text, first.judgement.given, whoAsks(failures), insteadOf(use, view)),
        ...membersEvidence(use, failures),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 2}]
packaging: wrap
cycle: pv134-4-30
       ^^^^^^^^^^ pv134-4-30 dries for 30 min. That is too short for "grasper" (at least 50 min).
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: GR-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 50 minutes, wrapped."}
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
=== procedures/tubes.ifu.yaml
kind: procedure
id: tubes
applies_to: [tube, hook]
steps: [{stage: steam, do: sterilize, cycle: pv132-4-20}]
                                             ^^^^^^^^^^ pv132-4-20 dries for 20 min. That is too short for "hook" (30 min (no bound word)).
=== devices/tube.ifu.yaml
kind: device
id: tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, src: s1}
statements:
  s1: {doc: TU-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes."}
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {stated: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry 30 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 2}]
packaging: wrap
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: GR-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 50 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-4-20
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {silent: true, checked: 2025-02-03, ask: q4}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, wrapped."}
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
=== questions/q4.ifu.yaml
kind: question
id: q4
about: hook
`,
    ],
  },
});
