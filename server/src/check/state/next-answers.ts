import type { GivenAnswer } from '../../library/view.ts';
import type { KeyHashes } from './key-hash.ts';
import {
  briefBytes,
  type FirstAnswers,
  type HeldAnswers,
  type KnownAnswers,
  type LaterAnswers,
} from './known-answers.ts';
import { indexOf } from './number-index.ts';
import { RowsWriter } from './rows.ts';

/** The answers given now as they are kept. */
export function answersGiven(given: Iterable<GivenAnswer>, hashes: KeyHashes): KnownAnswers {
  const writer = new AnswersWriter();
  for (const { key, reads, query, argument, words } of given) {
    const brief = words === undefined ? new Uint8Array() : briefBytes({ query, argument, words });
    writer.add({ key: hashes.one(key), reads: hashes.of(reads), brief });
  }
  return writer.done();
}

/**
 * What became of the answers: those that a change reached hold no longer, and those given now come to them, be it by several who worked
 * beside each other. Two answers may share the number of their key, so one is never taken to be another unless it rests on the very same.
 */
export function laterAnswers(
  before: HeldAnswers,
  reached: ReadonlySet<number>,
  given: readonly KnownAnswers[],
): LaterAnswers {
  const gone = new Set(before.later.gone);
  const fresh: AnswerRow[] = [];
  const begin = before.first.keys.length;
  for (const place of reached) if (place < begin) gone.add(place);
  for (const at of before.later.added.keys.keys()) if (!reached.has(begin + at)) fresh.push(rowOf(before, begin + at));
  for (const row of given.flatMap(rowsOf)) {
    const isHeld = before
      .named(row.key)
      .some((place) => !reached.has(place) && isAlike(before.reads(place), row.reads));
    if (!isHeld) fresh.push(row);
  }
  return { gone, added: inOrder(fresh) };
}

/** All that hold, as if they were kept for the first time. */
export function firstAnswers(before: HeldAnswers): FirstAnswers {
  const all = inOrder([...before.all()].map((place) => rowOf(before, place)));
  return { ...all, readers: indexOf(all.reads) };
}

interface AnswerRow {
  readonly key: number;
  readonly reads: ArrayLike<number>;
  readonly brief: Uint8Array;
}

function rowsOf({ keys, reads, brief }: KnownAnswers): readonly AnswerRow[] {
  return [...keys].map((key, place) => ({ key, reads: reads.row(place), brief: brief.row(place) }));
}

function rowOf(held: HeldAnswers, place: number): AnswerRow {
  return { key: held.key(place), reads: held.reads(place), brief: held.briefBytes(place) };
}

/** In the order of their numbers, whoever gave them and when; each once. */
function inOrder(rows: readonly AnswerRow[]): KnownAnswers {
  const writer = new AnswersWriter();
  let last: AnswerRow | undefined;
  for (const row of rows.toSorted((a, b) => a.key - b.key || compared(a.reads, b.reads))) {
    if (last?.key !== row.key || !isAlike(last.reads, row.reads)) writer.add(row);
    last = row;
  }
  return writer.done();
}

class AnswersWriter {
  readonly #keys: number[] = [];
  readonly #reads = new RowsWriter<Uint32Array>(Uint32Array);
  readonly #brief = new RowsWriter<Uint8Array>(Uint8Array);

  add({ key, reads, brief }: AnswerRow): void {
    this.#keys.push(key);
    this.#reads.add(reads);
    this.#brief.add(brief);
  }

  done(): KnownAnswers {
    return { keys: Uint32Array.from(this.#keys), reads: this.#reads.done(), brief: this.#brief.done() };
  }
}

function isAlike(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  return a.length === b.length && compared(a, b) === 0;
}

function compared(a: ArrayLike<number>, b: ArrayLike<number>): number {
  for (let at = 0; at < a.length && at < b.length; at++) {
    const difference = (a[at] ?? 0) - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}
