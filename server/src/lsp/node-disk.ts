import { besideProgram } from '../host/beside-program.ts';
import { pdfsBelow } from '../host/folder-walk.ts';
import { filesAtRevision, ruleFileAt } from '../host/git.ts';
import { changesOf } from '../host/git-log.ts';
import { keptFileDigests } from '../host/kept-digests.ts';
import { readKeptFile } from '../host/kept-files.ts';
import { loadFile } from '../host/library-files.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { filesIn, lookAtPath } from '../host/loose-files.ts';
import { PdfReader } from '../host/pdf/pdf-reader.ts';
import { PdfTexts } from '../host/pdf-texts.ts';
import { realFolder } from '../host/real-folder.ts';
import { resultsFolder } from '../host/results-folder.ts';
import type { KeptFile } from '../library/kept-file.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { ruleFilesOf } from '../library/listed-files.ts';
import type { Disk, FileOnDisk, LibraryOnDisk } from './disk.ts';

/** The computer's own disk. */
export const nodeDisk: Disk = {
  realFolder: (folder) => {
    const real = realFolder(folder);
    return real === undefined ? undefined : slashed(real);
  },
  librariesFor: (path) => findLibraries([path], '/').libraries.map(onDisk),
  list: (root) => {
    const found = findLibraries([root], '/').libraries.find((library) => slashed(library.root) === root);
    return found === undefined ? undefined : onDisk(found);
  },
  load: (root, file) => loadFile(root, asListed(file)),
  keptFile: readKept,
  pdfs: pdfsBelow,
  digests: keptFileDigests,
  looseFiles: (folder) => {
    const named = lookAtPath(folder, folder);
    return named.is === 'folder' ? filesIn(named.root, named.listing) : undefined;
  },
  history: {
    statesOf: (root, paths, most) => {
      const changes = changesOf(root, paths, most);
      if ('why' in changes) return changes;
      return changes.map(({ commit, day, subject }) => ({ name: commit, day, subject }));
    },
    filesAt: (root, name) => filesAtRevision(root, name === 'last' ? 'HEAD' : name),
    textAt: ruleFileAt,
  },
};

function onDisk({ root, listing }: FoundLibrary): LibraryOnDisk {
  return { root: slashed(root), files: ruleFilesOf(listing) };
}

function asListed(file: FileOnDisk): ListedFile {
  return { opens: 'yes', ...file };
}

function slashed(path: string): string {
  return path.replaceAll('\\', '/').replace(/^([A-Z]):/, (_, drive: string) => `${drive.toLowerCase()}:`);
}

/** One after the other, in a thread that is let go when there is nothing left to read. */
let lastKept: Promise<KeptFile | undefined> = Promise.resolve(undefined);
let keptWaiting = 0;
let pdfs: PdfReader | undefined;
let texts: PdfTexts | undefined;

async function readKept(root: string, path: string): Promise<KeptFile | undefined> {
  keptWaiting++;
  const found = lastKept.then(async () => {
    const program = besideProgram('pdf-reader.cjs');
    pdfs ??= new PdfReader(program);
    if (!pdfs.isThere) return undefined;
    const folder = resultsFolder(process.env);
    if (folder !== undefined) texts ??= new PdfTexts(folder, program);
    return await readKeptFile(root, path, pdfs, texts);
  });
  lastKept = found.catch(() => undefined);
  try {
    return await found;
  } finally {
    keptWaiting--;
    if (keptWaiting === 0) pdfs?.end();
  }
}
