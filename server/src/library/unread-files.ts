import type { FileId } from '../base/brand.ts';
import type { Kind } from '../schema/kinds.ts';
import type { FileRecord } from './file-record.ts';
import type { KeptFile } from './kept-file.ts';
import type { IndexKey } from './keys.ts';

/**
 * Files whose texts are what they were when somebody read them, and have not been read again: what is known of each answers who might
 * export a key, and a record is made only for a file that a reader comes upon.
 */
export interface UnreadFiles {
  has(file: FileId): boolean;
  files(): Iterable<FileId>;
  /** Those that may export the key: perhaps one too many, never one too few. */
  exporters(key: IndexKey): Iterable<FileId>;
  /** The files of the kind that have an id, with it. */
  idsOf(kind: Kind): Iterable<readonly [FileId, string]>;
  /** The id of the file, where it is of this kind and has one. */
  idOf(file: FileId, kind: Kind): string | undefined;
  read(file: FileId): FileRecord;
  keptFile(path: string): KeptFile | undefined;
}
