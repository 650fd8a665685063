import type { FileId } from '../base/brand.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind } from '../model/entity.ts';
import type { Kind } from '../schema/kinds.ts';
import { kinds } from '../schema/kinds.ts';
import { Exporters } from './exporters.ts';
import type { FileRecord } from './file-record.ts';
import { readRuleFile } from './file-record.ts';
import type { KeptFile } from './kept-file.ts';
import type { IndexKey } from './keys.ts';
import { entityKey, idsKey, keptKey, kindKey } from './keys.ts';
import type { UnreadFiles } from './unread-files.ts';

/** All files of one library, and who exports what. Changing it returns the keys whose readers must be judged again. */
export class Library {
  readonly #records = new Map<FileId, FileRecord>();
  readonly #exporters = new Exporters();
  /** Lists made from `#exporters`, each until one of its files changes. */
  readonly #entities = new Map<IndexKey, readonly AnyEntity[]>();
  readonly #ids = new Map<IndexKey, ReadonlySet<string>>();
  /** Documents and the like, by their paths: facts from outside, put here by whoever can open files. */
  readonly #kept = new Map<string, KeptFile>();
  #sorted: readonly FileId[] | undefined;
  /** Files that belong to the library though nobody may have asked for their records yet; each is in `#records` from then on. */
  #unread: UnreadFiles | undefined;
  readonly #deleted = new Set<FileId>();
  #changes = 0;

  /** How often anything in it changed: what was worked out at one count holds for as long as it stays. */
  get changes(): number {
    return this.#changes;
  }

  /** Takes in files that are read when somebody asks for them. Only once, and for a library of which no reader remembers anything. */
  rest(unread: UnreadFiles): void {
    this.#changes++;
    this.#unread = unread;
    this.#entities.clear();
    this.#ids.clear();
    this.#sorted = undefined;
  }

  /** Adds the file or replaces its text. Unchanged text changes no key. */
  set(file: FileId, text: string): ReadonlySet<IndexKey> {
    const old = this.record(file);
    if (old?.kind !== undefined && old.text === text) return new Set();
    return this.put(readRuleFile(file, text));
  }

