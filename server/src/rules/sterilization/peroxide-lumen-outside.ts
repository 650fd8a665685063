import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { whoAsks } from '../support/failures.ts';
import { doesOf, evidenceOfAll, insteadOf, membersWith } from '../support/use-reports.ts';

const message = {
  outside: (cycle: string, what: string, who: string, instead: string) =>
    `Channels lie outside what ${cycle} covers. ${what} Outside: ${who}.${instead}`,
};

export const rule = defineRule({
  id: 'peroxide-lumen-outside',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'The vapour does not reach the middle of a channel that is too narrow or too long for the cycle.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith(
        'fails',
        use,
        ({ parameter, demandedBy }) => parameter === 'lumen' && demandedBy.startsWith('sterilizer/'),
      );
      const [first] = failures;
      if (first === undefined) continue;
      report({
        at: use.name.at,
        message: message.outside(use.name.text, first.judgement.reason, whoAsks(failures), insteadOf(use, view)),
        does: doesOf(use, first.judgement.given),
        ...evidenceOfAll(
          failures.map(({ judgement }) => judgement),
          view,
        ),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/optics.ifu.yaml
kind: set
id: optics
members: [{device: sheath, qty: 1}]
packaging: pouch
cycle: "P9:lumen"
       ^^^^^^^^^^ Channels lie outside what P9:lumen covers. Bore of bore of sheath: narrower or shorter than what was covered. Outside: "sheath" (at least 1 mm).
=== devices/sheath.ifu.yaml
kind: device
id: sheath
lumens: [{id: bore, bore: 0.8 mm, length: 250 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: lumen, modality: vh2o2, context: terminal, listed: ["P9:lumen"], src: s1}
statements:
  s1: {doc: SH-4, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle LUMEN."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
cellulosic: false
validated: [{modality: vh2o2, context: terminal}]
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, lumens: {bore: {at_least: 1.0 mm}, length: {at_most: 300 mm}}, qualified: 2025-01-22}
`,
      `
=== procedures/optics.ifu.yaml
kind: procedure
id: optics
applies_to: [long-sheath]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:lumen"}]
                                                       ^^^^^^^^^^ Channels lie outside what P9:lumen covers. Length of bore of long-sheath: longer, wider or more than what was covered. Outside: "long-sheath" (at most 400 mm).
=== devices/long-sheath.ifu.yaml
kind: device
id: long-sheath
lumens: [{id: bore, bore: 2.0 mm, length: 420 mm, ends: open-both, material: stainless}]
manual: {use: required}
sterilization:
  any_of:
    - {id: lumen, modality: vh2o2, context: terminal, listed: ["P9:lumen"], src: s1}
statements:
  s1: {doc: SH-5, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle LUMEN."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, lumens: {by_material: [{material: stainless, bore: {at_least: 1.0 mm}, length: {at_most: 400 mm}}]}, qualified: 2025-01-22}
`,
    ],
    good: [
      `
=== sets/optics.ifu.yaml
kind: set
id: optics
members: [{device: sheath, qty: 1}]
packaging: pouch
cycle: "P9:lumen"
=== devices/sheath.ifu.yaml
kind: device
id: sheath
lumens: [{id: bore, bore: 1.2 mm, length: 250 mm, ends: open-both}]
manual: {use: required}
sterilization:
  any_of:
    - {id: lumen, modality: vh2o2, context: terminal, listed: ["P9:lumen"], src: s1}
statements:
  s1: {doc: SH-4, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle LUMEN."}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
cellulosic: false
validated: [{modality: vh2o2, context: terminal}]
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, lumens: {bore: {at_least: 1.0 mm}, length: {at_most: 300 mm}}, qualified: 2025-01-22}
`,
      `
=== procedures/camera.ifu.yaml
kind: procedure
id: camera
applies_to: [camera-head]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:surface"}]
=== devices/camera-head.ifu.yaml
kind: device
id: camera-head
manual: {use: required}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle SURFACE."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
  },
});
