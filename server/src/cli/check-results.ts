import { resolve } from 'node:path';
import type { FileId } from '../base/brand.ts';
import type { LibraryState } from '../check/state/library-state.ts';
import { bytesOfState, stateIn } from '../check/state/library-state.ts';
import { nothingKnown } from '../check/state/next-state.ts';
import { nobodyElse } from '../check/together/elsewhere.ts';
import { digestOf, marksOf } from '../host/digest.ts';
import { readResult, writeResult } from '../host/results-folder.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';
import type { JudgedFile, JudgedLibrary } from './judged-library.ts';
import { KeptDocuments } from './kept-documents.ts';
import type { BegunLibrary } from './open-library.ts';
import { openedBy } from './open-library.ts';
import { ResumedLibrary } from './resumed-library.ts';
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
  const { found, files, engine } = begun;
  const documents = documentsOf(begun);
  const looks = documents === undefined ? 'quotes alone' : 'quotes and PDFs';
  const key = digestOf([place.build, engine.view().today, looks]);
  const before = stateKept(readResult(place.folder, found.root, key));
  const helpers = before === undefined ? helpersAtFirst() : undefined;
  const opened = files.map((listed) => openedBy(begun, listed));
  for (const file of helpers === undefined ? [] : opened) helpers?.take(file);
  const resumed = new ResumedLibrary(begun, {
    opened,
    marks: marksOf(opened),
    documents,
    before: before ?? nothingKnown,
    elsewhere: helpers ?? nobodyElse,
  });
  // What was found in a part of the library says too little of the rest.
  if (found.only.length > 0 || resumed.isAsBefore) return { judged: resumed.judged, helpers };
  const judged = keeping(resumed, (state) => writeResult(place.folder, found.root, key, bytesOfState(state)));
  return { judged, helpers };
}

/** Undefined where they can't be looked at. */
function documentsOf({ found, options }: BegunLibrary): KeptDocuments | undefined {
  const { pdfReader, pdfTexts, progress } = options;
  if (pdfReader === undefined) return undefined;
  const documents = new KeptDocuments(found.root, { program: pdfReader, texts: pdfTexts }, progress);
  return documents.isPossible ? documents : undefined;
}

function stateKept(bytes: Uint8Array | undefined): LibraryState | undefined {
  try {
    return bytes === undefined ? undefined : stateIn(bytes);
  } catch {
    return undefined;
  }
}

/** Keeps what came of it when the last file was asked for. */
function keeping(resumed: ResumedLibrary, keep: (state: LibraryState) => void): JudgedLibrary {
  const { judged } = resumed;
  const seen = new Set<FileId>();
  return {
    ...judged,
    of: (file): JudgedFile => {
      const one = judged.of(file);
      seen.add(file);
      const state = seen.size === judged.files.length ? resumed.state() : undefined;
      if (state !== undefined) keep(state);
      return one;
    },
  };
}
