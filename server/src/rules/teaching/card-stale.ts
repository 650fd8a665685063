import type { LibraryView } from '../../library/view.ts';
import type { Card } from '../../model/entities/set.generated.ts';
import { routeOfSet } from '../../route/route.ts';
import { cardStamp } from '../../route/stamp.ts';
import { defineRule } from '../rule.ts';
import { demandInWords } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import { cycleFields, demandsOn, fieldTitles } from '../support/set-demands.ts';
import { shown } from '../support/shown.ts';

const message = {
  stale: (printed: string, now: string, day: string) =>
    `The printed card carries the stamp ${printed}${day}; what it would say now has the stamp ${now}. Print it again and take in the old copies.`,
  day: (day: string) => `, printed on ${day}`,
  copies: (places: string) => `Copies hang at: ${places}.`,
  other: (what: string, printed: string, now: string, who: string) =>
    `It prints ${what} ${printed}; ${now} is asked for now (${who}).`,
};

export const rule = defineRule({
  id: 'card-stale',
  stage: 'teaching',
  severity: 'error',
  settledBy: 'educator',
  why: 'The bench follows the paper that hangs there, not the library.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const { card } = set;
    const { stamp } = card ?? {};
    const now = stamp === undefined ? undefined : view.ask(cardStamp, set.id?.text ?? '');
    if (card === undefined || stamp === undefined || now === undefined || stamp.text.toLowerCase() === now) return;
    const day = card.printed === undefined ? '' : message.day(card.printed.text);
    const copies = card.copies?.items.map(({ text }) => text) ?? [];
    const does = [
      ...differences(set.id?.text ?? '', card, view),
      ...(copies.length > 0 ? [message.copies(listed(copies))] : []),
    ];
    report({
      at: stamp.at,
      message: message.stale(stamp.text, now, day),
      ...(does.length > 0 && { does: does.join(' ') }),
    });
  },
  examples: {
    bad: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
card: {printed: 2024-06-01, stamp: 7f3a}
                                   ^^^^ The printed card carries the stamp 7f3a, printed on 2024-06-01; what it would say now has the stamp fed7ad. Print it again and take in the old copies.
=== devices/hook.ifu.yaml
kind: device
id: hook
`,
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members:
  - {device: grasper, qty: 2}
levels: 1
card:
  stamp: 0c0ffe
         ^^^^^^ The printed card carries the stamp 0c0ffe; what it would say now has the stamp 5424e2. Print it again and take in the old copies.
  dry: 30 min
  copies: [packing table 2, office]
=== devices/grasper.ifu.yaml
kind: device
id: grasper
`,
    ],
    good: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members: [{device: hook, qty: 2}]
card: {printed: 2024-06-01, stamp: fed7ad}
=== devices/hook.ifu.yaml
kind: device
id: hook
`,
      `
kind: set
id: minor
members: [{text: old hook}]
card: {printed: 2024-06-01}
`,
    ],
  },
});

/** Numbers on the card that no longer do: what the bench must hear first. */
function differences(id: string, card: Card, view: LibraryView): readonly string[] {
  const route = view.ask(routeOfSet, id);
  const fit = route?.chosen ?? route?.asPacked;
  if (fit === undefined) return [];
  return cycleFields.flatMap((field) => {
    const printed = card[field];
    if (printed === undefined || printed.problem !== undefined) return [];
    const broken = demandsOn(field, fit, view).find(
      ({ demand }) => printed.value < demand.low || printed.value > demand.high,
    );
    return broken === undefined
      ? []
      : [message.other(fieldTitles[field], shown(printed), demandInWords(broken.requirement), broken.who)];
  });
}
