import type { Repair } from './model.ts';
import { effectOf, repair, routeWords, statusRank, stillOpen, worstStatus } from './repair-trial.ts';
import { type Derivation, derive } from './route.ts';
import { calledIn, partOf, type SubjectMember, withoutMembers } from './subject.ts';

const toWeigh = 'weigh the new packs and count them on the cards';

/** Take one member out: offered when the rest has a route; what becomes of the member alone is worked out too. */
export function takeOutRepairs(before: Derivation): readonly Repair[] {
  const judged = before.subject.members.filter(({ device }) => device !== undefined);
  if (judged.length < 2) return [];
  return judged.flatMap((member) => takeOut(before, member) ?? []);
}

function takeOut(before: Derivation, member: SubjectMember): Repair | undefined {
  const rest = derive(withoutMembers(before.subject, new Set([member.id])), before.department);
  if (statusRank(rest.route.status) <= statusRank(before.route.status)) return undefined;
  const alone = derive(
    partOf(before.subject, ({ id }) => id === member.id),
    before.department,
  );
  const worst = worstStatus([rest.route.status, alone.route.status]);
  const others = before.subject.members.filter(({ id }) => id !== member.id).map(({ id }) => id);
  const own =
    alone.route.status === 'none' ? 'which has no route here by itself' : `and process it alone ${routeWords(alone)}`;
  const name = calledIn(before.subject).get(member.id) ?? member.id;
  const verified = [
    `the rest: ${rest.route.status} ${routeWords(rest)}`,
    ...(alone.route.status === 'none' ? [] : [`${name} alone: ${alone.route.status} ${routeWords(alone)}`]),
  ];
  const words = {
    words: `Take ${name} out of the set, ${own}; the rest goes ${routeWords(rest)}.`,
    verified,
    leaves: [...stillOpen(alone), toWeigh],
    about: [member.id],
  };
  const effect = worst === 'none' ? 'part' : worst === 'route' ? 'route' : 'provisional';
  return repair('take-member-out', effect, words, { change: 'packs', packs: [others, [member.id]] });
}

/** Split the set in two packs, where taking out one member does not do: members that go through one cycle stay together. */
export function splitRepairs(before: Derivation): readonly Repair[] {
  const members = before.subject.members.filter(({ device }) => device !== undefined);
  const tried = new Set<string>();
  for (const { id } of members) {
    const together = members.filter(
      (other) =>
        other.id === id ||
        derive(
          partOf(before.subject, (one) => one.id === id || one.id === other.id),
          before.department,
        ).route.status === 'route',
    );
    const first = new Set(together.map((one) => one.id));
    const key = [...first].sort().join(' ');
    if (first.size < 2 || first.size > members.length - 2 || tried.has(key)) continue;
    tried.add(key);
    const packs = [
      derive(
        partOf(before.subject, (one) => first.has(one.id)),
        before.department,
      ),
      derive(
        partOf(before.subject, (one) => !first.has(one.id)),
        before.department,
      ),
    ];
    if (packs.some(({ route }) => route.status !== 'route')) continue;
    const ids = packs.map((pack) => pack.subject.members.map((one) => one.id));
    const called = calledIn(before.subject);
    const names = ids.map((pack) => pack.map((one) => called.get(one) ?? one));
    const verified = packs.map((pack, index) => `pack ${index + 1}: ${routeWords(pack)}`);
    const words = `Make two packs: ${packs.map((pack, index) => `${names[index]?.join(', ') ?? ''} ${routeWords(pack)}`).join('; ')}.`;
    return [
      repair(
        'split-set',
        'route',
        { words, verified, leaves: [toWeigh], about: ids.flat() },
        { change: 'packs', packs: ids },
      ),
    ];
  }
  return [];
}

/** Where only mass stands in the way: two lighter packs of the same members. */
export function lightenRepairs(before: Derivation): readonly Repair[] {
  if (before.subject.contents.mass === undefined || before.route.status !== 'none') return [];
  const { mass: _mass, ...contents } = before.subject.contents;
  const after = derive({ ...before.subject, contents, weighed: 'not-yet' }, before.department);
  const effect = effectOf(before, after);
  if (effect === undefined) return [];
  const leaves = ['weigh each pack against the limits', ...stillOpen(after)];
  const verified = [
    after.route.status === 'none'
      ? 'mass is one of the things in the way'
      : `without the mass limit: ${after.route.status} ${routeWords(after)}`,
  ];
  return [
    repair('lighten-set', effect, {
      words: 'Divide the contents by level into lighter packs.',
      verified,
      leaves,
      about: [before.subject.id],
    }),
  ];
}
