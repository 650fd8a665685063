import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { Engine } from '../engine.ts';
import type { Elsewhere } from '../together/elsewhere.ts';
import type { Reached } from './affected.ts';
import { familiesOf, keepsOf } from './details.ts';
import { KeyHashes } from './key-hash.ts';
import type { KnownLibrary } from './known-library.ts';
import type { AboutState, FileFacts, FirstState, Judgements, LaterState } from './library-state.ts';
import { nothingFirst } from './library-state.ts';
import { answersGiven, firstAnswers, laterAnswers } from './next-answers.ts';
import { indexOf } from './number-index.ts';
import { RowsWriter } from './rows.ts';
import { traitsOf, withContent } from './traits.ts';

/** A file that was read now: it is new or has other content. */
export interface FreshFile {
  readonly record: FileRecord;
  readonly text: 'opened' | 'not-opened';
  /** See `FileFacts`. */
  readonly content: { readonly is: 'plain' | 'odd'; readonly bytes: Uint8Array };
}

/** What became of the library since what is known. */
export interface Step {
  readonly known: KnownLibrary;
  readonly names: string;
  readonly files: readonly FileId[];
  /** For each file its place in what is known, where its content is the same; else -1. */
  readonly was: Int32Array;
  /** By their places among the files. */
  readonly fresh: ReadonlyMap<number, FreshFile>;
  readonly reached: Reached;
  readonly engine: Engine;
  readonly elsewhere: Elsewhere;
}

/** What is to be said of files that were judged now. */
export interface JudgedNow {
  /** What was found, in the form in which it is kept. */
  findings(file: FileId): Uint8Array;
  /** A file that must be looked at anew the next time. */
  isDoubtful(file: FileId): boolean;
}

/** The library as it is now, told by what was first kept and what is new. */
export function laterState(step: Step, about: AboutState, now: JudgedNow): LaterState {
  const { known, names, engine, elsewhere, reached } = step;
  const hashes = new KeyHashes();
  const given = [answersGiven(engine.answers(), hashes), ...elsewhere.answers()];
  return {
    names: names === known.first.names ? '' : names,
    ...factsNow(step, now, hashes),
    ...judgementsNow(step, now, hashes),
    answers: laterAnswers(known.answers, reached.answers, given),
    about,
  };
}

type FactsNow = Pick<LaterState, 'factsAt' | 'facts' | 'families' | 'keeps'>;

function factsNow(step: Step, now: JudgedNow, hashes: KeyHashes): FactsNow {
  const { known, files, was, fresh } = step;
  const factsAt = new Int32Array(files.length);
  const writer = new FactsWriter();
  const carried = new Set<string>();
  let areOfFirst = false;
  for (const [at, file] of files.entries()) {
    const place = was[at] ?? -1;
    const one = fresh.get(at);
    const isDoubtful = now.isDoubtful(file);
    const first = place < 0 || isDoubtful ? -1 : known.factsAt(place);
    factsAt[at] = first < 0 ? -1 - writer.count : first;
    if (first >= 0) continue;
    if (one === undefined) carried.add(file);
    areOfFirst ||= one === undefined && known.factsAt(place) >= 0;
    const facts = one === undefined ? factsOf(known, place) : factsOfFresh(one, hashes);
    writer.add(isDoubtful ? { ...facts, traits: withContent(facts.traits, 'odd'), content: new Uint8Array() } : facts);
  }
  const { families, keeps } = areOfFirst ? known : (known.later ?? nothingFirst);
  const records = [...fresh.values()].map(({ record }) => record);
  return {
    factsAt,
    facts: writer.done(),
    families: [...families.filter(([file]) => carried.has(file)), ...familiesOf(records)],
    keeps: [...keeps.filter(([file]) => carried.has(file)), ...keepsOf(records)],
  };
}

interface Facts {
  readonly traits: number;
  readonly id: string;
  readonly exports: ArrayLike<number>;
  readonly content: Uint8Array;
}

function factsOf(known: KnownLibrary, place: number): Facts {
  return {
    traits: known.traits(place),
    id: known.id(place),
    exports: known.exports(place),
    content: known.content(place),
  };
}

function factsOfFresh({ record, text, content }: FreshFile, hashes: KeyHashes): Facts {
  return {
    traits: withContent(traitsOf(record, text), content.is),
    id: record.id ?? '',
    exports: hashes.of(record.exports),
    content: content.bytes,
  };
}

class FactsWriter {
  readonly #traits: number[] = [];
  readonly #ids: string[] = [];
  readonly #exports = new RowsWriter<Uint32Array>(Uint32Array);
  readonly #contents = new RowsWriter<Uint8Array>(Uint8Array);

  get count(): number {
    return this.#ids.length;
  }

  add({ traits, id, exports, content }: Facts): void {
    this.#traits.push(traits);
    this.#ids.push(id);
    this.#exports.add(exports);
    this.#contents.add(content);
  }

  done(): FileFacts {
    return {
      traits: Uint32Array.from(this.#traits),
      ids: this.#ids,
      exports: this.#exports.done(),
      contents: this.#contents.done(),
    };
  }
}

function judgementsNow(
  { known, files, was, reached, engine, elsewhere }: Step,
  now: JudgedNow,
  hashes: KeyHashes,
): Pick<LaterState, 'judgedAt' | 'judgements'> {
  const judgedAt = new Int32Array(files.length);
  const reads = new RowsWriter<Uint32Array>(Uint32Array);
  const findings = new RowsWriter<Uint8Array>(Uint8Array);
  let count = 0;
  for (const [at, file] of files.entries()) {
    const place = was[at] ?? -1;
    const isSettled = place >= 0 && !reached.files.has(place);
    const first = isSettled ? known.judgedAt(place) : -1;
    judgedAt[at] = first < 0 ? -1 - count++ : first;
    if (first >= 0) continue;
    reads.add(isSettled ? known.reads(place) : (elsewhere.reads(file) ?? hashes.of(engine.readsOf(file))));
    findings.add(isSettled ? known.findings(place) : now.findings(file));
  }
  return { judgedAt, judgements: { reads: reads.done(), findings: findings.done() } };
}

/** The same as if it were kept for the first time. */
export function firstState(known: KnownLibrary): FirstState {
  const { names, about, families, keeps, later } = known;
  // All of it is new: nothing has to be brought together.
  const isNew = known.first === nothingFirst && later !== undefined;
  const { facts, judgements } = isNew ? later : gathered(known);
  return {
    names,
    about,
    families,
    keeps,
    facts,
    judgements,
    exporters: indexOf(facts.exports),
    readers: indexOf(judgements.reads),
    answers: firstAnswers(known.answers),
  };
}

function gathered(known: KnownLibrary): { readonly facts: FileFacts; readonly judgements: Judgements } {
  const writer = new FactsWriter();
  const reads = new RowsWriter<Uint32Array>(Uint32Array);
  const findings = new RowsWriter<Uint8Array>(Uint8Array);
  for (let place = 0; place < known.count; place++) {
    writer.add(factsOf(known, place));
    reads.add(known.reads(place));
    findings.add(known.findings(place));
  }
  return { facts: writer.done(), judgements: { reads: reads.done(), findings: findings.done() } };
}
