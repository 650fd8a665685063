import type { FileId } from '../../base/brand.ts';
import type { Span } from '../../base/span.ts';
import type { Library } from '../../library/library.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { fieldOf } from '../../model/walk.ts';
import type { Kind } from '../../schema/kinds.ts';
import { firstText } from './target-words.ts';

/** An entity found by its id, its name, or a number printed on it. */
export interface LibrarySymbol {
  readonly name: string;
  /** What matched, when it is not the name: `DW-3301`. */
  readonly detail: string;
  readonly kind: Kind;
  readonly file: FileId;
  readonly span: Span;
}

const mostFound = 200;

/** Entities whose id, name, catalogue number or document number holds what was typed; those that begin with it first. */
export function symbolsFor(typed: string, library: Library): readonly LibrarySymbol[] {
  const wanted = typed.slice(0, 100).trim().toLowerCase();
  const begins: LibrarySymbol[] = [];
  const holds: LibrarySymbol[] = [];
  for (const file of library.files()) {
    const entity = library.record(file)?.entity;
    if (entity === undefined) continue;
    const matched = numbersOf(entity).find((text) => text.toLowerCase().includes(wanted));
    if (matched === undefined) continue;
    (matched.toLowerCase().startsWith(wanted) ? begins : holds).push(symbolOf(entity, matched));
    if (begins.length >= mostFound) break;
  }
  return [...begins, ...holds].slice(0, mostFound);
}

function symbolOf(entity: AnyEntity, matched: string): LibrarySymbol {
  const { kind, id, file } = rootOfEntity(entity);
  const name = firstText(entity, ['name', 'title']);
  const shown = name === '' ? id : `${id}: ${name}`;
  const detail = shown.toLowerCase().includes(matched.toLowerCase()) ? kind : `${kind}, ${matched}`;
  return { name: shown, detail, kind, file, span: entity.id?.at.span ?? entity.at.span };
}

/** Everything by which a person may look for it. */
function numbersOf(entity: AnyEntity): readonly string[] {
  const covers = fieldOf(entity, 'covers');
  const numbers =
    covers?.node === 'list' ? covers.items.flatMap((item) => (item.node === 'text' ? [item.text] : [])) : [];
  return [
    rootOfEntity(entity).id,
    firstText(entity, ['name']),
    firstText(entity, ['doc']),
    firstText(entity, ['title']),
    ...numbers,
  ];
}
