import type { LibraryView } from '../library/view.ts';
import { clashesOf } from './clash.ts';
import { departmentOf } from './equipment.ts';
import type { SetRoute, StatusChange, WhatIf } from './model.ts';
import { rankOf } from './ranks.ts';
import { statusRank } from './repair-trial.ts';
import { type Derivation, derive, deriveSet } from './route.ts';
import { subjectOfDevice } from './subject.ts';

/** What is different for every set, and for every device alone, between the library as it is and as it would be. */
export function whatIf(before: LibraryView, after: LibraryView): WhatIf {
  const sets = compared(
    idsOf(before, 'set'),
    idsOf(after, 'set'),
    (id) => ofSet(before, id),
    (id) => ofSet(after, id),
  );
  const devices = compared(
    idsOf(before, 'device'),
    idsOf(after, 'device'),
    (id) => ofDevice(before, id),
    (id) => ofDevice(after, id),
  );
  return {
    gained: sets.filter(isGain),
    lost: sets.filter(isLoss),
    devicesGained: devices.filter(isGain),
    devicesLost: devices.filter(isLoss),
    changed: [...sets, ...devices].filter((change) => !isGain(change) && !isLoss(change)),
  };
}

function idsOf(view: LibraryView, kind: 'set' | 'device'): readonly string[] {
  return [...view.ids(kind)];
}

function ofSet(view: LibraryView, id: string): Derivation | undefined {
  const set = view.get('set', id);
  return set === undefined ? undefined : deriveSet(view, set);
}

function ofDevice(view: LibraryView, id: string): Derivation | undefined {
  const device = view.get('device', id);
  return device === undefined ? undefined : derive(subjectOfDevice(view, device), view.ask(departmentOf, ''));
}

function isGain({ before, after }: StatusChange): boolean {
  return statusRank(after) > statusRank(before);
}

function isLoss({ before, after }: StatusChange): boolean {
  return statusRank(after) < statusRank(before);
}

type Deriving = (id: string) => Derivation | undefined;

/** Only what stands on both sides can be compared. */
function compared(
  before: readonly string[],
  after: readonly string[],
  first: Deriving,
  second: Deriving,
): readonly StatusChange[] {
  const changes: StatusChange[] = [];
  const there = new Set(after);
  for (const id of [...before].sort()) {
    const [old, now] = there.has(id) ? [first(id), second(id)] : [undefined, undefined];
    const words = old === undefined || now === undefined ? [] : differences(old, now);
    if (old !== undefined && now !== undefined && words.length > 0) {
      changes.push({
        id: `${old.route.of}/${id}`,
        before: old.route.status,
        after: now.route.status,
        words: words.join('; '),
      });
    }
  }
  return changes;
}

function differences(before: Derivation, after: Derivation): readonly string[] {
  return [
    ...statusWords(before.route, after.route),
    ...clashChanges(before, after),
    ...cleaningChanges(before.route, after.route),
    ...choiceWords(before.route, after.route),
  ];
}

function statusWords(before: SetRoute, after: SetRoute): readonly string[] {
  return before.status === after.status ? [] : [`${before.status} before, ${after.status} after`];
}

/** Clashes are the same when they are about the same requirements. */
function clashChanges(before: Derivation, after: Derivation): readonly string[] {
  const [old, now] = [clashNames(before), clashNames(after)];
  const settled = [...old].filter(([key]) => !now.has(key)).map(([, words]) => `settled: ${words}`);
  const fresh = [...now].filter(([key]) => !old.has(key)).map(([, words]) => `now in the way: ${words}`);
  if (settled.length + fresh.length === 0) return [];
  const still = [...now].filter(([key]) => old.has(key)).map(([, words]) => `still in the way: ${words}`);
  return [...settled, ...fresh, ...still];
}

function clashNames(derivation: Derivation): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const { about, of, atoms } of clashesOf(derivation)) {
    const [first] = atoms;
    if (first !== undefined) names.set(`${about} ${of} ${first.key}`, first.words);
  }
  return names;
}

/** Ways of cleaning that fit only before or only after, by member. */
function cleaningChanges(before: SetRoute, after: SetRoute): readonly string[] {
  const words: string[] = [];
  for (const member of after.members) {
    const old = fittingWays(before.members.find(({ device }) => device === member.device));
    const now = fittingWays(member);
    for (const way of now) if (!old.has(way)) words.push(`${member.device}: cleaning "${way}" now fits`);
    for (const way of old) if (!now.has(way)) words.push(`${member.device}: cleaning "${way}" no longer fits`);
  }
  return words;
}

function fittingWays(member: SetRoute['members'][number] | undefined): ReadonlySet<string> {
  const fits = member?.cleaning === undefined ? [] : [member.cleaning, ...member.otherCleaning];
  return new Set(fits.filter(({ outcome }) => rankOf(outcome) < rankOf('fails')).map(({ alternative }) => alternative));
}

function choiceWords({ chosen: old }: SetRoute, { chosen: now }: SetRoute): readonly string[] {
  if (old === undefined || now === undefined || (old.packaging === now.packaging && old.cycle === now.cycle)) return [];
  return [`${old.packaging} on ${old.cycle} before, ${now.packaging} on ${now.cycle} after`];
}
