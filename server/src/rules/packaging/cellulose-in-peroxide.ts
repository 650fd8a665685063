import type { Judgement } from '../../judge/outcome.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';

const message = {
  paper: (what: string, cycle: string) =>
    `"${what}" is paper, cotton or the like. In the peroxide of ${cycle} it takes up the vapour and weakens or stops the cycle.`,
  does: (cycle: string) => `The set is run on ${cycle}.`,
};

export const rule = defineRule({
  id: 'cellulose-in-peroxide',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'Paper and cotton drink peroxide: the load gets less, or the cycle is aborted.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const use of cycleUses(set, view)) {
      const seen = new Set<Place>();
      for (const judgement of use.common) {
        const at = placeIn(set, judgement);
        if (judgement.parameter !== 'cellulose' || judgement.outcome !== 'fails' || at === undefined || seen.has(at))
          continue;
        seen.add(at);
        report({
          at,
          message: message.paper(judgement.given, use.name.text),
          does: message.does(use.name.text),
          says: judgement.says,
          related: [
            { at: use.name.at, note: 'the peroxide cycle' },
            ...(judgement.factAt === undefined || judgement.factAt === at
              ? []
              : [{ at: judgement.factAt, note: 'what it is made of' }]),
          ],
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
members: [{device: camera-head, qty: 1}]
packaging: paper-pouch
           ^^^^^^^^^^^ "paper-pouch" is paper, cotton or the like. In the peroxide of P9:lumen it takes up the vapour and weakens or stops the cycle.
contents: [paper-count-sheet]
           ^^^^^^^^^^^^^^^^^ "paper-count-sheet" is paper, cotton or the like. In the peroxide of P9:lumen it takes up the vapour and weakens or stops the cycle.
cycle: "P9:lumen"
=== devices/camera-head.ifu.yaml
kind: device
id: camera-head
manual: {use: required}
sterilization:
  any_of:
    - {id: lumen, modality: vh2o2, context: terminal, listed: ["P9:lumen"], src: s1}
statements:
  s1: {doc: CV-8, rev: A, page: 2, quote: "Hydrogen peroxide vapour: P9 sterilizer, cycle LUMEN."}
=== packaging/paper-pouch.ifu.yaml
kind: packaging
id: paper-pouch
type: pouch
cellulosic: true
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
      `
=== sets/optic.ifu.yaml
kind: set
id: optic
members: [{device: camera-head, qty: 1}]
packaging: container
filter: cellulose-filter
        ^^^^^^^^^^^^^^^^ "cellulose-filter" is paper, cotton or the like. In the peroxide of P9:surface it takes up the vapour and weakens or stops the cycle.
accessories: [cotton-towel]
              ^^^^^^^^^^^^ "cotton-towel" is paper, cotton or the like. In the peroxide of P9:surface it takes up the vapour and weakens or stops the cycle.
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
cellulosic: false
validated: [{modality: vh2o2, context: terminal}]
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
contents: [polymer-label]
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
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: paper-pouch
contents: [paper-count-sheet]
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/paper-pouch.ifu.yaml
kind: packaging
id: paper-pouch
type: pouch
cellulosic: true
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

/** The thing itself where the set names it, else the packaging that is made of it. */
function placeIn(set: EntityOf['set'], { factAt }: Judgement): Place | undefined {
  if (factAt !== undefined && rootOf(factAt) === rootOf(set.at)) return factAt;
  return set.inner?.items.find(({ packaging }) => packaging?.text === idAt(factAt))?.packaging?.at ?? set.packaging?.at;
}

function idAt(place: Place | undefined): string | undefined {
  return place === undefined ? undefined : rootOf(place).id;
}
