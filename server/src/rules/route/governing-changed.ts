import type { LibraryView } from '../../library/view.ts';
import type { Card } from '../../model/entities/set.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { SterilizationFit } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';
import { demandInWords } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import type { CycleField } from '../support/set-demands.ts';
import { cycleFields, demandsOn, fieldTitles } from '../support/set-demands.ts';
import { shown } from '../support/shown.ts';

const message = {
  changed: (what: string, printed: string, now: string) =>
    `The printed card gives ${what} ${printed}, but ${now} governs now. The bench must be told, and the card printed again.`,
  now: (words: string, who: string) => `${words} (${who})`,
};

export const rule = defineRule({
  id: 'governing-changed',
  stage: 'route',
  severity: 'warning',
  settledBy: 'educator',
  why: 'When the value that governs a set changes and the card does not, the bench works by the old one.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const { card } = set;
    const fit = card === undefined ? undefined : view.ask(routeOfSet, set.id?.text ?? '')?.chosen;
    if (card === undefined || fit === undefined) return;
    for (const field of cycleFields) {
      const changed = changedIn(field, card, fit, view);
      if (changed !== undefined) report(changed);
    }
  },
  examples: {
    bad: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 2}]
packaging: wrap
cycle: pv134-50
card: {printed: 2024-06-01, stamp: 7f3a11, cycle: pv134-50, dry: 30 min}
                                                                 ^^^^^^ The printed card gives drying 30 min, but at least 50 min (grasper) governs now. The bench must be told, and the card printed again.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: GR-1, rev: F, page: 12, quote: "134 °C, at least 4 minutes, dry at least 50 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: tip, qty: 2}]
packaging: wrap
card:
  printed: 2024-06-01
  exposure: 18 min
            ^^^^^^ The printed card gives exposure 18 min, but between 3 min and 8 min (tip) governs now. The bench must be told, and the card printed again.
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 8 min]}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 2}]
packaging: wrap
cycle: pv134-50
card: {printed: 2024-06-01, cycle: pv134-50, dry: 50 min, exposure: 4 min, temp: 134 C}
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
kind: set
id: not-derived
members: [{text: old retractor}]
card: {printed: 2024-06-01, dry: 5 min}
`,
    ],
  },
});

/** What the card prints against everything that the chosen route must satisfy. */
function changedIn(field: CycleField, card: Card, fit: SterilizationFit, view: LibraryView): Report | undefined {
  const printed = card[field];
  if (printed === undefined || printed.problem !== undefined) return undefined;
  const broken = demandsOn(field, fit, view).filter(
    ({ demand }) => printed.value < demand.low || printed.value > demand.high,
  );
  if (broken.length === 0) return undefined;
  const now = broken.map(({ who, requirement }) =>
    message.now(demandInWords(requirement), who.slice(who.indexOf('/') + 1)),
  );
  return {
    at: printed.at,
    message: message.changed(fieldTitles[field], shown(printed), listed(now)),
    says: quotesOf(broken.map(({ by, src }) => sayingsOf(by, src))),
    related: broken.map(({ requirement, who }) => ({ at: requirement.at, note: `what ${who} demands` })),
  };
}
