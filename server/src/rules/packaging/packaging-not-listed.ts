import { called } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { isAbout, isAskedByRoute, membersWith } from '../support/use-reports.ts';

const message = {
  outside: (given: string, who: string) => `The set is packed in ${given}. That is not what is asked for by ${who}.`,
  open: (given: string, who: string) =>
    `The set is packed in ${given}. Whether that is accepted is for the maker to say: ${who}.`,
};

export const rule = defineRule({
  id: 'packaging-not-listed',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'Air removal and drying were shown in the packaging that the page names.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    const { packaging } = set;
    const use = asPacked(set, view);
    if (packaging === undefined || use === undefined || !view.exists('packaging', packaging.text)) return;
    const outside = membersWith('fails', use, isAbout('packaging'));
    const open = membersWith('needs-answer', use, (one) => isAbout('packaging')(one) && !isAskedByRoute(one, use));
    if (outside.length > 0) report(reportOf(packaging.at, packed(set, view), outside, message.outside));
    else if (open.length > 0)
      report({
        ...reportOf(packaging.at, packed(set, view), open, message.open),
        severity: 'warning',
        settledBy: 'manufacturer',
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
           ^^^^^ The set is packed in pouch. That is not what is asked for by "hook" (only pouch in a pouch).
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: restricted_to, allowed: [double-pouch]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, in a double pouch only."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
double: {use: allowed, src: s1}
validated: [{modality: steam-prevac, context: terminal, src: s1}]
statements:
  s1: {doc: PO-1, rev: A, page: 1, quote: "For pre-vacuum steam. One pouch may be put in another."}
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
packaging: container
           ^^^^^^^^^ The set is packed in container. That is not what is asked for by "hook" (only two layers of wrap).
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: restricted_to, allowed: [double-wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, in a double wrap only."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
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
packaging: container
           ^^^^^^^^^ The set is packed in container. Whether that is accepted is for the maker to say: "hook" (tested with two layers of wrap).
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: validated_with, allowed: [double-wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, validated using a double wrap."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal}]
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
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: restricted_to, allowed: [double-pouch]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, in a double pouch only."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
double: {use: allowed, src: s1}
validated: [{modality: steam-prevac, context: terminal, src: s1}]
statements:
  s1: {doc: PO-1, rev: A, page: 1, quote: "For pre-vacuum steam. One pouch may be put in another."}
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
packaging: wrap
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: restricted_to, allowed: [double-wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, in a double wrap only."}
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
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: container
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
traits: [hinged]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: validated_with, allowed: [double-wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, validated using a double wrap."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
covers_classes: [hinged]
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

/** `Kestrelow container in Skerrow bracket case`. */
function packed({ packaging, case: box }: EntityOf['set'], view: LibraryView): string {
  const all = [packaging, box].flatMap((one) => (one === undefined ? [] : [called('packaging', one.text, view)]));
  return all.join(' in ');
}

function reportOf(at: Place, given: string, failures: readonly Failure[], words: typeof message.outside) {
  return { at, message: words(given, whoAsks(failures)), ...evidenceOf(failures) };
}
