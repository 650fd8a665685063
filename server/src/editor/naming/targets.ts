import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Node, Place, Rec, Text } from '../../model/node.ts';
import { fieldOf, nodesIn } from '../../model/walk.ts';
import { isKind, kinds } from '../../schema/kinds.ts';
import { statementIn } from './cited.ts';

/**
 * Part `naming`: what a word in a file names, where that is named, and what happens when names or paths change. Knows nothing of what an
 * instruction means.
 */

/** What an id in a rule file names: an entity of another file, or a thing inside one. */
export interface Target {
  readonly node: Node;
  readonly place: Place;
}

/** Everything that `text` may name, in the order of its kinds; `entity` is the file it stands in. */
export function targetsOf(text: Text, entity: AnyEntity, view: LibraryView): readonly Target[] {
  return (text.refers ?? [])
    .flatMap((refers) => targetsNamed(refers, text, entity, view))
    .map((node) => ({ node, place: placeOf(node) }));
}

function targetsNamed(refers: string, text: Text, entity: AnyEntity, view: LibraryView): readonly Node[] {
  if (isKind(refers)) return view.claimants(refers, text.text);
  switch (refers) {
    case 'any':
      return kinds.flatMap((kind) => view.claimants(kind, text.text));
    case 'statement': {
      const statement = statementIn(entity, text.text);
      return statement === undefined ? [] : [statement];
    }
    case 'document-number':
      return view.revisions(text.text);
    case 'cycle':
      return view.all('sterilizer').flatMap((sterilizer) => partsNamed(sterilizer, text));
    case 'washer-cycle':
      return view.all('washer').flatMap((washer) => partsNamed(washer, text));
    default:
      return partsNamed(entity, text);
  }
}

/** Records inside an entity whose `id` is this text. */
function partsNamed(entity: AnyEntity, text: Text): readonly Rec[] {
  const found: Rec[] = [];
  for (const node of nodesIn(entity)) {
    if (node.node !== 'record' || node === entity) continue;
    const id = fieldOf(node, 'id');
    if (id?.node === 'text' && id.text === text.text && id.at.span.start !== text.at.span.start) found.push(node);
  }
  return found;
}

/** The id of a record where it has one: the place to jump to. */
function placeOf(node: Node): Place {
  const id = node.node === 'record' ? fieldOf(node, 'id') : undefined;
  return id?.at ?? node.at;
}
