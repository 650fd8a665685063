import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { KeptFile } from '../../library/kept-file.ts';
import type { IndexKey } from '../../library/keys.ts';
import type { UnreadFiles } from '../../library/unread-files.ts';
import type { Kind } from '../../schema/kinds.ts';
import { hashOf } from './key-hash.ts';
import type { LibraryState } from './library-state.ts';
import { kindIn } from './traits.ts';

/** How to open what rests, by its place in the state. */
export interface Opening {
  read(place: number): FileRecord;
  keptFile(path: string): KeptFile | undefined;
}

/** The files of a state whose content is still the same, as a library rests on them. */
export class RestingFiles implements UnreadFiles {
  readonly #state: LibraryState;
  readonly #places: ReadonlyMap<FileId, number>;
  readonly #opening: Opening;
  #index: ExportIndex | undefined;

  /** `same`: the places in the state of the files that are as they were. */
  constructor(state: LibraryState, same: Iterable<number>, opening: Opening) {
    this.#state = state;
    this.#opening = opening;
    this.#places = new Map([...same].map((place) => [state.files[place] as FileId, place]));
  }

  has(file: FileId): boolean {
    return this.#places.has(file);
  }

  files(): Iterable<FileId> {
    return this.#places.keys();
  }

  *exporters(key: IndexKey): Iterable<FileId> {
    this.#index ??= new ExportIndex(this.#state);
    for (const place of this.#index.placesOf(hashOf(key))) {
      const file = this.#state.files[place] as FileId;
      if (this.#places.has(file)) yield file;
    }
  }

  *idsOf(kind: Kind): Iterable<readonly [FileId, string]> {
    for (const file of this.#places.keys()) {
      const id = this.idOf(file, kind);
      if (id !== undefined) yield [file, id];
    }
  }

  idOf(file: FileId, kind: Kind): string | undefined {
    const place = this.#places.get(file) ?? -1;
    const id = this.#state.ids[place] ?? '';
    return id !== '' && kindIn(this.#state.traits[place] ?? 0) === kind ? id : undefined;
  }

  read(file: FileId): FileRecord {
    return this.#opening.read(this.#places.get(file) ?? -1);
  }

  keptFile(path: string): KeptFile | undefined {
    return this.#opening.keptFile(path);
  }
}

/** Who exports the key of a number: chains of places in one table, made in a single pass. */
class ExportIndex {
  readonly #values: Uint32Array;
  readonly #owners: Uint32Array;
  readonly #first: Int32Array;
  readonly #next: Int32Array;
  readonly #mask: number;

  constructor({ exports }: LibraryState) {
    const { values, ends } = exports;
    const size = 1 << Math.ceil(Math.log2(Math.max(16, values.length)));
    this.#mask = size - 1;
    this.#values = values;
    this.#first = new Int32Array(size).fill(-1);
    this.#next = new Int32Array(values.length);
    this.#owners = new Uint32Array(values.length);
    let at = 0;
    for (let place = 0; place < ends.length; place++) {
      for (const end = ends[place] ?? 0; at < end; at++) {
        const slot = (values[at] ?? 0) & this.#mask;
        this.#owners[at] = place;
        this.#next[at] = this.#first[slot] ?? -1;
        this.#first[slot] = at;
      }
    }
  }

  *placesOf(hash: number): Iterable<number> {
    for (let at = this.#first[hash & this.#mask] ?? -1; at >= 0; at = this.#next[at] ?? -1)
      if (this.#values[at] === hash) yield this.#owners[at] ?? 0;
  }
}
