import type { Library } from '../../library/library.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { nodesIn } from '../../model/walk.ts';
import type { IdPlace, NamedThing } from './named-thing.ts';
import { isShared, namedThingAt, usesOf } from './named-thing.ts';

/** Where a thing is named; with where its id is given when that is asked for. */
export function referencesTo(
  thing: NamedThing,
  library: Library,
  view: LibraryView,
  withDefinition: 'with-definition' | 'uses-only',
): readonly IdPlace[] {
  const uses = usesOf(thing, library, view);
  if (withDefinition === 'uses-only') return uses;
  return [{ file: rootOfEntity(thing.entity).file, span: thing.at }, ...uses];
}

/** A file that names something, with the places where it does. */
export interface Includer {
  readonly entity: AnyEntity;
  readonly thing: NamedThing;
  readonly places: readonly IdPlace[];
}

/** "What includes this": the files that name an entity or a cycle, each once. */
export function includersOf(thing: NamedThing, library: Library, view: LibraryView): readonly Includer[] {
  if (!isShared(thing.sort)) return [];
  const byFile = new Map<string, IdPlace[]>();
  for (const place of usesOf(thing, library, view)) byFile.set(place.file, [...(byFile.get(place.file) ?? []), place]);
  return [...byFile.values()].flatMap((places) => {
    const entity = library.record(places[0]?.file ?? rootOfEntity(thing.entity).file)?.entity;
    const own = entity === undefined ? undefined : ownThing(entity);
    return entity === undefined || own === undefined || entity === thing.entity ? [] : [{ entity, thing: own, places }];
  });
}

/** "What this includes": the entities that a file names, each once. */
export function includedBy(entity: AnyEntity, view: LibraryView): readonly Includer[] {
  const found = new Map<AnyEntity, Includer & { places: IdPlace[] }>();
  const { file } = rootOfEntity(entity);
  for (const node of nodesIn(entity)) {
    if (node.node !== 'text' || node.refers === undefined) continue;
    const { span } = node.at;
    const thing = namedThingAt(entity, span.start, view);
    const own = thing === undefined || thing.entity === entity ? undefined : ownThing(thing.entity);
    if (thing === undefined || own === undefined) continue;
    const known = found.get(thing.entity);
    if (known === undefined) found.set(thing.entity, { entity: thing.entity, thing: own, places: [{ file, span }] });
    else known.places.push({ file, span });
  }
  return [...found.values()];
}

function ownThing(entity: AnyEntity): NamedThing | undefined {
  const { kind, id } = rootOfEntity(entity);
  const at = entity.id?.at.span;
  return at === undefined ? undefined : { sort: kind, id, entity, at };
}
