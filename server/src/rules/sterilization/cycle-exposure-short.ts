import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { whoAsks } from '../support/failures.ts';
import { insteadOf, isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  short: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} holds for ${given}. That is outside what is asked for by ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'cycle-exposure-short',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'Nobody has shown that the item is reached in less time than its instruction gives, nor that it stands more than it allows.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith('fails', use, isAbout('exposure'));
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
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-4-30
       ^^^^^^^^^^ pv132-4-30 holds for 4 min. That is outside what is asked for by "hook" (at least 10 min).
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 10 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 10 minutes, dry at least 30 minutes, wrapped."}
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
  - {id: pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/tips.ifu.yaml
kind: set
id: tips
members: [{device: tip, qty: 2}]
packaging: wrap
cycle: pv134-20-30
       ^^^^^^^^^^^ pv134-20-30 holds for 20 min. That is outside what is asked for by "tip" (3-18 min).
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 18 min]}, dry: {at_least: 15 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, 3 to 18 minutes, dry at least 15 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-20-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 20 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-10-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 10 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 10 minutes, dry at least 30 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [tip]
steps: [{stage: steam, do: sterilize, cycle: pv134-4-30}]
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 18 min]}, dry: {at_least: 15 min}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, 3 to 18 minutes, dry at least 15 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});
