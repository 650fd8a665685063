import type { LibraryView } from '../../library/view.ts';
import type { PackagingStatement } from '../../model/entities/packaging-statement.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { hasTrait } from '../support/applies.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';

type Device = EntityOf['device'];
type InstrumentSet = EntityOf['set'];

const message = {
  elsewhere: (who: string, where: string) => `${who} must lie in its own case, and lies ${where}.`,
  belongs: (device: string, cases: string) => `"${device}" (${cases})`,
  in: (box: string) => `in "${box}"`,
  none: 'in none',
  foreign: (who: string, box: string) => `The maker of ${box} names what it is for, and ${who} is not among it.`,
};

export const rule = defineRule({
  id: 'named-case-only',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'The brackets of a case hold channels open and items apart; in another box nobody knows how they lie.',
  source: 'standard',
  kinds: ['set'],
  check(set, context) {
    checkMembers(set, context);
    checkContents(set, context);
  },
  examples: {
    bad: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 3}]
case: generic-basket
      ^^^^^^^^^^^^^^ "grasper" (case-SK-9) must lie in its own case, and lies in "generic-basket".
packaging: wrap
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: restricted_to, allowed: [case-SK-9, double-wrap], src: s1}, src: s1}
statements:
  s1: {doc: SK-210, rev: A, page: 2, quote: "134 °C, at least 4 minutes, dry at least 50 minutes. Sterilize only in the bracket case, double wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/case.ifu.yaml
kind: packaging
id: case-SK-9
type: case
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 3}, {device: hook, qty: 1}]
case: case-SK-9
      ^^^^^^^^^ The maker of case-SK-9 names what it is for, and "hook" is not among it.
packaging: wrap
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: restricted_to, allowed: [case-SK-9], src: s1}, src: s1}
statements:
  s1: {doc: SK-210, rev: A, page: 2, quote: "134 °C, at least 4 minutes, dry at least 50 minutes. Sterilize only in the bracket case."}
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "134 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/case.ifu.yaml
kind: packaging
id: case-SK-9
type: case
covers_classes: [grasper]
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members: [{device: grasper, qty: 3}]
case: case-SK-9
packaging: wrap
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: restricted_to, allowed: [case-SK-9, double-wrap], src: s1}, src: s1}
statements:
  s1: {doc: SK-210, rev: A, page: 2, quote: "134 °C, at least 4 minutes, dry at least 50 minutes. Sterilize only in the bracket case, double wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== packaging/case.ifu.yaml
kind: packaging
id: case-SK-9
type: case
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
case: generic-basket
packaging: wrap
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: restricted_to, allowed: [double-wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, in a double wrap only."}
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

interface Homeless {
  readonly device: Device;
  readonly cases: readonly string[];
  readonly at: Place;
  readonly src: Citation | undefined;
}

/** Members that belong in a case of their own and lie in another, or in none. */
function checkMembers(set: InstrumentSet, { view, report }: RuleContext): void {
  const homeless: Homeless[] = [];
  for (const { device, option } of asPacked(set, view)?.members ?? []) {
    const { src } = option ?? {};
    for (const statement of [option?.packaging, device.packaging]) {
      const cases = statement === undefined ? [] : casesNamed(statement, view);
      if (statement === undefined || cases.length === 0 || isIn(set, cases)) continue;
      homeless.push({ device, cases, at: statement.at, src: statement.src ?? src });
    }
  }
  if (homeless.length === 0) return;
  const who = listed(homeless.map(({ device, cases }) => message.belongs(deviceName(device), listed(cases))));
  report({
    at: (set.case ?? set.packaging ?? set.id ?? set).at,
    message: message.elsewhere(who, set.case === undefined ? message.none : message.in(set.case.text)),
    says: quotesOf(homeless.map(({ device, src }) => sayingsOf(device, src))),
    related: homeless.map(({ device, at }) => ({
      at,
      note: `what the instruction of "${deviceName(device)}" asks for`,
    })),
  });
}

/** Cases to which a page restricts its item, be there further packaging around them. */
function casesNamed({ relation, allowed, when }: PackagingStatement, view: LibraryView): readonly string[] {
  if (relation?.text !== 'restricted_to' || when !== undefined) return [];
  const words = allowed?.items.map(({ text }) => text) ?? [];
  return words.filter((word) => {
    const device = view.get('device', word);
    return (
      view.get('packaging', word)?.type?.text === 'case' ||
      (device !== undefined && hasTrait(device, 'instrument-case'))
    );
  });
}

function isIn({ case: box, packaging }: InstrumentSet, cases: readonly string[]): boolean {
  return [box?.text, packaging?.text].some((name) => name !== undefined && cases.includes(name));
}

/** A case whose maker names the items it is for, with others in it. */
function checkContents(set: InstrumentSet, { view, report }: RuleContext): void {
  const box = set.case === undefined ? undefined : view.get('packaging', set.case.text);
  const isFor = (box?.covers_classes?.items ?? []).filter(({ text }) => view.exists('device', text));
  if (set.case === undefined || box === undefined || isFor.length === 0) return;
  const foreign = (asPacked(set, view)?.members ?? []).flatMap(({ device }) =>
    isFor.some(({ text }) => text === rootOfEntity(device).id) ? [] : [device],
  );
  if (foreign.length === 0) return;
  report({
    at: set.case.at,
    message: message.foreign(named(foreign), set.case.text),
    says: sayingsOf(box, box.src),
    related: [{ at: box.covers_classes?.at ?? box.at, note: 'what the case is for' }],
  });
}
