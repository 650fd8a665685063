import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { KeptFile } from '../../library/kept-file.ts';
import type { IndexKey } from '../../library/keys.ts';
import type { UnreadFiles } from '../../library/unread-files.ts';
import type { Kind } from '../../schema/kinds.ts';
import { hashOf } from './key-hash.ts';
import type { KnownLibrary } from './known-library.ts';
import { kindIn } from './traits.ts';

/** How to open what rests, by its place in what is known. */
export interface Opening {
  read(place: number): FileRecord;
  keptFile(path: string): KeptFile | undefined;
}

/** The known files whose content is still the same, as a library rests on them. */
export class RestingFiles implements UnreadFiles {
  readonly #known: KnownLibrary;
  readonly #isSame: Uint8Array;
  readonly #opening: Opening;
  #places: ReadonlyMap<string, number> | undefined;

  /** `same`: the places of the files that are as they were; others, below nought, are passed over. */
  constructor(known: KnownLibrary, same: Iterable<number>, opening: Opening) {
    this.#known = known;
    this.#opening = opening;
    this.#isSame = new Uint8Array(known.count);
    for (const place of same) if (place >= 0) this.#isSame[place] = 1;
  }

  has(file: FileId): boolean {
    return this.#placeOf(file) >= 0;
  }

  *files(): Iterable<FileId> {
    for (const [place, file] of this.#known.files.entries()) if (this.#isSame[place] === 1) yield file as FileId;
  }

  *exporters(key: IndexKey): Iterable<FileId> {
    for (const place of this.#known.exporters(hashOf(key)))
      if (this.#isSame[place] === 1) yield this.#known.files[place] as FileId;
  }

  *idsOf(kind: Kind): Iterable<readonly [FileId, string]> {
    for (let place = 0; place < this.#known.count; place++) {
      const id = this.#isSame[place] === 1 ? this.#idAt(place, kind) : undefined;
      if (id !== undefined) yield [this.#known.files[place] as FileId, id];
    }
  }

  idOf(file: FileId, kind: Kind): string | undefined {
    return this.#idAt(this.#placeOf(file), kind);
  }

  read(file: FileId): FileRecord {
    return this.#opening.read(this.#placeOf(file));
  }

  keptFile(path: string): KeptFile | undefined {
    return this.#opening.keptFile(path);
  }

  #idAt(place: number, kind: Kind): string | undefined {
    if (place < 0 || kindIn(this.#known.traits(place)) !== kind) return undefined;
    const id = this.#known.id(place);
    return id === '' ? undefined : id;
  }

  /** -1 for a file that is new or has other content. */
  #placeOf(file: FileId): number {
    this.#places ??= new Map(this.#known.files.map((name, place) => [name, place]));
    const place = this.#places.get(file) ?? -1;
    return this.#isSame[place] === 1 ? place : -1;
  }
}
