import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import { fieldOf } from '../model/walk.ts';
import type { Kind } from '../schema/kinds.ts';
import { isKind } from '../schema/kinds.ts';
import type { LibraryView, Query } from './view.ts';

/** What people call a set, a device, a packaging or a machine: its name, with its id in brackets where two of a kind share one. */
export function called(kind: Kind, id: string, view: LibraryView): string {
  return view.ask(names, kind).get(id) ?? id;
}

/** The same of `packaging/P3`. */
export function calledWho(who: string, view: LibraryView): string {
  const { kind, id } = partsOf(who);
  return kind === undefined ? id : called(kind, id, view);
}

/** For findings, which would rest on every device of the library if it was asked whether another one shares the name. */
export function demanderCalled(who: string, view: LibraryView): string {
  const { kind, id } = partsOf(who);
  if (kind !== 'device') return calledWho(who, view);
  return view.get('device', id)?.name?.text ?? id;
}

function partsOf(who: string): { readonly kind: Kind | undefined; readonly id: string } {
  const slash = who.indexOf('/');
  const [kind, id] = [who.slice(0, slash), who.slice(slash + 1)];
  return { kind: isKind(kind) ? kind : undefined, id };
}

/** The name of one that is at hand, else its id: rests on no other file. */
export function nameOrId(entity: AnyEntity): string {
  return nameOf(entity) || rootOfEntity(entity).id;
}

/** A machine by its id, of whichever sort it is. */
export function machineCalled(id: string, view: LibraryView): string {
  const kind = machines.find((one) => view.exists(one, id));
  return kind === undefined ? id : called(kind, id, view);
}

const machines: readonly Kind[] = ['washer', 'ultrasonic', 'sterilizer'];

function nameOf(entity: AnyEntity): string {
  const name = fieldOf(entity, 'name') ?? fieldOf(entity, 'title');
  return name?.node === 'text' ? name.text : '';
}

/** Worked out once until a file of the kind changes. */
const names: Query<Kind, ReadonlyMap<string, string>> = {
  name: 'names-of-kind',
  work: (view, kind) => {
    const all: readonly AnyEntity[] = view.all(kind);
    const given = all.map((one) => [rootOfEntity(one).id, nameOf(one)] as const);
    const ids = new Map<string, Set<string>>();
    for (const [id, name] of given) ids.set(name, (ids.get(name) ?? new Set()).add(id));
    return new Map(
      given.map(([id, name]) => [id, name === '' ? id : (ids.get(name)?.size ?? 0) > 1 ? `${name} (${id})` : name]),
    );
  },
};
