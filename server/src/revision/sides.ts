import type { IsoDate } from '../base/brand.ts';
import type { FileRecord } from '../library/file-record.ts';
import { isBelow, leftOutFolders } from '../library/left-out.ts';
import { Library } from '../library/library.ts';
import { type LoadedFile, recordOf } from '../library/loaded-file.ts';
import { LibraryView, QueryAnswers } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';

/** Records in order of files, without folders that the library's own settings leave out. */
export function recordsOf(files: readonly LoadedFile[], today: IsoDate): readonly FileRecord[] {
  const records = files.map(recordOf);
  const library = libraryOf(records);
  const folders = leftOutFolders(new LibraryView(library, new Set(), new QueryAnswers(today)));
  return folders.length === 0 ? records : records.filter(({ file }) => !isBelow(file, folders));
}

export function libraryOf(records: readonly FileRecord[]): Library {
  const library = new Library();
  for (const record of records) library.put(record);
  return library;
}

export interface RecordSides {
  readonly before: readonly FileRecord[];
  readonly after: readonly FileRecord[];
}

/** Entities that can be compared: one that can't be read on one side is left out of both, and said. */
export function comparable({ before, after }: RecordSides): {
  readonly before: readonly AnyEntity[];
  readonly after: readonly AnyEntity[];
  readonly notices: readonly string[];
} {
  const notices: string[] = [];
  const broken = new Set<string>();
  for (const [side, records] of [
    ['old', before],
    ['new', after],
  ] as const) {
    for (const { file, entity, kind, id, problems } of records) {
      if (entity !== undefined) continue;
      if (kind !== undefined && id !== undefined) broken.add(`${kind}/${id}`);
      notices.push(
        `${file} (${side} side) could not be read, so it was not compared: ${problems[0]?.message ?? 'it is no rule file'}`,
      );
    }
  }
  const kept = (records: readonly FileRecord[]) =>
    records.flatMap(({ entity, kind, id }) => (entity === undefined || broken.has(`${kind}/${id}`) ? [] : [entity]));
  return { before: kept(before), after: kept(after), notices };
}
