import type { LibraryView } from '../../library/view.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { type List, pathOf } from '../../model/node.ts';
import type { Kind } from '../../schema/kinds.ts';

type SignOff = EntityOf['sign-off'];

/** Signatures and choices that a record needs before it counts. Empty when it is complete. */
export function missingIn(record: SignOff): readonly string[] {
  const missing: string[] = [];
  if (record.reviewer === undefined) missing.push('no reviewer');
  if (record.second_reader === undefined) missing.push('no second reader');
  else if (record.second_reader.text === record.reviewer?.text)
    missing.push('the same role as reviewer and second reader');
  if (record.manager === undefined) missing.push('no signature of whoever answers for it');
  if (record.on === undefined) missing.push('no day');
  if (record.shelf_stock === undefined) missing.push('no choice about packs on the shelf');
  return missing;
}

/** Kinds of file whose changes are decided on, likeliest first. */
const decided = [
  'device',
  'packaging',
  'chemistry',
  'washer',
  'sterilizer',
  'ultrasonic',
  'water',
  'procedure',
  'set',
  'monitor',
  'site',
  'document',
  'response',
  'question',
  'training',
  'poster',
  'quiz',
] as const satisfies readonly Kind[];

/** The file whose change a record decides on, when the library holds it. */
export function subjectOf(record: SignOff, view: LibraryView): AnyEntity | undefined {
  const id = record.about?.text;
  if (id === undefined) return undefined;
  for (const kind of decided) {
    const entity = view.get(kind, id);
    if (entity !== undefined) return entity;
  }
  return undefined;
}

/** The revision of the record's document from which the file is taken now; undefined where it cites none. */
export function citedRevision(record: SignOff, subject: AnyEntity): string | undefined {
  const { sources } = subject as { readonly sources?: List<Source> };
  const source = sources?.items.find(({ doc }) => doc?.text !== undefined && doc.text === record.doc?.text);
  return source?.rev?.text;
}

/** A complete record of the decision on this revision, if there is one. */
export function recordFor(document: EntityOf['document'], view: LibraryView): SignOff | undefined {
  const { doc, rev } = document;
  if (doc === undefined || rev === undefined) return undefined;
  return view
    .users('document-number', doc.text, 'sign-off')
    .find((record) => record.to_rev?.text === rev.text && missingIn(record).length === 0);
}

/** For messages about a list item: where it stands. */
export function decidedField(change: {
  readonly field?: { readonly text: string };
  readonly at: Parameters<typeof pathOf>[0];
}): string {
  return change.field?.text ?? pathOf(change.at);
}