  /** Adds or replaces a record that was read elsewhere (a worker, a cache). */
  put(record: FileRecord): ReadonlySet<IndexKey> {
    this.#changes++;
    const old = this.record(record.file);
    if (old === undefined) {
      this.#sorted = undefined;
      this.#take(record);
    } else this.#replace(old, record);
    return new Set([...changedKeys(old, record), ...this.#answered(old), ...this.#answered(record)]);
  }

  delete(file: FileId): ReadonlySet<IndexKey> {
    const old = this.record(file);
    if (old === undefined) return new Set();
    this.#changes++;
    for (const key of old.exports) this.#unexport(key, old);
    this.#records.delete(file);
    this.#deleted.add(file);
    this.#sorted = undefined;
    return new Set([...changedKeys(old, undefined), ...this.#answered(old)]);
  }

  /**
   * An answer of a maker changes what it is about. That is read anew, since what was worked out about it is remembered by its entity.
   */
  #answered(response: FileRecord | undefined): ReadonlySet<IndexKey> {
    const changed = new Set<IndexKey>();
    if (response?.entity === undefined || !isOfKind(response.entity, 'response')) return changed;
    const id = response.entity.about?.text ?? '';
    for (const key of kinds.map((kind) => entityKey(kind, id))) {
      for (const record of this.exporters(key)) {
        for (const one of record.exports) changed.add(one);
        const isInUse = [...record.exports].some((one) => this.#entities.has(one));
        if (isInUse && record.file !== response.file) this.#replace(record, readRuleFile(record.file, record.text));
      }
    }
    return changed;
  }

  /** Notes what was found in a file that rule files name. `undefined`: it has not been looked at, or no longer. */
  keep(path: string, found: KeptFile | undefined): ReadonlySet<IndexKey> {
    this.#changes++;
    if (found === undefined) this.#kept.delete(path);
    else this.#kept.set(path, found);
    return new Set([keptKey(path)]);
  }

  keptFile(path: string): KeptFile | undefined {
    const known = this.#kept.get(path);
    if (known !== undefined || this.#unread === undefined) return known;
    const found = this.#unread.keptFile(path);
    if (found !== undefined) this.#kept.set(path, found);
    return found;
  }

  /** A library without rule files that knows the same kept files: the beginning of a copy. */
  emptyCopy(): Library {
    const copy = new Library();
    for (const [path, found] of this.#kept) copy.keep(path, found);
    return copy;
  }

  record(file: FileId): FileRecord | undefined {
    const known = this.#records.get(file);
    if (known !== undefined || !this.#isUnread(file)) return known;
    const record = this.#unread?.read(file);
    if (record !== undefined) this.#take(record);
    return record;
  }

  /** In code-unit order of their paths, never in locale order or the disk's. */
  files(): readonly FileId[] {
    this.#sorted ??= [...new Set([...this.#records.keys(), ...this.#unreadFiles()])].sort();
    return this.#sorted;
  }

  /** Whether any file exports `key`. */
  isExported(key: IndexKey): boolean {
    if (this.#exporters.has(key)) return true;
    return this.#unread !== undefined && this.exporters(key).length > 0;
  }

  /** The files that export `key`, in the order of `files()`. */
  exporters(key: IndexKey): readonly FileRecord[] {
    for (const file of this.#unread?.exporters(key) ?? []) this.record(file);
    return this.#exporters.inOrder(key);
  }

  /** The readable entities that export `key`, in the order of `files()`. */
  entities(key: IndexKey): readonly AnyEntity[] {
    const known = this.#entities.get(key);
    if (known !== undefined) return known;
    const made = this.exporters(key).flatMap(({ entity }) => entity ?? []);
    this.#entities.set(key, made);
    return made;
  }

  /** The ids of a kind, those of unreadable files included, in the order of `files()`. */
  ids(kind: Kind): ReadonlySet<string> {
    const key = kindKey(kind);
    const known = this.#ids.get(key);
    if (known !== undefined) return known;
    const ids = new Map<FileId, string>();
    for (const [file, id] of this.#unread?.idsOf(kind) ?? []) if (this.#isUnread(file)) ids.set(file, id);
    for (const { file, id } of this.#exporters.of(key)) if (id !== undefined) ids.set(file, id);
    const made = new Set(inOrderOfFiles(ids));
    this.#ids.set(key, made);
    return made;
  }

  /**
   * The ids of files of a kind that may export `key`, in the order of `files()`. No file is read for it: perhaps one too many, never one too
   * few.
   */
  idsExporting(key: IndexKey, kind: Kind): readonly string[] {
    const ids = new Map<FileId, string>();
    for (const file of this.#unread?.exporters(key) ?? []) {
      const id = this.#isUnread(file) ? this.#unread?.idOf(file, kind) : undefined;
      if (id !== undefined) ids.set(file, id);
    }
    for (const record of this.#exporters.of(key))
      if (record.kind === kind && record.id !== undefined) ids.set(record.file, record.id);
    return inOrderOfFiles(ids);
  }

  #isUnread(file: FileId): boolean {
    return this.#unread?.has(file) === true && !this.#records.has(file) && !this.#deleted.has(file);
  }

  *#unreadFiles(): Iterable<FileId> {
    for (const file of this.#unread?.files() ?? []) if (this.#isUnread(file)) yield file;
  }

  #take(record: FileRecord): void {
    this.#records.set(record.file, record);
    for (const key of record.exports) this.#export(key, record);
  }

  #forgetLists(key: IndexKey): void {
    this.#entities.delete(key);
    this.#ids.delete(key);
  }

  #export(key: IndexKey, record: FileRecord): void {
    this.#forgetLists(key);
    this.#exporters.add(key, record);
  }

  /** Most edits leave the keys as they are; then the lists of thousands stay too, with the one entity in its place. */
  #replace(old: FileRecord, record: FileRecord): void {
    const now = new Set(record.exports);
    for (const key of old.exports) if (!now.has(key)) this.#unexport(key, old);
    this.#records.set(record.file, record);
    for (const key of record.exports) {
      const list = this.#entities.get(key);
      const place = old.entity === undefined ? -1 : (list?.indexOf(old.entity) ?? -1);
      const ids = this.#ids.get(key);
      this.#export(key, record);
      if (list !== undefined && place >= 0 && record.entity !== undefined)
        this.#entities.set(key, list.with(place, record.entity));
      if (ids !== undefined && old.kind === record.kind && old.id === record.id) this.#ids.set(key, ids);
    }
  }

  #unexport(key: IndexKey, { file }: FileRecord): void {
    this.#forgetLists(key);
    this.#exporters.remove(key, file);
  }
}

function inOrderOfFiles(ids: ReadonlyMap<FileId, string>): readonly string[] {
  return [...ids].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, id]) => id);
}

/** What a change from the one to the other changes for readers. */
export function changedKeys(before: FileFacts | undefined, after: FileFacts | undefined): ReadonlySet<IndexKey> {
  const keys = new Set<IndexKey>([...(before?.exports ?? []), ...(after?.exports ?? [])]);
  const idStays = before?.kind === after?.kind && before?.id === after?.id;
  if (idStays) return keys;
  if (before?.kind !== undefined) keys.add(idsKey(before.kind));
  if (after?.kind !== undefined) keys.add(idsKey(after.kind));
  return keys;
}

type FileFacts = Pick<FileRecord, 'kind' | 'id' | 'exports'>;
