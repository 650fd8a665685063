import type { IsoDate } from '../base/brand.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind } from '../model/entity.ts';
import type { Kind } from '../schema/kinds.ts';
import type { KeptFile } from './kept-file.ts';
import type { IndexKey } from './keys.ts';
import {
  answerKey,
  answersKey,
  catalogueKey,
  documentKey,
  entityKey,
  forManyKey,
  idsKey,
  keptKey,
  kindKey,
  usersKey,
} from './keys.ts';
import type { Library } from './library.ts';
import type { WhenNoted } from './readers.ts';
import { Readers } from './readers.ts';

export type SterilizerCycle = NonNullable<EntityOf['sterilizer']['cycles']>['items'][number];
export type WasherCycle = NonNullable<EntityOf['washer']['cycles']>['items'][number];

/**
 * A reader's window on the library: every look-up is written down in `reads`, found or not, so that the reader can be judged again
 * when an answer could change. All lists come in file order. `all` makes a reader depend on every file of a kind: keep it to small
 * kinds (site, sterilizer, packaging, ...) and use the narrower look-ups for devices and sets.
 */
export class LibraryView {
  readonly #library: Library;
  readonly #reads: Set<IndexKey>;
  readonly #answers: QueryAnswers;
  readonly #own = new OwnAnswers();

  constructor(library: Library, reads: Set<IndexKey>, answers: QueryAnswers) {
    this.#library = library;
    this.#reads = reads;
    this.#answers = answers;
  }

  /** Today, an input of the whole run: what is qualified, discontinued or expired depends on it. */
  get today(): IsoDate {
    return this.#answers.today;
  }

