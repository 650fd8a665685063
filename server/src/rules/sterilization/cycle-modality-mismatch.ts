import { defineRule } from '../rule.ts';
import type { MemberUse } from '../support/cycle-uses.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { deviceName } from '../support/device-names.ts';
import type { Failure } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { insteadOf, isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  other: (cycle: string, given: string, who: string, instead: string) =>
    `${cycle} is ${given}, and this is in no option of ${who}.${instead}`,
  offers: (device: string, methods: string) => `"${device}" (offers ${methods})`,
};

export const rule = defineRule({
  id: 'cycle-modality-mismatch',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'How air is removed is part of what the maker has shown; one method never stands in for another, in either direction.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith('fails', use, isAbout('modality')).filter(
        ({ device }) => !isProhibited(use.members, device),
      );
      const [first] = failures;
      if (first === undefined) continue;
      report({
        at: use.name.at,
        message: message.other(use.name.text, first.judgement.given, offersOf(failures), insteadOf(use, view)),
        ...membersEvidence(use, failures),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
packaging: wrap
cycle: gr121-30-30
       ^^^^^^^^^^^ gr121-30-30 is steam-gravity, and this is in no option of "tube" (offers steam-prevac).
=== devices/tube.ifu.yaml
kind: device
id: tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TU-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
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
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/bone.ifu.yaml
kind: set
id: bone
members: [{device: old-clamp, qty: 1}, {device: tube, qty: 1}]
packaging: wrap
cycle: pv132-4-30
       ^^^^^^^^^^ pv132-4-30 is steam-prevac, and this is in no option of "old-clamp" (offers steam-gravity).
=== devices/tube.ifu.yaml
kind: device
id: tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TU-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== devices/old-clamp.ifu.yaml
kind: device
id: old-clamp
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: OL-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes, wrapped."}
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
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
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
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, or gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes, wrapped."}
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
      `
=== procedures/probe.ifu.yaml
kind: procedure
id: probe
applies_to: [probe]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:surface"}]
=== devices/probe.ifu.yaml
kind: device
id: probe
manual: {use: required}
sterilization:
  any_of:
    - {id: hp, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: PR-1, rev: A, page: 2, quote: "Peroxide only: surface cycle of the P9."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
  },
});

/** What its page forbids outright is another finding, with the stronger reason. */
function isProhibited(members: readonly MemberUse[], device: Failure['device']): boolean {
  const judgements = members.find((member) => member.device === device)?.judgements ?? [];
  return judgements.some(({ parameter, outcome }) => parameter === 'prohibition' && outcome === 'fails');
}

function offersOf(failures: readonly Failure[]): string {
  return listed(
    failures.map(({ device }) => {
      const methods = device.sterilization?.any_of?.items.flatMap(({ modality }) => modality?.text ?? []) ?? [];
      return message.offers(deviceName(device), listed([...new Set(methods)]));
    }),
  );
}
