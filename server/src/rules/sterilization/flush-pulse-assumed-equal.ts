import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { whoAsks } from '../support/failures.ts';
import { insteadOf, isAskedByRoute, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  assumed: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} is ${given}. Both ways remove air actively, but whether the maker tested this one is for the maker to say: ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'flush-pulse-assumed-equal',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'Flush-pulse and pre-vacuum are alike in general, but only one of them was tested with this item.',
  source: 'practice',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith(
        'needs-answer',
        use,
        (one) => one.parameter === 'modality' && one.required !== '' && !isAskedByRoute(one, use),
      );
      const [first] = failures;
      if (first === undefined) continue;
      report({
        at: use.name.at,
        message: message.assumed(use.name.text, first.judgement.given, whoAsks(failures), insteadOf(use, view)),
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
cycle: sf132-4-30
       ^^^^^^^^^^ sf132-4-30 is steam-sfpp. Both ways remove air actively, but whether the maker tested this one is for the maker to say: "hook" (steam-prevac).
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
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-sfpp, context: terminal}]
=== sterilizers/S8.ifu.yaml
kind: sterilizer
id: S8
cycles:
  - {id: sf132-4-30, modality: steam-sfpp, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== procedures/hooks.ifu.yaml
kind: procedure
id: hooks
applies_to: [hook]
steps: [{stage: steam, do: sterilize, cycle: sf132-4-30}]
                                             ^^^^^^^^^^ sf132-4-30 is steam-sfpp. Both ways remove air actively, but whether the maker tested this one is for the maker to say: "hook" (steam-prevac).
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== sterilizers/S8.ifu.yaml
kind: sterilizer
id: S8
cycles:
  - {id: sf132-4-30, modality: steam-sfpp, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== procedures/hooks.ifu.yaml
kind: procedure
id: hooks
applies_to: [hook]
steps: [{stage: steam, do: sterilize, cycle: sf132-4-30}]
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
    - {id: sf132, modality: steam-sfpp, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum or flush-pulse steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== sterilizers/S8.ifu.yaml
kind: sterilizer
id: S8
cycles:
  - {id: sf132-4-30, modality: steam-sfpp, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-4-30
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
    ],
  },
});
