import type { GivenAnswer } from '../../library/view.ts';
import type { KeyHashes } from './key-hash.ts';
import type { BriefAnswer, KnownAnswers } from './library-state.ts';
import { RowsWriter } from './rows.ts';

/** The answers given now as they are kept. */
export function answersGiven(given: Iterable<GivenAnswer>, hashes: KeyHashes): KnownAnswers {
  const writer = new AnswersWriter();
  for (const { key, reads, query, argument, words } of given)
    writer.add(hashes.one(key), hashes.of(reads), words === undefined ? undefined : [query, argument, words]);
  return writer.done();
}

/**
 * The answers that still hold, and those given now, be it by several who worked beside each other. Two answers may share the number of
 * their key, so one is never taken to be another unless it rests on the very same. What was given now is in the order of its numbers,
 * whoever gave it and when.
 */
export function nextAnswers(
  before: KnownAnswers,
  reached: ReadonlySet<number>,
  given: readonly KnownAnswers[],
): KnownAnswers {
  const asked = new Set(given.flatMap(({ keys }) => [...keys]));
  const held = new Set<string>();
  for (const [place, key] of before.keys.entries())
    if (asked.has(key) && !reached.has(place)) held.add(nameOf(key, before.reads.row(place)));
  const writer = new AnswersWriter();
  writer.addAllBut(reached, before);
  const fresh = given.flatMap((answers) => [...answersIn(answers)]);
  for (const { key, row, brief } of fresh.sort((a, b) => a.key - b.key || inOrder(a.row, b.row))) {
    const name = nameOf(key, row);
    if (!held.has(name)) writer.add(key, row, brief);
    held.add(name);
  }
  return writer.done();
}

type BriefWords = readonly [query: string, argument: string, words: string];

interface AnswerRow {
  readonly key: number;
  readonly row: Uint32Array;
  readonly brief: BriefWords | undefined;
}

function* answersIn({ keys, reads, brief }: KnownAnswers): Iterable<AnswerRow> {
  const words = new Map(brief.map(([place, ...others]): [number, BriefWords] => [place, others]));
  for (const [place, key] of keys.entries()) yield { key, row: reads.row(place), brief: words.get(place) };
}

class AnswersWriter {
  readonly #keys: number[] = [];
  readonly #reads = new RowsWriter<Uint32Array>(Uint32Array);
  readonly #brief: BriefAnswer[] = [];

  add(key: number, row: ArrayLike<number>, brief: BriefWords | undefined): void {
    if (brief !== undefined) this.#brief.push([this.#keys.length, ...brief]);
    this.#keys.push(key);
    this.#reads.add(row);
  }

  /** Those at all places but a few, in stretches: there are tens of thousands. */
  addAllBut(few: ReadonlySet<number>, { keys, reads, brief }: KnownAnswers): void {
    const places = new Uint32Array(keys.length);
    let from = 0;
    for (let place = 0; place <= keys.length; place++) {
      const key = few.has(place) ? undefined : keys[place];
      if (key !== undefined) places[place] = this.#keys.push(key) - 1;
      else {
        this.#reads.addRows(reads, from, place);
        from = place + 1;
      }
    }
    for (const [place, ...words] of brief) if (!few.has(place)) this.#brief.push([places[place] ?? 0, ...words]);
  }

  done(): KnownAnswers {
    return { keys: Uint32Array.from(this.#keys), reads: this.#reads.done(), brief: this.#brief };
  }
}

function nameOf(key: number, reads: ArrayLike<number>): string {
  return `${key}:${Array.prototype.join.call(reads, ',')}`;
}

function inOrder(a: Uint32Array, b: Uint32Array): number {
  for (let at = 0; at < a.length && at < b.length; at++) {
    const difference = (a[at] ?? 0) - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}
