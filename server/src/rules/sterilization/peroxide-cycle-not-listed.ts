import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { whoAsks } from '../support/failures.ts';
import { insteadOf, isAbout, membersEvidence, membersWith } from '../support/use-reports.ts';

const message = {
  unlisted: (cycle: string, who: string, instead: string) =>
    `The instruction does not list ${cycle} for ${who}. Another cycle of the same machine is another instruction.${instead}`,
};

export const rule = defineRule({
  id: 'peroxide-cycle-not-listed',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'Peroxide goes by the name of the machine and of its cycle; a stronger cycle does not include a weaker one.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const use of cycleUses(entity, view)) {
      const failures = membersWith('fails', use, isAbout('peroxide-cycle'));
      if (failures.length === 0) continue;
      report({
        at: use.name.at,
        message: message.unlisted(use.name.text, whoAsks(failures), insteadOf(use, view)),
        ...membersEvidence(use, failures),
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
packaging: pouch
cycle: "P9:lumen"
       ^^^^^^^^^^ The instruction does not list P9:lumen for "camera-head" (P9:surface). Another cycle of the same machine is another instruction.
=== devices/camera-head.ifu.yaml
kind: device
id: camera-head
manual: {use: required}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle SURFACE."}
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
  - {id: "P9:lumen", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
      `
=== procedures/optics.ifu.yaml
kind: procedure
id: optics
applies_to: [optic, light-cable]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:surface"}]
                                                       ^^^^^^^^^^^^ The instruction does not list P9:surface for "light-cable" (Q3:standard). Another cycle of the same machine is another instruction.
=== devices/optic.ifu.yaml
kind: device
id: optic
manual: {use: required}
sterilization:
  any_of:
    - {id: hp, modality: vh2o2, context: terminal, listed: ["P9:surface", "P9:lumen"], src: s1}
statements:
  s1: {doc: OP-2, rev: A, page: 2, quote: "P9: SURFACE or LUMEN."}
=== devices/light-cable.ifu.yaml
kind: device
id: light-cable
manual: {use: required}
sterilization:
  any_of:
    - {id: hp, modality: vh2o2, context: terminal, listed: ["Q3:standard"], src: s1}
statements:
  s1: {doc: LC-4, rev: A, page: 2, quote: "Q3 only: STANDARD."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
    good: [
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
members: [{device: camera-head, qty: 1}]
packaging: pouch
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
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
      `
=== procedures/optics.ifu.yaml
kind: procedure
id: optics
applies_to: [optic]
steps: [{stage: low-temperature, do: sterilize, cycle: "P9:1"}]
=== devices/optic.ifu.yaml
kind: device
id: optic
manual: {use: required}
sterilization:
  any_of:
    - {id: hp, modality: vh2o2, context: terminal, listed: ["Peroxa Nine: SURFACE"], src: s1}
statements:
  s1: {doc: OP-2, rev: A, page: 2, quote: "Peroxa Nine: SURFACE."}
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
name: Peroxa Nine
cycles:
  - {id: "P9:1", name_on_screen: SURFACE, modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
  },
});
