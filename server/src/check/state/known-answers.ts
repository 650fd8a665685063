import { firstFrom, placesIn } from './number-index.ts';
import { Rows } from './rows.ts';

/** Answers that several readers share: those who used one rest on its key, and it rests on `reads`. */
export interface KnownAnswers {
  /** Numbers of their keys. */
  readonly keys: Uint32Array;
  readonly reads: Rows<Uint32Array>;
  /** Of those of which few words say all, these words; see `briefBytes`. Empty for the others. */
  readonly brief: Rows<Uint8Array>;
}

export const noAnswers: KnownAnswers = {
  keys: new Uint32Array(),
  reads: new Rows(new Uint32Array(), new Uint32Array()),
  brief: new Rows(new Uint32Array(), new Uint8Array()),
};

export interface BriefAnswer {
  readonly query: string;
  readonly argument: string;
  readonly words: string;
}

/** A sum stands before the text: these lists are looked at one by one, never as a whole. */
export function briefBytes({ query, argument, words }: BriefAnswer): Uint8Array {
  const text = new TextEncoder().encode(JSON.stringify([query, argument, words]));
  const sum = sumOf(text, 0);
  const bytes = new Uint8Array(text.length + sumLength);
  new DataView(bytes.buffer).setUint32(0, sum);
  bytes.set(text, sumLength);
  return bytes;
}

type BriefWords = readonly [query: string, argument: string, words: string];

const sumLength = 4;

/** Undefined for none, and for damaged ones: then the answer is worked out. */
export function briefIn(bytes: Uint8Array): BriefAnswer | undefined {
  if (bytes.length <= sumLength) return undefined;
  const sum = new DataView(bytes.buffer, bytes.byteOffset, sumLength).getUint32(0);
  if (sum !== sumOf(bytes, sumLength)) return undefined;
  const [query, argument, words] = JSON.parse(new TextDecoder().decode(bytes.subarray(sumLength))) as BriefWords;
  return { query, argument, words };
}

function sumOf(bytes: Uint8Array, from: number): number {
  let sum = bytes.length - from;
  for (let at = from; at < bytes.length; at++) sum = Math.imul(sum ^ (bytes[at] ?? 0), 0x01000193);
  return sum >>> 0;
}

/** Answers as they were first kept, in the order of their keys; `readers`: which of them rest on a key. */
export interface FirstAnswers extends KnownAnswers {
  readonly readers: Float64Array;
}

/** What became of them since. */
export interface LaterAnswers {
  /** Places of those that no longer hold. */
  readonly gone: ReadonlySet<number>;
  readonly added: KnownAnswers;
}

/** All that still hold, as one list: those added later have the places behind the first ones. */
export class HeldAnswers {
  readonly first: FirstAnswers;
  readonly later: LaterAnswers;

  constructor(first: FirstAnswers, later: LaterAnswers) {
    this.first = first;
    this.later = later;
  }

  /** Places of all. */
  *all(): Iterable<number> {
    const { gone, added } = this.later;
    for (let place = 0; place < this.first.keys.length; place++) if (!gone.has(place)) yield place;
    for (let place = 0; place < added.keys.length; place++) yield this.first.keys.length + place;
  }

  key(place: number): number {
    const { first, later } = this;
    return first.keys[place] ?? later.added.keys[place - first.keys.length] ?? 0;
  }

  reads(place: number): Uint32Array {
    const { first, later } = this;
    return place < first.keys.length ? first.reads.row(place) : later.added.reads.row(place - first.keys.length);
  }

  briefBytes(place: number): Uint8Array {
    const { first, later } = this;
    return place < first.keys.length ? first.brief.row(place) : later.added.brief.row(place - first.keys.length);
  }

  brief(place: number): BriefAnswer | undefined {
    return briefIn(this.briefBytes(place));
  }

  /** Those that rest on the key of this number. */
  readers(key: number): readonly number[] {
    const { first, later } = this;
    const places = placesIn(first.readers, key).filter((place) => !later.gone.has(place));
    later.added.reads.eachWith(key, (place) => places.push(first.keys.length + place));
    return places;
  }

  /** Those whose key has this number: mostly one. */
  named(key: number): readonly number[] {
    const { first, later } = this;
    const places: number[] = [];
    for (let at = firstFrom(first.keys, key); first.keys[at] === key; at++) if (!later.gone.has(at)) places.push(at);
    const { keys } = later.added;
    for (let at = keys.indexOf(key); at >= 0; at = keys.indexOf(key, at + 1)) places.push(first.keys.length + at);
    return places;
  }
}
