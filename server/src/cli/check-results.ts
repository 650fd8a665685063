import { resolve } from 'node:path';
import type { FileId } from '../base/brand.ts';
import { bytesOfFirst, bytesOfLater, partsIn, type ReadParts } from '../check/state/kept-parts.ts';
import { KnownLibrary, nothingKnown } from '../check/state/known-library.ts';
import type { LaterState } from '../check/state/library-state.ts';
import { firstState } from '../check/state/next-state.ts';
import { nobodyElse } from '../check/together/elsewhere.ts';
import { forgetResult, readResult, writeResult } from '../host/results-folder.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';
import type { JudgedFile, JudgedLibrary } from './judged-library.ts';
import { KeptDocuments } from './kept-documents.ts';
import type { BegunLibrary } from './open-library.ts';
import { openedBy } from './open-library.ts';
import { type LookedAt, lookedAt, ResumedLibrary } from './resumed-library.ts';
import type { Helpers } from './together/helpers.ts';

/** Where results are kept, and the name of the program that makes them. */
export interface PlaceOfResults {
  readonly folder: string;
  readonly build: string;
}

/** Below this many files a check is over before it is worth keeping. */
const fewestFiles = 200;

/** Undefined: nothing is kept and nothing kept is used. A folder that was asked for is used for libraries of any size. */
export function placeOfResults(
  { build, results, cwd }: CommandIo,
  { switches, values }: Arguments,
  { files }: BegunLibrary,
): PlaceOfResults | undefined {
  const asked = values.get('cache');
  const folder = asked !== undefined ? resolve(cwd, asked) : files.length < fewestFiles ? undefined : results;
  if (build === undefined || folder === undefined || switches.has('no-cache')) return undefined;
  // Two files that are one to us: what was known of the one would be taken for the other.
  return files.some(({ file }, at) => file === files[at - 1]?.file) ? undefined : { folder, build };
}

/**
 * The library judged as far as it must be: what was found by an earlier check, by the very same program for the same day, stands where
 * nothing that it rests on has other bytes now. When a file was changed, and how large it is, says nothing.
 */
export function judgedOnce(
  begun: BegunLibrary,
  place: PlaceOfResults,
  helpersAtFirst: () => Helpers | undefined,
): { readonly judged: JudgedLibrary; readonly helpers: Helpers | undefined } {
  const { found } = begun;
  const documents = documentsOf(begun);
  const key = keyOf(begun, place, documents);
  const kept = keptUnder(key, place, found.root);
  const before = kept === undefined ? undefined : stillKnown(begun, kept);
  const helpers = before === undefined ? helpersAtFirst() : undefined;
  const looked = before?.looked ?? allNew(begun, helpers);
  const known = before?.kept.known ?? nothingKnown;
  const resumed = new ResumedLibrary(begun, looked, { known, documents, elsewhere: helpers ?? nobodyElse });
  // What was found in a part of the library says too little of the rest.
  if (found.only.length > 0 || resumed.isAsBefore) return { judged: resumed.judged, helpers };
  const judged = keeping(resumed, (state) => keep(state, { key, place, root: found.root, before: before?.kept }));
  return { judged, helpers };
}

/** All that findings depend on besides the files. */
function keyOf(
  { found, engine }: BegunLibrary,
  { build }: PlaceOfResults,
  documents: KeptDocuments | undefined,
): string {
  const looks = documents === undefined ? 'quotes alone' : 'quotes and PDFs';
  return ['traywright results', build, engine.view().today, looks, found.root].join('\n');
}

/** What is known of the library, and its files beside that. Undefined where something changed and what would be needed now is damaged. */
function stillKnown(begun: BegunLibrary, kept: ReadParts): { kept: ReadParts; looked: LookedAt } | undefined {
  const looked = lookedAt(begun, kept.known, (listed) => openedBy(begun, listed));
  const isSame = looked.opened.size === 0 && looked.gone.length === 0 && kept.known.about.documents.length === 0;
  return isSame || kept.isWhole() ? { kept, looked } : undefined;
}

function allNew(begun: BegunLibrary, helpers: Helpers | undefined): LookedAt {
  return lookedAt(begun, nothingKnown, (listed) => {
    const opened = openedBy(begun, listed);
    return helpers?.take(opened) ?? opened;
  });
}

function keptUnder(key: string, { folder }: PlaceOfResults, root: string): ReadParts | undefined {
  const first = readResult(folder, root, 'first');
  if (first === undefined) return undefined;
  try {
    return partsIn(key, { first, later: readResult(folder, root, 'later') });
  } catch {
    return undefined;
  }
}

interface Keeping {
  readonly key: string;
  readonly place: PlaceOfResults;
  readonly root: string;
  readonly before: ReadParts | undefined;
}

/** A second part that is longer than this share of the first is brought together with it. */
const longestLater = 1 / 4;

/** What is new alone, as long as that is little beside the rest. */
function keep(state: LaterState, { key, place: { folder }, root, before }: Keeping): void {
  if (before !== undefined) {
    const later = bytesOfLater(before.name, state);
    if (lengthOf(later) < before.length * longestLater) {
      writeResult(folder, root, 'later', later);
      return;
    }
  }
  const known = new KnownLibrary(before?.known.first ?? nothingKnown.first, state);
  const first = bytesOfFirst(key, firstState(known));
  if (first !== undefined) writeResult(folder, root, 'first', first);
  forgetResult(folder, root, 'later');
}

function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}

/** Undefined where they can't be looked at. */
function documentsOf({ found, options }: BegunLibrary): KeptDocuments | undefined {
  const { pdfReader, pdfTexts, progress } = options;
  if (pdfReader === undefined) return undefined;
  const documents = new KeptDocuments(found.root, { program: pdfReader, texts: pdfTexts }, progress);
  return documents.isPossible ? documents : undefined;
}

/** Keeps what came of it when the last file was asked for. */
function keeping(resumed: ResumedLibrary, keep: (state: LaterState) => void): JudgedLibrary {
  const { judged } = resumed;
  const seen = new Set<FileId>();
  return {
    ...judged,
    of: (file, at): JudgedFile => {
      const one = judged.of(file, at);
      seen.add(file);
      const state = seen.size === judged.files.length ? resumed.state() : undefined;
      if (state !== undefined) keep(state);
      return one;
    },
  };
}
