import type { Member } from '../../model/entities/set.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import type { MemberUse } from '../support/cycle-uses.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';

const message = {
  untold: (device: string, what: string) => `"${device}" must be packed like this: ${what}. The card does not say so.`,
};

export const rule = defineRule({
  id: 'configuration-not-instructed',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A closed ratchet shields its own serrations, and whoever packs sees only the card.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const members = asPacked(set, view)?.members ?? [];
    for (const line of set.members?.items ?? []) {
      const member = members.find(({ device }) => rootOfEntity(device).id === line.device?.text);
      if (member === undefined || line.device === undefined) continue;
      const untold = wantedBy(member).filter(({ what }) => !isTold(what, line));
      if (untold.length === 0) continue;
      report({
        at: line.device.at,
        message: message.untold(line.device.text, listed([...new Set(untold.map(({ what }) => what))])),
        says: quotesOf(untold.map(({ src }) => sayingsOf(member.device, src))),
        related: untold.map(({ at }) => ({ at, note: 'what the instruction asks for' })),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4, instructions: []}]
                   ^^^^^^^ "forceps" must be packed like this: jaws-open. The card does not say so.
packaging: wrap
cycle: pv132-4-20
=== devices/forceps.ifu.yaml
kind: device
id: forceps
configuration: [{what: jaws-open, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped, jaws open."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
`,
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: cannula, qty: 2, instructions: [stopcock open]}]
                   ^^^^^^^ "cannula" must be packed like this: trocar-apart. The card does not say so.
packaging: wrap
cycle: pv132-4-20
=== devices/cannula.ifu.yaml
kind: device
id: cannula
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap], configuration: [{what: stopcock-open}, {what: trocar-apart}]}, src: s1}
statements:
  s1: {doc: CA-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped, stopcock open, trocar apart."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4, instructions: [jaws open]}]
packaging: wrap
cycle: pv132-4-20
=== devices/forceps.ifu.yaml
kind: device
id: forceps
configuration: [{what: jaws-open, src: s1}]
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped, jaws open."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
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

interface Wanted {
  readonly what: string;
  readonly at: Place;
  readonly src: Citation | undefined;
}

/** How the page wants the item to lie, in any packaging and in the option that is used. */
function wantedBy({ device, option }: MemberUse): readonly Wanted[] {
  const places = [
    { list: device.configuration, src: undefined },
    { list: device.packaging?.configuration, src: device.packaging?.src },
    { list: option?.configuration, src: option?.src },
    { list: option?.packaging?.configuration, src: option?.packaging?.src ?? option?.src },
  ];
  const wanted: Wanted[] = [];
  for (const { list, src } of places) {
    for (const { what, when, at, src: own } of list?.items ?? [])
      if (what !== undefined && when === undefined) wanted.push({ what: what.text, at, src: own ?? src });
  }
  return wanted;
}

function isTold(what: string, { instructions }: Member): boolean {
  return instructions?.items.some(({ text }) => tidy(text) === tidy(what)) === true;
}

function tidy(words: string): string {
  return words.toLowerCase().replaceAll('-', ' ').trim();
}
