import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { answersKey, idsKey } from '../../library/keys.ts';
import { hashOf } from './key-hash.ts';
import type { KnownLibrary } from './known-library.ts';
import { kindIn } from './traits.ts';

/** A library as it is now, laid beside what is known of it. */
export interface Comparison {
  /** For each file now its place in what is known, where its content is the same; else -1. */
  readonly was: Int32Array;
  /** Places in what is known of files that are gone or have other content. */
  readonly gone: readonly number[];
}

/** `files` in order of their ids, each once; `isSame` is asked once for each file of a known name, in that order. */
export function compared(
  known: KnownLibrary,
  names: string,
  files: readonly FileId[],
  isSame: (place: number, at: number) => boolean,
): Comparison {
  const was = new Int32Array(files.length);
  const gone: number[] = [];
  const places = names === known.names ? undefined : placesIn(known.files, files, gone);
  for (let at = 0; at < files.length; at++) {
    const place = places?.[at] ?? (places === undefined ? at : -1);
    was[at] = place >= 0 && isSame(place, at) ? place : -1;
    if (place >= 0 && was[at] === -1) gone.push(place);
  }
  return { was, gone };
}

/** For each file the place of its name in what is known. Adds those that nobody has now to `gone`. */
function placesIn(before: readonly string[], files: readonly FileId[], gone: number[]): Int32Array {
  const places = new Int32Array(files.length).fill(-1);
  let place = 0;
  for (const [at, file] of files.entries()) {
    for (; place < before.length && (before[place] ?? '') < file; place++) gone.push(place);
    if (before[place] === file) places[at] = place++;
  }
  for (; place < before.length; place++) gone.push(place);
  return places;
}

/** Numbers of all keys whose readers may find something else now. `fresh`: the files that are new or have other content. */
export function changedHashes(
  known: KnownLibrary,
  gone: readonly number[],
  fresh: readonly FileRecord[],
): ReadonlySet<number> {
  const hashes = new Set<number>();
  const names = new Map(gone.map((place) => [known.files[place] ?? '', place]));
  for (const place of gone) for (const hash of known.exports(place)) hashes.add(hash);
  for (const { file, kind, id, exports } of fresh) {
    for (const key of exports) hashes.add(hashOf(key));
    const place = names.get(file) ?? -1;
    // A key of ids changes only where one comes or goes.
    if (place >= 0 && kindIn(known.traits(place)) === kind && known.id(place) === (id ?? '')) names.delete(file);
    else if (kind !== undefined) hashes.add(hashOf(idsKey(kind)));
  }
  addAnswered(hashes, known, gone, fresh);
  for (const place of names.values()) {
    const kind = kindIn(known.traits(place));
    if (kind !== undefined) hashes.add(hashOf(idsKey(kind)));
  }
  return hashes;
}

/** An answer of a maker changes what it is about. */
function addAnswered(
  hashes: Set<number>,
  known: KnownLibrary,
  gone: readonly number[],
  fresh: readonly FileRecord[],
): void {
  const ofResponses = new Set<number>();
  for (const place of gone)
    if (kindIn(known.traits(place)) === 'response') for (const hash of known.exports(place)) ofResponses.add(hash);
  for (const { kind, exports } of fresh)
    if (kind === 'response') for (const key of exports) ofResponses.add(hashOf(key));
  if (ofResponses.size === 0) return;
  for (let place = 0; place < known.count; place++)
    if (ofResponses.has(hashOf(answersKey(known.id(place))))) for (const hash of known.exports(place)) hashes.add(hash);
}
