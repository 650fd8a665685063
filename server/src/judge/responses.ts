import type { EntityOf } from '../model/entities.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Requirement } from '../model/node.ts';
import { pathOf, rootOf } from '../model/node.ts';
import type { Setting } from './setting.ts';

/** May this written answer be relied on today? Only when it was checked, is signed, and has not run out. */
export function isUsable(response: EntityOf['response'], today: string): boolean {
  if (response.status?.text !== 'verified' || response.signed?.on === false) return false;
  return response.expires === undefined || response.expires.text >= today;
}

/** Does a usable answer of the maker speak of this field, or of the question that is open on it? */
export function isAnswered(setting: Setting, by: AnyEntity, requirement: Requirement): boolean {
  const { id } = rootOf(by.at);
  const responses = setting.responses(id);
  const path = responses.length === 0 ? '' : pathOf(requirement.at);
  for (const response of responses) {
    if (!isUsable(response, setting.today)) continue;
    if (response.field?.text === path) return true;
    if (
      requirement.ask !== undefined &&
      response.answers?.items.some((one) => one.text === requirement.ask?.text) === true
    )
      return true;
  }
  return false;
}

/** Of two statements that differ, the one that cites a usable answer of the maker. Undefined when none does, or more than one. */
export function settlingSide(setting: Setting, by: AnyEntity, requirement: Requirement): Requirement | undefined {
  if (requirement.conflict === undefined) return undefined;
  const { id } = rootOf(by.at);
  const usable = setting.responses(id).filter((one) => isUsable(one, setting.today));
  const names = new Set(usable.map((one) => rootOf(one.at).id as string));
  const sides = requirement.conflict.items.filter(
    (side) => names.has(side.doc?.text ?? '') || names.has(side.src?.inline?.doc?.text ?? ''),
  );
  return sides.length === 1 ? sides[0] : undefined;
}
