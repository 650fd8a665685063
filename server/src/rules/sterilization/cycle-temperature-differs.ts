import type { LibraryView } from '../../library/view.ts';
import { defineRule } from '../rule.ts';
import type { CycleUse } from '../support/cycle-uses.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import type { Failure } from '../support/failures.ts';
import { whoAsks } from '../support/failures.ts';
import { insteadOf, isAbout, isAskedByRoute, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  outside: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} runs at ${given}. That is outside what is asked for by ${who}.${instead}`,
  open: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} runs at ${given}. Whether that may stand in for the temperature on the page is for the maker to say: ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'cycle-temperature-differs',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'Another temperature is another instruction: hotter is no better version of it, and time does not buy back what is missing.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const outside = membersWith('fails', use, isTemperature);
      const open = membersWith('needs-answer', use, (one) => isTemperature(one) && !isAskedByRoute(one, use));
      if (outside[0] !== undefined) report(reportOf(use, outside, message.outside, view));
      else if (open[0] !== undefined)
        report({ ...reportOf(use, open, message.open, view), severity: 'warning', settledBy: 'manufacturer' });
    }
  },
  examples: {
    bad: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: tip, qty: 2}]
packaging: wrap
cycle: pv132-4-30
       ^^^^^^^^^^ pv132-4-30 runs at 132 °C. That is outside what is asked for by "tip" (134 °C (no bound word)).
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {stated: 4 min}, dry: {at_least: 15 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, 4 minutes, dry at least 15 minutes, wrapped."}
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
=== sets/scope.ifu.yaml
kind: set
id: scope
members: [{device: rigid-scope, qty: 1}]
packaging: wrap
cycle: pv134-4-30
       ^^^^^^^^^^ pv134-4-30 runs at 134 °C (134 °C to 137 °C). That is outside what is asked for by "rigid-scope" (at most 135 °C).
=== devices/rigid-scope.ifu.yaml
kind: device
id: rigid-scope
limits: {temp: {at_most: 135 C}}
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 15 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: RI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 15 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15, band: {minus: 0 K, plus: 3 K}}
`,
      `
=== procedures/hooks.ifu.yaml
kind: procedure
id: hooks
applies_to: [hook]
steps: [{stage: steam, do: sterilize, cycle: pv134-4-30}]
                                             ^^^^^^^^^^ pv134-4-30 runs at 134 °C. Whether that may stand in for the temperature on the page is for the maker to say: "hook" (132 °C (no bound word)).
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
packaging: wrap
cycle: pv132-4-30
=== devices/tube.ifu.yaml
kind: device
id: tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {between: [132 C, 135 C]}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TU-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C to 135 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15, band: {minus: 0 K, plus: 3 K}}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv134-4-30
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
  - {id: pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

const isTemperature = isAbout('steam-temperature', 'control-band', 'heat-limit');

function reportOf(use: CycleUse, failures: readonly Failure[], words: typeof message.outside, view: LibraryView) {
  const given = failures[0]?.judgement.given ?? '';
  return {
    at: use.name.at,
    message: words(use.name.text, given, whoAsks(failures), insteadOf(use, view)),
    ...membersEvidence(use, failures),
  };
}
