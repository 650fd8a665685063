import { sayingsOf } from '../../model/saying.ts';
import { routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';
import { demandInWords } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import type { CycleDemand } from '../support/set-demands.ts';
import { cycleFields, demandsOn, fieldTitles, numberOf } from '../support/set-demands.ts';
import { shown } from '../support/shown.ts';

const message = {
  picked: (what: string, given: string, strictest: string, above: string) =>
    `The ${what} of this cycle (${given}) is the strictest that any member asks for (${strictest}), but too much for ${above}. Limits with two ends are intersected; the strictest one does not win.`,
  who: ({ who, requirement }: CycleDemand) => `${who.slice(who.indexOf('/') + 1)}: ${demandInWords(requirement)}`,
};

export const rule = defineRule({
  id: 'strictest-picked-not-intersected',
  stage: 'route',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Taking the longest time that anyone asks for breaks the instruction of every item that has an upper limit.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const { cycle } = set;
    const fit = cycle === undefined ? undefined : view.ask(routeOfSet, set.id?.text ?? '')?.asPacked;
    if (cycle === undefined || fit === undefined || fit.cycle !== cycle.text) return;
    const machineCycle = view.sterilizerCycle(cycle.text)?.cycle;
    for (const field of cycleFields) {
      const given = numberOf(machineCycle, field);
      if (given === undefined) continue;
      const demands = demandsOn(field, fit, view);
      const above = demands.filter(({ demand }) => given.value > demand.high && hasRange(demand));
      const strictest = demands.filter(({ demand }) => demand.low === given.value && given.value <= demand.high);
      if (above.length === 0 || strictest.length === 0) continue;
      const words = (those: readonly CycleDemand[]) => listed(those.map(message.who));
      report({
        at: cycle.at,
        message: message.picked(fieldTitles[field], shown(given), words(strictest), words(above)),
        says: quotesOf(above.map(({ by, src }) => sayingsOf(by, src))),
        related: [...above, ...strictest].map(({ requirement, who }) => ({
          at: requirement.at,
          note: `what ${who} asks for`,
        })),
      });
      return;
    }
  },
  examples: {
    bad: [
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
members: [{device: tip, qty: 2}, {device: rongeur, qty: 1}]
packaging: wrap
cycle: pv134-18
       ^^^^^^^^ The exposure of this cycle (18 min) is the strictest that any member asks for (rongeur: at least 18 min), but too much for tip: between 3 min and 5 min. Limits with two ends are intersected; the strictest one does not win.
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 5 min]}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, 3 to 5 minutes, dry at least 20 minutes, wrapped."}
=== devices/rongeur.ifu.yaml
kind: device
id: rongeur
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 18 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-18, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 18 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/optics.ifu.yaml
kind: set
id: optics
members: [{device: sheath, qty: 2}]
packaging: deep-box
cycle: pv134-45
       ^^^^^^^^ The drying of this cycle (45 min) is the strictest that any member asks for (deep-box: at least 45 min), but too much for sheath: between 20 min and 30 min. Limits with two ends are intersected; the strictest one does not win.
=== devices/sheath.ifu.yaml
kind: device
id: sheath
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 3 min}, dry: {between: [20 min, 30 min]}, packaging: {relation: requires_class, allowed: [rigid-container]}, src: s1}
statements:
  s1: {doc: SH-1, rev: A, page: 2, quote: "134 °C, at least 3 minutes, dry 20 to 30 minutes, in a container cleared for it."}
=== packaging/deep-box.ifu.yaml
kind: packaging
id: deep-box
type: rigid-container
dry: {at_least: 45 min}
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-45, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 3 min, dry: 45 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
members: [{device: tip, qty: 2}, {device: hook, qty: 1}]
packaging: wrap
cycle: pv134-4
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 5 min]}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 1}]
packaging: wrap
=== devices/hook.ifu.yaml
kind: device
id: hook
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
`,
    ],
  },
});

/** A bare number is one value by nobody's word: whether more of it is too much is another finding. */
function hasRange({ low, high }: { readonly low: number; readonly high: number }): boolean {
  return low !== high;
}
