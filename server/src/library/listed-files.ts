import type { FileId } from '../base/brand.ts';
import { fileId } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import { fileProblem } from './loaded-file.ts';

/** Its folder is a library. */
export const libraryFileName = 'library.ifu.yaml';

/** What lies in a folder and below it, by name alone. Paths are relative to the folder, `/` between parts, as the disk spells them. */
export interface NamesBelow {
  /** Ordinary files with the name of a rule file. */
  readonly ruleFiles: readonly string[];
  /** Names of rule files that are no ordinary files: never opened, never followed. */
  readonly refused: readonly string[];
  readonly unreadableFolders: readonly string[];
}

/** A rule file of a listing: its id, its path as the disk spells it, and what its name alone gives away. */
export interface ListedFile {
  readonly file: FileId;
  readonly path: string;
  readonly problems: readonly Problem[];
  /** `no` for a link, pipe, device or folder with the name of a rule file, a library inside the library, and a folder that can't be listed. */
  readonly opens: 'yes' | 'no';
}

/** Every rule file below a library's root, whether it can be opened or not, in the order of the ids. */
export function ruleFilesOf(names: NamesBelow): readonly ListedFile[] {
  const files: ListedFile[] = [];
  const firstOfName = new Map<string, string>();
  const ids = new FileIds(names.ruleFiles);
  for (const path of [...names.ruleFiles].sort()) {
    if (isNestedLibrary(path)) {
      files.push({ file: fileIdOf(path), path, problems: [nestingProblem()], opens: 'no' });
      continue;
    }
    const twin = twinOf(path, firstOfName);
    const problems = twin === undefined ? [] : [twinProblem(path, twin)];
    files.push({ file: ids.take(path), path, problems, opens: 'yes' });
  }
  for (const path of names.refused)
    files.push({ file: fileIdOf(path), path, problems: [refusedProblem()], opens: 'no' });
  for (const path of names.unreadableFolders) {
    files.push({ file: fileIdOf(path), path, problems: [unreadableFolderProblem()], opens: 'no' });
  }
  return files.sort((a, b) => (a.file < b.file ? -1 : 1));
}

/** One id a file: composed (NFC) where no other file has that very name, else as the disk spells it. */
class FileIds {
  readonly #spelled: ReadonlySet<string>;
  readonly #taken = new Set<string>();

  constructor(paths: readonly string[]) {
    this.#spelled = new Set(paths);
  }

  take(path: string): FileId {
    const composed = path.normalize('NFC');
    const isFree = path === composed || !(this.#spelled.has(composed) || this.#taken.has(composed));
    const id = isFree ? composed : path;
    this.#taken.add(id);
    return fileId(id);
  }
}

/** The same words whatever the name leads to, and whether or not that exists. */
export function refusedProblem(): Problem {
  return fileProblem(
    'file-refused',
    'This is not an ordinary file of the library (it is a link, a folder, a pipe or a device), so it was not opened. Put the file itself here.',
  );
}

function unreadableFolderProblem(): Problem {
  return fileProblem(
    'folder-unreadable',
    'The folder cannot be opened, so no rule file in it was checked. Look whether you may read it.',
  );
}

/** Only the library file of the root is read: another one would bring settings of its own. */
function isNestedLibrary(path: string): boolean {
  return path.endsWith(`/${libraryFileName}`);
}

function nestingProblem(): Problem {
  return fileProblem(
    'library-inside-library',
    'This folder lies inside another library, so it is not a library of its own: its files were checked as part of the outer one, and this file was not read. Move the folder out, or take this file away.',
  );
}

/** The earlier path that differs from `path` only in capitals or in how accents are stored. */
function twinOf(path: string, firstOfName: Map<string, string>): string | undefined {
  const name = path.normalize('NFC').toLowerCase();
  const twin = firstOfName.get(name);
  if (twin === undefined) firstOfName.set(name, path);
  return twin;
}

function twinProblem(path: string, twin: string): Problem {
  const how = twin.normalize('NFC') === path.normalize('NFC') ? 'in how its accents are stored' : 'in capital letters';
  return fileProblem(
    'file-name-twin',
    `This name differs from "${twin}" only ${how}. Give one of the two files another name.`,
  );
}

/** The id of the file at a relative path as the disk spells it. */
export function fileIdOf(path: string): FileId {
  return fileId(path.normalize('NFC'));
}

const glimpsed = 4_000;

/** The beginning of an undecodable file as far as it is plain ASCII in any encoding. Only kind and id are looked for in it. */
export function glimpseOf(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes.subarray(0, glimpsed)) {
    if (byte === 10 || byte === 13 || (byte >= 32 && byte < 127)) text += String.fromCharCode(byte);
  }
  return text;
}

/** Why a file could not be opened. */
export function openingProblem(refused: 'not-ordinary' | 'too-large' | 'unreadable' | 'gone'): Problem {
  switch (refused) {
    case 'not-ordinary':
      return refusedProblem();
    case 'too-large':
      return fileProblem(
        'file-refused',
        'The file is larger than 4 MB, so it was not opened. A rule file describes one thing.',
      );
    default:
      return fileProblem(
        'file-unreadable',
        'The file cannot be opened. Look whether it still exists and whether you may read it.',
      );
  }
}
