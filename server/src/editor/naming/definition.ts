import type { FileId } from '../../base/brand.ts';
import type { Span } from '../../base/span.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Node, Text } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import { nodesAt } from './locate.ts';
import type { Target } from './targets.ts';
import { targetsOf } from './targets.ts';

/** Where an id leads. */
export interface Definition {
  /** The id that was asked about. */
  readonly from: Span;
  readonly file: FileId;
  /** The id or key that names the target: where the cursor goes. */
  readonly span: Span;
  /** All of the target. */
  readonly whole: Span;
}

/** From the id at `offset` to what it names: set to device, `src` to statement, a statement's document to the registered revision. */
export function definitionsAt(entity: AnyEntity, offset: number, view: LibraryView): readonly Definition[] {
  const chain = nodesAt(entity, offset);
  const text = chain[chain.length - 1];
  if (text?.node !== 'text' || text.refers === undefined || !holds(text.at.span, offset)) return [];
  const targets = preferred(targetsOf(text, entity, view), text, chain[chain.length - 2]);
  return targets.map(({ node, place }) => ({
    from: text.at.span,
    file: rootOf(place).file,
    span: place.focus ?? place.keySpan ?? place.span,
    whole: node.at.span,
  }));
}

/** A document's number with its revision beside it leads to that revision, when it is registered. */
function preferred(targets: readonly Target[], text: Text, around: Node | undefined): readonly Target[] {
  if (text.refers?.includes('document-number') !== true || around === undefined) return targets;
  const revision = revisionIn(around);
  const same = targets.filter(({ node }) => revision !== undefined && revisionIn(node) === revision);
  return same.length > 0 ? same : targets;
}

function revisionIn(node: Node): string | undefined {
  if (node.node === 'citation') return node.inline?.rev?.text;
  const rev = node.node === 'record' ? fieldOf(node, 'rev') : undefined;
  return rev?.node === 'text' ? rev.text : undefined;
}

function holds(span: Span, offset: number): boolean {
  return span.start <= offset && offset <= span.end;
}
