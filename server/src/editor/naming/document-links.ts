import type { Span } from '../../base/span.ts';
import { keptPath } from '../../library/kept-file.ts';
import { namedFilesOf } from '../../library/named-files.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Node } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import { firstText } from './target-words.ts';

/** A place that leads to a file kept in the library, at a page where there is one. */
export interface FileLink {
  readonly at: Span;
  /** Below the library's root, `/` between parts. */
  readonly path: string;
  readonly page?: number;
}

/** The files that a document or response keeps, and from each statement the page of its document. */
export function fileLinksOf(entity: AnyEntity, view: LibraryView): readonly FileLink[] {
  const links: FileLink[] = [];
  for (const named of namedFilesOf(entity)) {
    const path = keptPath(named);
    if (path !== undefined) links.push({ at: named.at.span, path });
  }
  const statements = fieldOf(entity, 'statements');
  if (statements?.node !== 'table') return links;
  for (const { value } of statements.rows.values()) links.push(...pageLink(value, view));
  return links;
}

function pageLink(statement: Node, view: LibraryView): readonly FileLink[] {
  const page = statement.node === 'record' ? fieldOf(statement, 'page') : undefined;
  const path = fileOfDocument(firstText(statement, ['doc']), firstText(statement, ['rev']), view);
  if (page?.node !== 'quantity' || path === undefined) return [];
  const number = Number.isInteger(page.value) && page.value > 0 && page.value < 100_000 ? page.value : undefined;
  return [{ at: page.at.span, path, ...(number !== undefined && { page: number }) }];
}

function fileOfDocument(number: string, revision: string, view: LibraryView): string | undefined {
  if (number === '') return undefined;
  const document = view.revisions(number).find(({ rev }) => rev?.text === revision);
  if (document?.file === undefined) return undefined;
  return keptPath(document.file);
}
