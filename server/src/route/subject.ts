import type { Contents } from '../judge/contents.ts';
import { lumensOf } from '../judge/lumens.ts';
import type { LibraryView } from '../library/view.ts';
import type { Member } from '../model/entities/set.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Place, Text } from '../model/node.ts';
import type { UnknownReason } from './model.ts';
import { blocksJudgement, doubtsAbout } from './trust.ts';

/** What goes through sterilization together: a set, a part of one, or a single device family as if it were a set of one. */
export interface Subject {
  readonly of: 'set' | 'device';
  readonly id: string;
  readonly at: Place;
  readonly members: readonly SubjectMember[];
  /** Everything in the package that is not a member. */
  readonly contents: Omit<Contents, 'lumens'>;
  /** False for a part of a set or a device alone: nobody has weighed what does not exist yet. */
  readonly weighed: 'weighed' | 'not-yet';
  readonly packaging?: Text;
  readonly namedCase?: Text;
  readonly context: string;
  readonly site?: string;
}

export interface SubjectMember {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly at: Place;
  /** Undefined when nothing about it can be judged. */
  readonly device?: EntityOf['device'];
  readonly unknown: readonly UnknownReason[];
}

export function subjectOfSet(view: LibraryView, set: EntityOf['set']): Subject {
  const { packaging, site } = set;
  return {
    of: 'set',
    id: set.id?.text ?? '',
    at: set.id?.at ?? set.at,
    members: membersOf(view, set),
    contents: contentsOf(view, set),
    weighed: 'weighed',
    context: set.context?.text ?? 'terminal',
    ...(packaging && { packaging }),
    ...(set.case && { namedCase: set.case }),
    ...(site && { site: site.text }),
  };
}

export function subjectOfDevice(view: LibraryView, device: EntityOf['device']): Subject {
  const id = device.id?.text ?? '';
  const at = device.id?.at ?? device.at;
  const contents = { accessories: [], others: [], inner: [], at, mass: device.mass };
  return {
    of: 'device',
    id,
    at,
    members: [memberOf(view, id, 1, at)],
    contents,
    weighed: 'not-yet',
    context: 'terminal',
  };
}

/** The members of `subject` that `keep` names, packed anew: in any packaging, without what lay beside them, not weighed yet. */
export function partOf(subject: Subject, keep: (member: SubjectMember) => boolean): Subject {
  const { packaging: _packaging, namedCase: _case, ...rest } = subject;
  const contents = { accessories: [], others: [], inner: [], at: subject.at };
  return { ...rest, members: subject.members.filter(keep), contents, weighed: 'not-yet' };
}

/** The set with some members left out, otherwise as its file says. */
export function withoutMembers(subject: Subject, out: ReadonlySet<string>): Subject {
  return { ...subject, members: subject.members.filter(({ id }) => !out.has(id)) };
}

/** What people call the members, by id: the name, with the id in brackets where two share one. */
export function calledIn({ members }: Subject): ReadonlyMap<string, string> {
  const ids = new Map<string, string[]>();
  for (const { id, name } of members) ids.set(name, [...(ids.get(name) ?? []), id]);
  return new Map(
    members.map(({ id, name }) => [id, (ids.get(name)?.length ?? 0) > 1 && name !== id ? `${name} (${id})` : name]),
  );
}

/** All that lies in the package, lumens of the members included. */
export function contentsWithLumens(subject: Subject): Contents {
  const lumens = subject.members.flatMap(({ device, quantity }) =>
    device === undefined ? [] : lumensOf(device, quantity),
  );
  return { ...subject.contents, lumens };
}

/** Lines of the set, then the case where it is a device of its own and not already a line. Lines of one device are one member. */
function membersOf(view: LibraryView, set: EntityOf['set']): readonly SubjectMember[] {
  const members = new Map<string, SubjectMember>();
  for (const [index, line] of (set.members?.items ?? []).entries()) {
    const member = lineOf(view, line, index);
    const known = members.get(member.id);
    members.set(member.id, known === undefined ? member : { ...known, quantity: known.quantity + member.quantity });
  }
  const box = set.case;
  if (box !== undefined && !members.has(box.text) && view.get('device', box.text) !== undefined) {
    members.set(box.text, memberOf(view, box.text, 1, box.at));
  }
  return [...members.values()];
}

function lineOf(view: LibraryView, line: Member, index: number): SubjectMember {
  const quantity = line.qty === undefined || line.qty.problem !== undefined ? 1 : line.qty.value;
  if (line.device !== undefined) return memberOf(view, line.device.text, quantity, line.device.at);
  const name = line.text?.text ?? line.catalogue?.text ?? `line ${index + 1}`;
  const unknown = { because: 'unmapped', words: 'this line names no device file', at: line.at } as const;
  return { id: `line ${index + 1}`, name, quantity, at: line.at, unknown: [unknown] };
}

function memberOf(view: LibraryView, id: string, quantity: number, at: Place): SubjectMember {
  const device = view.get('device', id);
  if (device === undefined) {
    const unreadable = view.exists('device', id);
    const because = unreadable ? 'unreadable' : 'no-file';
    const words = unreadable ? 'its file cannot be read' : 'there is no device file of this name';
    return { id, name: id, quantity, at, unknown: [{ because, words, at }] };
  }
  const unknown = view.ask(doubtsAbout, id);
  const name = device.name?.text ?? id;
  return { id, name, quantity, at, unknown, ...(unknown.some(blocksJudgement) ? {} : { device }) };
}

function contentsOf(view: LibraryView, set: EntityOf['set']): Subject['contents'] {
  const inner = (set.inner?.items ?? []).flatMap(({ packaging }) => {
    const found = packaging === undefined ? undefined : view.get('packaging', packaging.text);
    return found === undefined ? [] : [found];
  });
  return {
    mass: set.mass,
    levels: set.levels,
    accessories: set.accessories?.items ?? [],
    others: set.contents?.items ?? [],
    filter: set.filter,
    valve: set.valve,
    bottom: set.bottom,
    inner,
    packedTwice: set.double?.on === true ? set.double.at : undefined,
    at: set.id?.at ?? set.at,
  };
}
