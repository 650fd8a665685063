import type { AnyEntity } from '../model/entity.ts';
import { isOfKind } from '../model/entity.ts';
import type { FileRecord } from './file-record.ts';
import { keptPath } from './kept-file.ts';
import { KnownOfRecords } from './resting-record.ts';
import type { LibraryView } from './view.ts';

/** Where all documents of the library lie that keep a file in it, each path once. */
export function keptPathsIn(view: LibraryView): readonly string[] {
  const paths = new Set<string>();
  for (const record of view.records('document')) {
    const path = pathKeptBy(record);
    if (path !== undefined) paths.add(path);
  }
  return [...paths].sort();
}

const kept = new KnownOfRecords(keptIn, '');

/** Where the file lies that the record's file keeps, if it is a document that keeps one. */
export function pathKeptBy(record: FileRecord): string | undefined {
  return record.kind === 'document' ? kept.of(record) || undefined : undefined;
}

/** Empty where there is none. */
function keptIn(entity: AnyEntity): string {
  return (isOfKind(entity, 'document') && entity.file !== undefined && keptPath(entity.file)) || '';
}
