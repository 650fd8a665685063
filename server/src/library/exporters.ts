import type { FileId } from '../base/brand.ts';
import type { FileRecord } from './file-record.ts';
import type { IndexKey } from './keys.ts';

/** Which files export which key. Most keys are exported by one file: that one is kept without a table of its own. */
export class Exporters {
  readonly #files = new Map<IndexKey, FileRecord | Map<FileId, FileRecord>>();

  has(key: IndexKey): boolean {
    return this.#files.has(key);
  }

  /** In no order. */
  of(key: IndexKey): Iterable<FileRecord> {
    const files = this.#files.get(key);
    if (files === undefined) return none;
    return files instanceof Map ? files.values() : [files];
  }

  /** In code-unit order of the files' paths. */
  inOrder(key: IndexKey): readonly FileRecord[] {
    return [...this.of(key)].sort((a, b) => (a.file < b.file ? -1 : 1));
  }

  /** Takes the place of a record of the same file. */
  add(key: IndexKey, record: FileRecord): void {
    const files = this.#files.get(key);
    if (files === undefined || (!(files instanceof Map) && files.file === record.file)) this.#files.set(key, record);
    else if (files instanceof Map) files.set(record.file, record);
    else this.#files.set(key, new Map([files, record].map((one) => [one.file, one])));
  }

  remove(key: IndexKey, file: FileId): void {
    const files = this.#files.get(key);
    if (files instanceof Map) files.delete(file);
    if (files instanceof Map ? files.size === 0 : files?.file === file) this.#files.delete(key);
  }
}

const none: readonly FileRecord[] = [];
