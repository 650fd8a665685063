import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { answersKey, idsKey } from '../../library/keys.ts';
import { hashOf } from './key-hash.ts';
import type { LibraryState } from './library-state.ts';
import { markLength } from './library-state.ts';
import { kindIn } from './traits.ts';

/** A library as it is now, laid beside a state of before. */
export interface Comparison {
  /** For each file now its place in the state, where its content is the same. */
  readonly was: readonly (number | undefined)[];
  /** Places in the state of files that are gone or have other content. */
  readonly gone: readonly number[];
}

/** `files` in order of their ids, each once; `marks` as in the state. */
export function compared(before: LibraryState, files: readonly FileId[], marks: Uint8Array): Comparison {
  const was: (number | undefined)[] = [];
  const gone: number[] = [];
  let place = 0;
  for (const [at, file] of files.entries()) {
    for (; place < before.files.length && (before.files[place] ?? '') < file; place++) gone.push(place);
    const isThere = before.files[place] === file;
    const isSame = isThere && isSameMark(before.marks, place, marks, at);
    was.push(isSame ? place : undefined);
    if (isThere && !isSame) gone.push(place);
    if (isThere) place++;
  }
  for (; place < before.files.length; place++) gone.push(place);
  return { was, gone };
}

function isSameMark(before: Uint8Array, place: number, now: Uint8Array, at: number): boolean {
  for (let byte = 0; byte < markLength; byte++)
    if (before[place * markLength + byte] !== now[at * markLength + byte]) return false;
  return true;
}

/** Numbers of all keys whose readers may find something else now. `fresh`: the files that are new or have other content. */
export function changedHashes(
  before: LibraryState,
  gone: readonly number[],
  fresh: readonly FileRecord[],
): ReadonlySet<number> {
  const hashes = new Set<number>();
  const names = new Map(gone.map((place) => [before.files[place] ?? '', place]));
  for (const place of gone) for (const hash of before.exports.row(place)) hashes.add(hash);
  for (const { file, kind, id, exports } of fresh) {
    for (const key of exports) hashes.add(hashOf(key));
    const place = names.get(file) ?? -1;
    // A key of ids changes only where one comes or goes.
    if (kindIn(before.traits[place] ?? 0) === kind && (before.ids[place] ?? '') === (id ?? '')) names.delete(file);
    else if (kind !== undefined) hashes.add(hashOf(idsKey(kind)));
  }
  addAnswered(hashes, before, gone, fresh);
  for (const place of names.values()) {
    const kind = kindIn(before.traits[place] ?? 0);
    if (kind !== undefined) hashes.add(hashOf(idsKey(kind)));
  }
  return hashes;
}

/** An answer of a maker changes what it is about. */
function addAnswered(
  hashes: Set<number>,
  before: LibraryState,
  gone: readonly number[],
  fresh: readonly FileRecord[],
): void {
  const ofResponses = new Set<number>();
  for (const place of gone)
    if (kindIn(before.traits[place] ?? 0) === 'response')
      for (const hash of before.exports.row(place)) ofResponses.add(hash);
  for (const { kind, exports } of fresh)
    if (kind === 'response') for (const key of exports) ofResponses.add(hashOf(key));
  if (ofResponses.size === 0) return;
  for (const [place, id] of before.ids.entries())
    if (ofResponses.has(hashOf(answersKey(id)))) for (const hash of before.exports.row(place)) hashes.add(hash);
}
