import type { EntityOf } from '../../model/entities.generated.ts';
import { gapOfSet } from '../../route/explanation.ts';
import type { Repair } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { deviceName } from '../support/device-names.ts';

const message = {
  own: (device: string, way: string) => `Only "${device}" keeps this set from a route. ${way}`,
};

export const rule = defineRule({
  id: 'member-needs-own-route',
  stage: 'route',
  severity: 'advice',
  settledBy: 'OR',
  why: 'One item that is packed on its own often frees everything else in the set.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const id = set.id?.text ?? '';
    if ((set.members?.items.length ?? 0) < 2 || view.ask(routeOfSet, id)?.status !== 'none') return;
    const [only, ...others] = (view.ask(gapOfSet, id)?.ways ?? []).filter(takesOneOut);
    // Where either of two could leave, neither alone stands in the way: the clash itself says so.
    if (only === undefined || others.length > 0) return;
    const line = lineOf(set, only.about[0] ?? '');
    if (line === undefined) return;
    const device = view.get('device', only.about[0] ?? '');
    const name = device === undefined ? (only.about[0] ?? '') : deviceName(device);
    report({ at: line.at, message: message.own(name, only.words), does: only.verified.join('; ') });
  },
  examples: {
    bad: [
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members:
  - {device: peroxide-camera, qty: 1}
     ^^^^^^ Only "peroxide-camera" keeps this set from a route. Take peroxide-camera out of the set, and process it alone in pouch on P9:surface; the rest goes in wrap on pv132.
  - {device: steam-scissors, qty: 4}
  - {device: steam-grasper, qty: 4}
packaging: wrap
=== devices/camera.ifu.yaml
kind: device
id: peroxide-camera
manual: {use: required}
sterilization:
  any_of:
    - {id: hp, modality: vh2o2, context: terminal, listed: ["P9:surface"], packaging: {relation: requires_class, allowed: [pouch]}, src: s1}
statements:
  s1: {doc: CA-8, rev: G, page: 3, quote: "Peroxide only: surface cycle of the P9."}
=== devices/scissors.ifu.yaml
kind: device
id: steam-scissors
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: SC-3, rev: A, page: 5, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== devices/grasper.ifu.yaml
kind: device
id: steam-grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: GR-3, rev: A, page: 5, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
validated: [{modality: vh2o2, context: terminal}]
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-15}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/optics.ifu.yaml
kind: set
id: optics
members:
  - {device: steam-hook, qty: 2}
  - {device: steam-probe, qty: 2}
  - {device: gravity-sheath, qty: 1}
     ^^^^^^ Only "gravity-sheath" keeps this set from a route. Take gravity-sheath out of the set, and process it alone in wrap on gr121; the rest goes in wrap on pv132.
packaging: wrap
=== devices/sheath.ifu.yaml
kind: device
id: gravity-sheath
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: SH-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes, wrapped."}
=== devices/hook.ifu.yaml
kind: device
id: steam-hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== devices/probe.ifu.yaml
kind: device
id: steam-probe
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: PR-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
  - {id: gr121, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/pair.ifu.yaml
kind: set
id: pair
members:
  - {device: steam-hook, qty: 2}
  - {device: gravity-sheath, qty: 1}
packaging: wrap
=== devices/sheath.ifu.yaml
kind: device
id: gravity-sheath
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== devices/hook.ifu.yaml
kind: device
id: steam-hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
  - {id: gr121, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: steam-hook, qty: 2}]
=== devices/hook.ifu.yaml
kind: device
id: steam-hook
manual: {use: required}
`,
    ],
  },
});

function takesOneOut({ kind, effect, about }: Repair): boolean {
  return kind === 'take-member-out' && about.length === 1 && (effect === 'route' || effect === 'provisional');
}

function lineOf(set: EntityOf['set'], device: string) {
  return set.members?.items.find((line) => line.device?.text === device);
}
