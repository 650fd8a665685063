import { called, demanderCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { CardCycle, SetRoute } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';

const message = {
  not: (cycle: string, why: string, instead: string) => `The set names "${cycle}", but ${why}${instead}`,
  fails: 'nothing derived from the instructions allows it.',
  asks: 'a question about it is still open.',
  instead: (packaging: string, cycle: string) => ` What the instructions do allow: ${packaging} on ${cycle}.`,
  open: (packaging: string, cycle: string) =>
    ` Nearest: ${packaging} on ${cycle}, once what is open there is answered.`,
};

export const rule = defineRule({
  id: 'card-cycle-not-derived',
  stage: 'route',
  severity: 'error',
  settledBy: 'educator',
  why: 'The bench follows the card, and the card contradicts the instructions in the library.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const route = view.ask(routeOfSet, set.id?.text ?? '');
    const cycle = route?.card.cycle;
    if (route === undefined || cycle === undefined || !contradicts(cycle, route)) return;
    const failing = cycle.judgements.filter(({ outcome }) => outcome === cycle.outcome);
    report({
      at: cycle.at,
      message: message.not(cycle.id, cycle.outcome === 'fails' ? message.fails : message.asks, insteadOf(route, view)),
      does: failing.map(({ reason }) => reason).join(' '),
      says: quotesOf(failing.map(({ says }) => says)),
      related: failing.map(({ demandAt, demandedBy }) => ({
        at: demandAt,
        note: `what ${demanderCalled(demandedBy, view)} demands`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-20
       ^^^^^^^^ The set names "pv132-20", but nothing derived from the instructions allows it. Nearest: wrap on pv132-30, once what is open there is answered.
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
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
  - {id: pv132-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: gr121
       ^^^^^ The set names "gr121", but nothing derived from the instructions allows it. Nearest: wrap on pv132-30, once what is open there is answered.
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
  - {id: gr121, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
  - {id: pv132-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
packaging: light-wrap
mass: 6.0 kg
cycle: pv132-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/light-wrap.ifu.yaml
kind: packaging
id: light-wrap
type: wrap
mass_max: 5.0 kg
validated: [{modality: steam-prevac, context: terminal}]
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
mass_max: 10.0 kg
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

/** Where nothing at all can be derived, that is the fault; where the only way is still open, the question is. */
function contradicts({ known, derived, outcome }: CardCycle, { status }: SetRoute): boolean {
  if (!known || derived || status === 'none') return false;
  return outcome === 'fails' || (status === 'route' && outcome === 'needs-answer');
}

function insteadOf({ chosen, status }: SetRoute, view: LibraryView): string {
  if (chosen === undefined) return '';
  const { cycle } = chosen;
  const packaging = called('packaging', chosen.packaging, view);
  return status === 'route' ? message.instead(packaging, cycle) : message.open(packaging, cycle);
}
