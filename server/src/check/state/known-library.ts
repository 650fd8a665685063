import { HeldAnswers, noAnswers } from './known-answers.ts';
import {
  type AboutState,
  type Families,
  type FirstState,
  filesNamed,
  type Keeps,
  type LaterState,
  nothingFirst,
} from './library-state.ts';
import { placesIn } from './number-index.ts';

/** A library as an earlier check left it, by the places of its files in order of their ids. */
export class KnownLibrary {
  readonly first: FirstState;
  readonly later: LaterState | undefined;
  readonly answers: HeldAnswers;
  #files: readonly string[] | undefined;
  #placesOfFacts: Places | undefined;
  #placesOfJudgements: Places | undefined;

  constructor(first: FirstState, later?: LaterState) {
    this.first = first;
    this.later = later;
    this.answers = new HeldAnswers(first.answers, later?.answers ?? { gone: new Set(), added: noAnswers });
  }

  get names(): string {
    return this.later?.names || this.first.names;
  }

  get count(): number {
    return this.later?.factsAt.length ?? this.first.facts.traits.length;
  }

  get files(): readonly string[] {
    this.#files ??= filesNamed(this.names);
    return this.#files;
  }

  get about(): AboutState {
    return (this.later ?? this.first).about;
  }

  get families(): Families {
    return [...this.#still(this.first.families), ...(this.later?.families ?? [])];
  }

  get keeps(): Keeps {
    return [...this.#still(this.first.keeps), ...(this.later?.keeps ?? [])];
  }

  traits(place: number): number {
    const at = this.factsAt(place);
    return (at < 0 ? this.later?.facts.traits[-1 - at] : this.first.facts.traits[at]) ?? 0;
  }

  id(place: number): string {
    const at = this.factsAt(place);
    return (at < 0 ? this.later?.facts.ids[-1 - at] : this.first.facts.ids[at]) ?? '';
  }

  exports(place: number): Uint32Array {
    const at = this.factsAt(place);
    return at < 0 ? (this.later ?? this.first).facts.exports.row(-1 - at) : this.first.facts.exports.row(at);
  }

  content(place: number): Uint8Array {
    const { bytes, from, to } = this.contentIn(place);
    return bytes.subarray(from, to);
  }

  /** Where the content lies. */
  contentIn(place: number): { readonly bytes: Uint8Array; readonly from: number; readonly to: number } {
    const at = this.factsAt(place);
    const { contents } = at < 0 ? (this.later ?? this.first).facts : this.first.facts;
    const row = at < 0 ? -1 - at : at;
    return { bytes: contents.values, from: contents.from(row), to: contents.to(row) };
  }

  reads(place: number): Uint32Array {
    const at = this.judgedAt(place);
    return at < 0 ? (this.later ?? this.first).judgements.reads.row(-1 - at) : this.first.judgements.reads.row(at);
  }

  findings(place: number): Uint8Array {
    const at = this.judgedAt(place);
    const { findings } = at < 0 ? (this.later ?? this.first).judgements : this.first.judgements;
    return findings.row(at < 0 ? -1 - at : at);
  }

  /** Its place in the first state, or -1 - its place among what is told later. */
  factsAt(place: number): number {
    return this.later === undefined ? place : (this.later.factsAt[place] ?? -1);
  }

  judgedAt(place: number): number {
    return this.later === undefined ? place : (this.later.judgedAt[place] ?? -1);
  }

  /** The files that export the key of this number. */
  exporters(key: number): readonly number[] {
    const { first, later } = this;
    const places = placesIn(first.exporters, key);
    if (later === undefined) return places;
    this.#placesOfFacts ??= new Places(later.factsAt, first.facts.traits.length);
    return this.#placesOfFacts.of(places, later.facts.exports, key);
  }

  /** The files whose findings rest on it. */
  readers(key: number): readonly number[] {
    const { first, later } = this;
    const places = placesIn(first.readers, key);
    if (later === undefined) return places;
    this.#placesOfJudgements ??= new Places(later.judgedAt, first.facts.traits.length);
    return this.#placesOfJudgements.of(places, later.judgements.reads, key);
  }

  /** What still holds of the first state. */
  #still<Row extends readonly [file: string, ...rest: unknown[]]>(rows: readonly Row[]): readonly Row[] {
    const { later, first } = this;
    if (later === undefined || rows.length === 0) return rows;
    const files = filesNamed(first.names);
    const hold = new Uint8Array(files.length);
    for (const at of later.factsAt) if (at >= 0) hold[at] = 1;
    const gone = new Set(files.filter((_, at) => hold[at] === 0));
    return rows.filter(([file]) => !gone.has(file));
  }
}

/** The way back: from what is told of a file to the place of the file now. */
class Places {
  readonly #ofFirst: Int32Array;
  readonly #ofLater: number[] = [];

  constructor(at: Int32Array, first: number) {
    this.#ofFirst = new Int32Array(first).fill(-1);
    for (let place = 0; place < at.length; place++) {
      const where = at[place] ?? 0;
      if (where < 0) this.#ofLater[-1 - where] = place;
      else this.#ofFirst[where] = place;
    }
  }

  of(first: readonly number[], later: { eachWith(key: number, tell: (row: number) => void): void }, key: number) {
    const places: number[] = [];
    for (const one of first) {
      const place = this.#ofFirst[one] ?? -1;
      if (place >= 0) places.push(place);
    }
    later.eachWith(key, (row) => {
      const place = this.#ofLater[row];
      if (place !== undefined) places.push(place);
    });
    return places;
  }
}

export const nothingKnown = new KnownLibrary(nothingFirst);
