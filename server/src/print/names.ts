import type { LibraryView } from '../library/view.ts';
import type { Text } from '../model/node.ts';
import { isKind } from '../schema/kinds.ts';
import type { Piece } from './piece.ts';
import { said } from './piece.ts';

/** The name people use, with the id where that is another. */
export function nameOf(entity: { readonly name?: Text; readonly id?: Text }, id: string): Piece {
  const text = entity.name ?? entity.id;
  return text === undefined ? id : said(text);
}

/** `device/pale-forceps` by the name people use. */
export function nameOfWho(who: string, view: LibraryView): Piece {
  const [kind = '', id = ''] = [who.slice(0, who.indexOf('/')), who.slice(who.indexOf('/') + 1)];
  const entity = isKind(kind) ? view.get(kind, id) : undefined;
  return entity === undefined || !('name' in entity || 'id' in entity) ? id : nameOf(entity, id);
}

/** As the machine shows it. */
export function screenName(cycle: { readonly name_on_screen?: Text; readonly id?: Text }, id: string): Piece {
  const text = cycle.name_on_screen ?? cycle.id;
  return text === undefined ? id : said(text);
}