  /** The entity of this kind and id; the first in file order when two files claim the id. */
  get<K extends Kind>(kind: K, id: string): EntityOf[K] | undefined {
    for (const entity of this.#entities(entityKey(kind, id))) if (isOfKind(entity, kind)) return entity;
    return undefined;
  }

  /** All entities that claim this id (more than one is a finding). */
  claimants<K extends Kind>(kind: K, id: string): readonly EntityOf[K][] {
    return this.#ofKind(this.#entities(entityKey(kind, id)), kind);
  }

  all<K extends Kind>(kind: K): readonly EntityOf[K][] {
    // Only entities of the kind export this key.
    return this.#entities(kindKey(kind)) as unknown as readonly EntityOf[K][];
  }

  /** The ids of a kind, those of unreadable files included. */
  ids(kind: Kind): ReadonlySet<string> {
    this.#reads.add(idsKey(kind));
    return this.#library.ids(kind);
  }

  /** True also when the file that holds the id can't be read. */
  exists(kind: Kind, id: string): boolean {
    const key = entityKey(kind, id);
    this.#reads.add(key);
    return this.#library.isExported(key);
  }

  /** The sterilizer that has a cycle of this id, with the cycle. */
  sterilizerCycle(id: string): { machine: EntityOf['sterilizer']; cycle: SterilizerCycle } | undefined {
    for (const machine of this.#ofKind(this.#entities(entityKey('cycle', id)), 'sterilizer')) {
      const cycle = machine.cycles?.items.find((one) => one.id?.text === id);
      if (cycle !== undefined) return { machine, cycle };
    }
    return undefined;
  }

  /** The washer that has a cycle of this id, with the cycle. */
  washerCycle(id: string): { machine: EntityOf['washer']; cycle: WasherCycle } | undefined {
    for (const machine of this.#ofKind(this.#entities(entityKey('washer-cycle', id)), 'washer')) {
      const cycle = machine.cycles?.items.find((one) => one.id?.text === id);
      if (cycle !== undefined) return { machine, cycle };
    }
    return undefined;
  }

  /** Entities of `of` that name this entity (or cycle, document number, or rule) anywhere. */
  users<K extends Kind>(
    kind: Kind | 'cycle' | 'washer-cycle' | 'document-number' | 'rule',
    id: string,
    of: K,
  ): readonly EntityOf[K][] {
    return this.#ofKind(this.#entities(usersKey(kind, id)), of);
  }

  /**
   * Ids of entities of `of` that may name this entity, in file order: perhaps one too many. For whoever asks each of them by its id what it
   * names, so that those of which the answer is known need not be read.
   */
  idsOfUsers(kind: Kind | 'cycle' | 'washer-cycle', id: string, of: Kind): readonly string[] {
    const key = usersKey(kind, id);
    this.#reads.add(key);
    return this.#library.idsExporting(key, of);
  }

  /** Procedures for everything or for a trait: those that name no device. */
  proceduresForMany(): readonly EntityOf['procedure'][] {
    return this.#ofKind(this.#entities(forManyKey()), 'procedure');
  }

  /**
   * Answers of makers, by the id of what they are about. Not written down, and so good for as long as the library: an answer that changes
   * changes what it is about, which whoever judges that has read.
   */
  answersOfMakers(): (id: string) => readonly EntityOf['response'][] {
    return (id) => this.#ofKind(this.#library.entities(answersKey(id)), 'response');
  }

  /** Registered revisions of a document number. */
  revisions(documentNumber: string): readonly EntityOf['document'][] {
    return this.#ofKind(this.#entities(documentKey(documentNumber)), 'document');
  }

  /** Devices whose `covers` could overlap this catalogue number: those that share its leading letters. */
  devicesNear(catalogueNumber: string): readonly EntityOf['device'][] {
    return this.#ofKind(this.#entities(catalogueKey(catalogueNumber)), 'device');
  }

  /** What a file that rule files name holds; undefined where nobody has looked. `path` is below the library's root. */
  keptFile(path: string): KeptFile | undefined {
    this.#reads.add(keptKey(path));
    return this.#library.keptFile(path);
  }

  /** The department: the first site file that can be read, if there is one. Whoever asks does not depend on what other sites' files say. */
  site(): EntityOf['site'] | undefined {
    for (const id of this.ids('site')) {
      const site = this.get('site', id);
      if (site !== undefined) return site;
    }
    return undefined;
  }

  /** The answer to a question that several readers share, worked out once until something it read changes. */
  ask<Argument extends string, Answer>(query: Query<Argument, Answer>, argument: Argument): Answer {
    const known = this.#own.of(query, this.#library.changes);
    if (known.has(argument)) return known.get(argument) as Answer;
    const { answer, key } = this.#answers.answer(query, argument, this.#library);
    this.#reads.add(key);
    known.set(argument, answer);
    return answer;
  }

  /**
   * What several rules work out of one thing on their way, made once for this reader and for as long as nothing in the library changes: what
   * it rests on has been written down the first time.
   */
  once<About extends object, Answer>(work: (about: About, view: LibraryView) => Answer, about: About): Answer {
    const known = this.#own.of(work, this.#library.changes);
    if (!known.has(about)) known.set(about, work(about, this));
    return known.get(about) as Answer;
  }

  #entities(key: IndexKey): readonly AnyEntity[] {
    this.#reads.add(key);
    return this.#library.entities(key);
  }

  #ofKind<K extends Kind>(entities: readonly AnyEntity[], kind: K): readonly EntityOf[K][] {
    // Most keys are exported by one kind alone: the list that the library holds will do.
    const isAll = entities.every((entity) => isOfKind(entity, kind));
    return (isAll ? entities : entities.filter((entity) => isOfKind(entity, kind))) as readonly EntityOf[K][];
  }
}

/** What one reader was told or worked out for itself, by the question or the function that does it, and by what it is about. */
class OwnAnswers {
  readonly #answers = new Map<unknown, Map<unknown, unknown>>();
  #changes = 0;

