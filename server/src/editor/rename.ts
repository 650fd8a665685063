import type { FileId } from '../base/brand.ts';
import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { Library } from '../library/library.ts';
import type { LibraryView } from '../library/view.ts';
import { rootOfEntity } from '../model/entity.ts';
import { isKind } from '../schema/kinds.ts';
import { knownIds } from './completion/completion-ids.ts';
import type { NamedThing } from './naming/named-thing.ts';
import { namedThingAt, usesOf } from './naming/named-thing.ts';
import { asValueFor } from './writing/bare.ts';

export type Renaming = { readonly edits: ReadonlyMap<FileId, readonly Edit[]> } | { readonly refused: string };

const goodId = /^[A-Za-z0-9][A-Za-z0-9._:-]{0,63}$/;

/** The id at `offset`, when it can be given another name: its range at the cursor, and the name it has. */
export function renameableAt(
  library: Library,
  file: FileId,
  offset: number,
  view: LibraryView,
): { readonly span: Span; readonly name: string; readonly thing: NamedThing } | undefined {
  const entity = library.record(file)?.entity;
  const thing = entity === undefined ? undefined : namedThingAt(entity, offset, view);
  if (entity === undefined || thing === undefined) return undefined;
  const places = [{ file: rootOfEntity(thing.entity).file, span: thing.at }, ...usesOf(thing, library, view)];
  const here = places.find((place) => place.file === file && place.span.start <= offset && offset <= place.span.end);
  return here === undefined ? undefined : { span: here.span, name: thing.id, thing };
}

/** Gives a thing another id, where it is given and wherever it is named. Refused in words when the name is taken or no name at all. */
export function rename(thing: NamedThing, to: string, library: Library, view: LibraryView): Renaming {
  const clash = refusal(thing, to, view);
  if (clash !== undefined) return { refused: clash };
  const edits = new Map<FileId, Edit[]>();
  const own = rootOfEntity(thing.entity).file;
  for (const { file, span } of [{ file: own, span: thing.at }, ...usesOf(thing, library, view)]) {
    const text = library.record(file)?.text.slice(span.start, span.end) ?? '';
    const edit: Edit = { span, text: asValueFor(text, to) };
    const known = edits.get(file);
    if (known === undefined) edits.set(file, [edit]);
    else if (known.every((one) => one.span.start !== span.start)) known.push(edit);
  }
  return { edits };
}

function refusal(thing: NamedThing, to: string, view: LibraryView): string | undefined {
  const { sort, id, entity } = thing;
  if (to === id) return `It has the name "${id}" already.`;
  if (!goodId.test(to))
    return `"${to.slice(0, 70)}" can't be an id: letters, digits, dot, underscore, colon and hyphen, at most 64 of them, a letter or digit first.`;
  if (isKind(sort)) {
    if (view.claimants(sort, id).length > 1)
      return `Two files say that they are the ${sort} "${id}". Settle that first.`;
    const [taken] = view.claimants(sort, to);
    if (taken !== undefined) return `There is a ${sort} "${to}" already, in ${rootOfEntity(taken).file}.`;
    return view.exists(sort, to) ? `There is a ${sort} "${to}" already.` : undefined;
  }
  const taken = knownIds(sort, { entity, view, rules: [] }).some((one) => one.id === to);
  return taken ? `There is a ${sort.replace('-', ' ')} "${to}" already.` : undefined;
}
