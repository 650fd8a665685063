import type { IsoDate } from '../../base/brand.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';

export type RegisteredDocument = EntityOf['document'];

/** The registered revision that a source names; without a revision in the source, the only current one. */
export function registeredOf(source: Source, view: LibraryView): RegisteredDocument | undefined {
  return view.once(revisionNamed, source);
}

function revisionNamed(source: Source, view: LibraryView): RegisteredDocument | undefined {
  const revisions = source.doc === undefined ? [] : view.revisions(source.doc.text);
  if (source.rev === undefined) return revisions.find(isCurrent);
  return revisions.find((revision) => revision.rev?.text === source.rev?.text);
}

/** In force by its own status; a document without a status counts as current. */
export function isCurrent(document: RegisteredDocument): boolean {
  return document.status === undefined || document.status.text === 'current';
}

export function isInForce(document: RegisteredDocument, today: IsoDate): boolean {
  return isCurrent(document) && (document.effective === undefined || document.effective.text <= today);
}

/** Roles whose document describes the device itself. A leaflet of a case or a letter may cover other things. */
const deviceRoles: ReadonlySet<string> = new Set(['device-specific', 'generic']);

export function describesDevice(source: Source): boolean {
  return source.role === undefined || deviceRoles.has(source.role.text);
}

/** Documents on file for a device: each registered revision that is more than a draft. What became of it is another question. */
export function documentsOnFile(device: EntityOf['device'], view: LibraryView): readonly RegisteredDocument[] {
  const found: RegisteredDocument[] = [];
  for (const source of device.sources?.items ?? []) {
    if (source.doc === undefined) continue;
    found.push(...view.revisions(source.doc.text).filter((document) => document.status?.text !== 'draft'));
  }
  return found;
}

/** `DW-REP-077 rev D`. */
export function documentName(document: { readonly doc?: { text: string }; readonly rev?: { text: string } }): string {
  const number = document.doc?.text ?? 'a document without number';
  return document.rev === undefined ? number : `${number} rev ${document.rev.text}`;
}