  of(work: unknown, changes: number): Map<unknown, unknown> {
    if (this.#changes !== changes) this.#answers.clear();
    this.#changes = changes;
    let answers = this.#answers.get(work);
    if (answers === undefined) {
      answers = new Map();
      this.#answers.set(work, answers);
    }
    return answers;
  }
}

/** A shared, pure question about the library, such as "the route of this set". Named uniquely. */
export interface Query<Argument extends string, Answer> {
  readonly name: string;
  work(view: LibraryView, argument: Argument): Answer;
  /**
   * All that a reader can see of the answer, in few words: where a change leaves them as they were, whoever used the answer need not be
   * judged again, and from them it is had again without being worked out. Undefined for an answer that holds more.
   */
  readonly brief?: Brief<Answer>;
}

export interface Brief<Answer> {
  inWords(answer: Answer): string | undefined;
  fromWords(words: string): Answer;
}

/** An answer that was worked out, with what it rests on. */
export interface GivenAnswer {
  readonly answer: unknown;
  readonly key: IndexKey;
  /** Each once. */
  readonly reads: readonly IndexKey[];
  readonly query: string;
  readonly argument: string;
  readonly words: string | undefined;
}

type RestoredAnswer = Pick<GivenAnswer, 'answer' | 'key'>;

/** A query whose answer is worked out by a higher layer than the one that asks: whether a file can be trusted is known to the rules only. */
export interface SuppliedQuery {
  readonly name: string;
  work(view: LibraryView, argument: string): unknown;
}

/** Answers already worked out, each with what it read. */
export class QueryAnswers {
  readonly today: IsoDate;
  readonly #supplied: ReadonlyMap<string, SuppliedQuery>;
  /** By their keys. */
  readonly #kept = new Map<IndexKey, GivenAnswer>();
  readonly #readers: Readers<IndexKey>;
  /** Those that were dropped and not asked for since: what they read the last time is still remembered. */
  readonly #dropped = new Set<IndexKey>();
  #wordsOf: ((query: string, argument: string) => string | undefined) | undefined;
  readonly #resting = new Map<IndexKey, RestoredAnswer>();

  /** `supplied` stand in for the queries of the same name; their answers must have the same form. */
  constructor(today: IsoDate, supplied: readonly SuppliedQuery[] = [], noted: WhenNoted = 'at-once') {
    this.today = today;
    this.#readers = new Readers(noted);
    this.#supplied = new Map(supplied.map((query) => [query.name, query]));
  }

  answer<Argument extends string, Answer>(
    query: Query<Argument, Answer>,
    argument: Argument,
    library: Library,
  ): { answer: Answer; key: IndexKey } {
    const key = answerKey(query.name, argument);
    const kept = this.#kept.get(key) ?? this.#restored(query, argument, key);
    if (kept !== undefined) return kept as { answer: Answer; key: IndexKey };
    const noted = new Set<IndexKey>();
    const asked = this.#supplied.get(query.name) ?? query;
    const answer = asked.work(new LibraryView(library, noted, this), argument) as Answer;
    const words = query.brief?.inWords(answer);
    const reads = [...noted];
    this.#kept.set(key, { answer, key, reads, query: query.name, argument, words });
    this.#readers.put(key, reads);
    this.#dropped.delete(key);
    return { answer, key };
  }

  /** Drops every answer that read one of these keys, or an answer so dropped. Returns the keys with those of the dropped answers. */
  forget(changed: ReadonlySet<IndexKey>): ReadonlySet<IndexKey> {
    const keys = new Set(changed);
    // A set that grows while it is walked: what is added is met too.
    for (const key of keys) {
      for (const answer of this.#readers.of(key)) {
        // Of one dropped before, everything that rests on it was told then.
        if (!this.#kept.delete(answer)) continue;
        keys.add(answer);
        this.#dropped.add(answer);
      }
    }
    this.#forgetDropped();
    return keys;
  }

  /** Answers worked out before that still hold, in words. Only once, and before anything was asked. */
  rest(wordsOf: (query: string, argument: string) => string | undefined): void {
    this.#wordsOf = wordsOf;
  }

  #restored<Answer>(query: Query<never, Answer>, argument: string, key: IndexKey): RestoredAnswer | undefined {
    if (query.brief === undefined || this.#wordsOf === undefined) return undefined;
    const known = this.#resting.get(key);
    if (known !== undefined) return known;
    const words = this.#wordsOf(query.name, argument);
    if (words === undefined) return undefined;
    const restored = { answer: query.brief.fromWords(words), key };
    this.#resting.set(key, restored);
    return restored;
  }

  /** Those worked out here; what was had from words is known to whoever gave the words. */
  given(): Iterable<GivenAnswer> {
    return this.#kept.values();
  }

  /** Questions that nobody asks any more (about ids that were typed letter by letter) don't pile up. */
  #forgetDropped(): void {
    if (this.#dropped.size < this.#kept.size + mostDropped) return;
    for (const answer of this.#dropped) this.#readers.forget(answer);
    this.#dropped.clear();
  }
}

const mostDropped = 1_000;
