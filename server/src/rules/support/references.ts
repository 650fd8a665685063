/** rules/support/: small helpers that several rules share. They report nothing. */
import type { LibraryView } from '../../library/view.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Table, Text } from '../../model/node.ts';
import { isKind } from '../../schema/kinds.ts';

/** Names of things that a reference of one sort may name; undefined when the sort is one nobody lists. */
export function namesOf(sort: string, entity: AnyEntity, view: LibraryView): ReadonlySet<string> | undefined {
  if (isKind(sort)) return view.ids(sort);
  switch (sort) {
    case 'cycle':
      return idsIn(view.all('sterilizer').flatMap((machine) => machine.cycles?.items ?? []));
    case 'washer-cycle':
      return idsIn(view.all('washer').flatMap((machine) => machine.cycles?.items ?? []));
    case 'document-number':
      return undefined;
    case 'statement':
      return new Set(statementsOf(entity)?.rows.keys());
    default:
      return isOfKind(entity, 'device') ? namesInDevice(sort, entity) : undefined;
  }
}

function statementsOf(entity: AnyEntity & { readonly statements?: Table<Statement> }): Table<Statement> | undefined {
  return entity.statements;
}

function namesInDevice(sort: string, device: AnyEntity): ReadonlySet<string> | undefined {
  if (!isOfKind(device, 'device')) return undefined;
  switch (sort) {
    case 'lumen':
      return idsIn(device.lumens?.items ?? []);
    case 'part':
      return idsIn(device.parts?.items ?? []);
    case 'option':
      return idsIn(device.sterilization?.any_of?.items ?? []);
    default:
      return undefined;
  }
}

function idsIn(items: readonly { readonly id?: Text }[]): ReadonlySet<string> {
  return new Set(items.flatMap((item) => (item.id === undefined ? [] : [item.id.text])));
}

/** True when something of this sort has this name. Kinds are looked up one id at a time, so that only that id is remembered as read. */
export function isNamed(sort: string, name: string, entity: AnyEntity, view: LibraryView): boolean {
  if (isKind(sort)) return view.exists(sort, name);
  if (sort === 'cycle') return view.sterilizerCycle(name) !== undefined;
  if (sort === 'washer-cycle') return view.washerCycle(name) !== undefined;
  if (sort === 'statement') return statementsOf(entity)?.rows.has(name) === true;
  const names = namesOf(sort, entity, view);
  return names === undefined || names.has(name);
}
