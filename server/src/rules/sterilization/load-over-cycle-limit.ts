import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { commonWith, evidenceOfAll, insteadOf, isAbout } from '../support/use-reports.ts';

const message = {
  over: (given: string, cycle: string, limit: string, instead: string) =>
    `${given} is more than ${cycle} takes (${limit}).${instead}`,
  does: (cycle: string) => `The set is run on ${cycle}.`,
};

export const rule = defineRule({
  id: 'load-over-cycle-limit',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'The load with which the cycle was shown to work is the largest that may be run.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const use of cycleUses(set, view)) {
      const [over] = commonWith('fails', use, isAbout('load'));
      if (over === undefined) continue;
      report({
        at: (set.mass ?? use.name).at,
        message: message.over(over.given, use.name.text, over.required, insteadOf(use, view)),
        does: message.does(use.name.text),
        ...evidenceOfAll([over], view),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/cameras.ifu.yaml
kind: set
id: cameras
members: [{device: camera-head, qty: 2}]
packaging: pouch
mass: 6.1 kg
      ^^^^^^ 6.1 kg is more than P9:lumen takes (at most 4.9 kg).
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
  - {id: "P9:lumen", modality: vh2o2, context: terminal, load_max: 4.9 kg, qualified: 2025-01-22}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 20}]
packaging: wrap
mass: 9.5 kg
      ^^^^^^ 9.5 kg is more than pv132-4-30 takes (at most 8 kg).
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
=== sterilizers/S7.ifu.yaml
kind: sterilizer
id: S7
chamber: {load_max: 8 kg}
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
members: [{device: camera-head, qty: 1}]
packaging: pouch
mass: 0.6 kg
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
  - {id: "P9:lumen", modality: vh2o2, context: terminal, load_max: 4.9 kg, qualified: 2025-01-22}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 20}]
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
