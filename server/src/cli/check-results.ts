import { resolve } from 'node:path';
import type { FileId } from '../base/brand.ts';
import { digestOf, programDigest } from '../host/digest.ts';
import { keptFileDigest } from '../host/kept-files.ts';
import type { OpenedFile } from '../host/library-files.ts';
import { readResult, writeResult } from '../host/results-folder.ts';
import { keptPathsIn } from '../library/kept-file.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';
import type { AboutLibrary, JudgedFile, JudgedLibrary } from './judged-library.ts';
import { judgedNow } from './judged-library.ts';
import type { BegunLibrary, OpenLibrary } from './open-library.ts';
import { finishLibrary, openedBy } from './open-library.ts';

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
  files: number,
): PlaceOfResults | undefined {
  const asked = values.get('cache');
  const folder = asked !== undefined ? resolve(cwd, asked) : files < fewestFiles ? undefined : results;
  return build === undefined || folder === undefined || switches.has('no-cache') ? undefined : { folder, build };
}

/** All that came of a check of a whole library. `documents`: PDFs that it rests on, each with the digest it had. */
interface Result {
  readonly about: AboutLibrary;
  /** Files in which nothing was found are left out. */
  readonly files: readonly JudgedFile[];
  readonly documents: readonly (readonly [path: string, digest: string])[];
}

/**
 * The library judged: as it was found by an earlier check of the very same bytes by the very same program for the same day, else now. An
 * earlier result is known by a digest over all names and contents; when a file was changed, and how large it is, says nothing.
 */
export function judgedOnce(begun: BegunLibrary, { folder, build }: PlaceOfResults): JudgedLibrary {
  const { found, files, leftOut, engine, options } = begun;
  const opened: (OpenedFile | undefined)[] = files.map((listed) => openedBy(begun, listed));
  const key = digestOf(
    opened.flatMap((one) => one ?? []),
    [build, engine.view().today, String(leftOut), options.pdfReader === undefined ? 'quotes alone' : 'quotes and PDFs'],
  );
  const known = resultIn(readResult(folder, found.root, key));
  if (known !== undefined && restsOnSame(known, begun))
    return { files, leftOut, about: known.about, of: lookUp(known) };
  let next = 0;
  const open = finishLibrary(begun, (listed) => {
    const one = opened[next] ?? openedBy(begun, listed);
    // Let go as soon as it is read: a library of ten thousand files is held once, not twice.
    opened[next++] = undefined;
    return one;
  });
  return keeping(open, judgedNow(open), {
    whole: found.only.length === 0,
    keep: (result) => writeResult(folder, found.root, key, JSON.stringify(result)),
    documents: documentsOf(open, options.pdfReader),
  });
}

function resultIn(text: string | undefined): Result | undefined {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text) as Result;
  } catch {
    return undefined;
  }
}

function lookUp({ files }: Result): JudgedLibrary['of'] {
  const byFile = new Map(files.map((one) => [one.file, one]));
  return (file) => byFile.get(file) ?? nothingIn(file);
}

function nothingIn(file: FileId): JudgedFile {
  return { file, findings: [], heldBack: [], waived: [] };
}

const reader = 'the program that reads PDFs';

/** The PDFs are not among the rule files, so they are looked at one by one. */
function restsOnSame({ documents }: Result, { found, options }: BegunLibrary): boolean {
  return documents.every(([path, digest]) => {
    if (path === reader) return digest === (programDigest(options.pdfReader ?? '') ?? '');
    return digest === keptFileDigest(found.root, path);
  });
}

/** Undefined where one could not be read: with more time, or another day, it might be. */
function documentsOf({ engine }: OpenLibrary, program: string | undefined): Result['documents'] | undefined {
  const paths = program === undefined ? [] : keptPathsIn(engine.view());
  if (paths.length === 0) return [];
  const documents: [string, string][] = [[reader, programDigest(program ?? '') ?? '']];
  for (const path of paths) {
    const file = engine.library.keptFile(path);
    if (file === undefined || file.state === 'unread') return undefined;
    documents.push([path, file.state === 'read' ? file.sha256 : 'missing']);
  }
  return documents;
}

interface Keeping {
  readonly whole: boolean;
  readonly documents: Result['documents'] | undefined;
  keep(result: Result): void;
}

/** Keeps the result when the last file was asked for, if every file was. A fault of ours is found again each time. */
function keeping(open: OpenLibrary, now: JudgedLibrary, { whole, documents, keep }: Keeping): JudgedLibrary {
  if (!whole || documents === undefined) return now;
  const seen = new Map<FileId, JudgedFile>();
  return {
    ...now,
    of: (file) => {
      const one = now.of(file);
      seen.set(file, one);
      if (seen.size === open.files.length && !hasOwnFault(seen)) {
        const files = [...seen.values()].filter(
          (each) => each.findings.length + each.heldBack.length + each.waived.length > 0,
        );
        keep({ about: now.about, files, documents });
      }
      return one;
    },
  };
}

function hasOwnFault(seen: ReadonlyMap<FileId, JudgedFile>): boolean {
  for (const { findings } of seen.values())
    if (findings.some(({ finding }) => finding.rule === 'internal')) return true;
  return false;
}
