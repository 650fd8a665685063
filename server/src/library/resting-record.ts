import type { EntityId, FileId } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Kind } from '../schema/kinds.ts';
import type { FileRecord } from './file-record.ts';
import { entityIn } from './file-record.ts';
import type { IndexKey } from './keys.ts';

/**
 * A record whose entity can be let go and is made again from the text when somebody asks: an entity takes a dozen times the memory of its
 * text, and most are needed only while the files beside them are judged. Not for a record whose entity says something else than its text.
 */
export class RestingRecord implements FileRecord {
  readonly file: FileId;
  readonly kind: Kind | undefined;
  readonly id: EntityId | undefined;
  readonly problems: readonly Problem[];
  readonly exports: ReadonlySet<IndexKey>;
  readonly #held: HeldRecords;
  #text: string | Uint8Array;
  #entity: AnyEntity | undefined;
  /** Whether there is an entity, be it in memory or not. */
  readonly isReadable: boolean;

  constructor(record: FileRecord, held: HeldRecords) {
    this.file = record.file;
    this.kind = record.kind;
    this.id = record.id;
    this.problems = record.problems;
    this.exports = record.exports;
    this.#held = held;
    if (record instanceof RestingRecord) {
      this.#text = record.#text;
      this.#entity = record.#entity;
      this.isReadable = record.isReadable;
    } else {
      this.#text = record.text;
      this.#entity = record.entity;
      this.isReadable = record.entity !== undefined;
    }
  }

  /** The same record for another library: what the one lets go the other keeps. */
  in(held: HeldRecords): RestingRecord {
    return held === this.#held ? this : new RestingRecord(this, held);
  }

  get text(): string {
    return typeof this.#text === 'string' ? this.#text : decoder.decode(this.#text);
  }

  get entity(): AnyEntity | undefined {
    if (this.#entity === undefined && this.isReadable) {
      this.#entity = entityIn(this.file, this.text);
      this.#held.add(this);
    }
    return this.#entity;
  }

  /** The entity for whoever looks at many files and keeps none: one that was let go stays so. */
  get inPassing(): AnyEntity | undefined {
    return this.#entity ?? (this.isReadable ? entityIn(this.file, this.text) : undefined);
  }

  /** Whether the entity is in memory. */
  get isAwake(): boolean {
    return this.#entity !== undefined;
  }

  letGo(): void {
    this.#entity = undefined;
    if (typeof this.#text === 'string' && !surrogate.test(this.#text)) this.#text = encoder.encode(this.#text);
  }
}

/** Half a pair of these has no form in bytes. */
const surrogate = /[\ud800-\udfff]/;
const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { ignoreBOM: true });

/** The records of one library whose entities are in memory. */
export class HeldRecords {
  readonly #records = new Set<RestingRecord>();

  get count(): number {
    return this.#records.size;
  }

  /** Counts the record, if it can rest and its entity is in memory. */
  add(record: FileRecord): void {
    if (record instanceof RestingRecord && record.isAwake) this.#records.add(record);
  }

  /** The library has the record no longer. */
  remove(record: FileRecord): void {
    if (record instanceof RestingRecord) this.#records.delete(record);
  }

  letGo(): void {
    for (const record of this.#records) record.letGo();
    this.#records.clear();
  }
}

/** What the record's file says, for whoever looks at many files and keeps none of their entities. */
export function readInPassing(record: FileRecord): AnyEntity | undefined {
  return record instanceof RestingRecord ? record.inPassing : record.entity;
}

/** Whether the record's file can be read as an entity, without reading it. */
export function isReadable(record: FileRecord): boolean {
  return record instanceof RestingRecord ? record.isReadable : record.entity !== undefined;
}

/** One small thing about each of many records, found out once a record and without keeping an entity for it. */
export class KnownOfRecords<Answer> {
  readonly #known = new WeakMap<FileRecord, Answer>();
  readonly #find: (entity: AnyEntity) => Answer;
  readonly #none: Answer;

  /** `none`: of a record without an entity. */
  constructor(find: (entity: AnyEntity) => Answer, none: Answer) {
    this.#find = find;
    this.#none = none;
  }

  of(record: FileRecord): Answer {
    const known = this.#known.get(record);
    if (known !== undefined) return known;
    const entity = readInPassing(record);
    const found = entity === undefined ? this.#none : this.#find(entity);
    this.#known.set(record, found);
    return found;
  }
}
