import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { gapOfDevice, gapOfSet, type RouteGap } from '../../route/explanation.ts';
import { routeOfDeviceSomewhere, routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { clashReport } from '../support/clash-report.ts';
import { undescribedIn } from '../support/department.ts';

export const rule = defineRule({
  id: 'set-route-none',
  stage: 'route',
  severity: 'error',
  settledBy: 'manager',
  why: 'As it is built, the set cannot be processed as instructed with what the department has.',
  source: 'logic',
  kinds: ['set', 'device'],
  check(entity: AnyEntity, { view, report }) {
    const gap = withoutRoute(entity, view);
    if (gap === undefined) return;
    report({ at: causeIn(entity, gap) ?? gap.route.at, ...clashReport(gap) });
  },
  examples: {
    bad: [
      `
=== sets/ortho-legacy.ifu.yaml
kind: set
id: ortho-legacy
    ^^^^^^^^^^^^ No packaging and cycle here processes ortho-legacy as built. (1) prevac-only-tube: forbids it (no gravity steam) (TU-31, rev E, p. 5). (2) gravity-only-clamp: offers only gravity steam (CL-9, rev A, p. 2). With any one of these gone, a route appears as far as this goes. A way out: Take gravity-only-clamp out of the set, and process it alone in wrap on gr121; the rest goes in wrap on pv132 (department with the surgeon, same day). 1 more way on the page of its route.
members: [{device: gravity-only-clamp}, {device: prevac-only-tube}]
packaging: wrap
=== devices/clamp.ifu.yaml
kind: device
id: gravity-only-clamp
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: CL-9, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes, wrapped."}
=== devices/tube.ifu.yaml
kind: device
id: prevac-only-tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
not: [{what: steam-gravity, src: s2}]
statements:
  s1: {doc: TU-31, rev: E, page: 5, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
  s2: {doc: TU-31, rev: E, page: 5, quote: "Do not use gravity steam."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated:
  - {modality: steam-prevac, context: terminal}
  - {modality: steam-gravity, context: terminal}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
  - {id: gr121, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== devices/probe.ifu.yaml
kind: device
id: pressure-probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, src: s1}
                           ^^ No packaging and cycle here processes pressure-probe as built. (1) pressure-probe: offers only ethylene oxide (PP-4, rev B, p. 6). Without this, a route appears as far as this goes. A way out: Have pressure-probe processed elsewhere, or obtain equipment that its page asks for (purchasing committee, months). 1 more way on the page of its route.
statements:
  s1: {doc: PP-4, rev: B, page: 6, quote: "Ethylene oxide: 55 °C, 60 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== devices/probe.ifu.yaml
kind: device
id: cold-probe
manual: {use: required}
sterilization:
  any_of:
    - {id: eo55, modality: eo, context: terminal, temp: {stated: 55 C}, exposure: {stated: 60 min}, src: s1}
not: [{what: steam, src: s2}, {what: vh2o2, src: s3}]
             ^^^^^ No packaging and cycle here processes cold-probe as built. (1) cold-probe: forbids it (no steam) (PP-5, rev A, p. 7). (2) cold-probe: forbids it (no vaporised hydrogen peroxide) (PP-5, rev A, p. 7). With any one of these gone, a route appears as far as this goes. Also in the way: (1) cold-probe: offers only ethylene oxide (PP-5, rev A, p. 6). Without this, a route appears as far as this goes. A way out: Have cold-probe processed elsewhere, or obtain equipment that its page asks for (purchasing committee, months). 1 more way on the page of its route.
statements:
  s1: {doc: PP-5, rev: A, page: 6, quote: "Ethylene oxide: 55 °C, 60 minutes."}
  s2: {doc: PP-5, rev: A, page: 7, quote: "Do not use steam."}
  s3: {doc: PP-5, rev: A, page: 7, quote: "Do not use hydrogen peroxide."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== sterilizers/S8.ifu.yaml
kind: sterilizer
id: S8
cycles:
  - {id: surface, modality: vh2o2, context: terminal, qualified: 2025-01-15}
`,
      `
=== devices/clamp.ifu.yaml
kind: device
id: rinsed-clamp
cleaning: {all_of: [{id: machine, stage: mechanical, phases: [neutralise], src: s1}]}
                                                              ^^^^^^^^^^ No way of cleaning here meets the page of rinsed-clamp. (1) rinsed-clamp: phase neutralise, W9-std: the page asks for a phase that the cycle does not have; the whole sequence is the instruction (CL-12, rev A, p. 2). Without this, a route appears as far as this goes. A way out: Have rinsed-clamp processed elsewhere, or obtain equipment that its page asks for (purchasing committee, months). 1 more way on the page of its route.
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s2}
statements:
  s1: {doc: CL-12, rev: A, page: 2, quote: "Washer: neutralise after the wash."}
  s2: {doc: CL-12, rev: A, page: 3, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== washers/W9.ifu.yaml
kind: washer
id: W9
cycles:
  - {id: W9-std, last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: prevac-tube, qty: 3}]
packaging: wrap
cycle: pv132
=== devices/tube.ifu.yaml
kind: device
id: prevac-tube
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
kind: device
id: bowl
class: non-critical
manual: {use: required}
`,
    ],
  },
});

/** In a device the demand of its own page that stands in the way first. */
function causeIn(entity: AnyEntity, { clashes }: RouteGap): Place | undefined {
  if (!isOfKind(entity, 'device')) return undefined;
  const own = clashes.flatMap(({ atoms }) => atoms).find(({ at }) => rootOf(at) === rootOfEntity(entity));
  return own?.at ?? (entity.sterilization ?? entity.cleaning)?.at;
}

/** A device is judged alone where no set holds it; else the set says it. */
function withoutRoute(entity: AnyEntity, view: LibraryView): RouteGap | undefined {
  const { id } = rootOfEntity(entity);
  // Before the department is described, the library says so once (`department-not-encoded`).
  if (undescribedIn(view).length > 0) return undefined;
  if (isOfKind(entity, 'set')) {
    return view.ask(routeOfSet, id)?.status === 'none' ? view.ask(gapOfSet, id) : undefined;
  }
  const isAlone = isOfKind(entity, 'device') && view.users('device', id, 'set').length === 0;
  return isAlone && view.ask(routeOfDeviceSomewhere, id)?.status === 'none' ? view.ask(gapOfDevice, id) : undefined;
}
