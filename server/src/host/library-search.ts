import { lstatSync, realpathSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { libraryFileName } from '../library/listed-files.ts';
import type { FolderListing } from './folder-walk.ts';
import { listFolder } from './folder-walk.ts';
import { isRuleFileName } from './library-paths.ts';

/** A library that was asked for, whole or in part. */
export interface FoundLibrary {
  /** Absolute, links resolved. */
  readonly root: string;
  readonly listing: FolderListing;
  /** Paths below the root that were asked for; a part of the library is still checked against all of it. Empty: everything. */
  readonly only: readonly string[];
}

export interface LibrarySearch {
  readonly libraries: readonly FoundLibrary[];
  /** Absolute paths of rule files that lie in no library, though a library was found beside them. */
  readonly outside: readonly string[];
  /** One for each path that leads to nothing that can be checked. */
  readonly failures: readonly SearchFailure[];
}

export interface SearchFailure {
  /** As the user wrote it. */
  readonly path: string;
  readonly reason: 'missing' | 'unreadable' | 'not-a-rule-file' | 'no-library';
}

/** Libraries for paths as a user writes them: of a file the nearest library around it; of a folder those in it, else the one around it. */
export function findLibraries(paths: readonly string[], from: string): LibrarySearch {
  const wanted = new Map<string, Wanted>();
  const outside = new Set<string>();
  const failures: SearchFailure[] = [];
  for (const path of paths) {
    const found = lookAt(resolve(from, path));
    if (typeof found === 'string') failures.push({ path, reason: found });
    else {
      for (const one of found.wanted) merge(wanted, one);
      for (const file of found.outside) outside.add(file);
    }
  }
  const libraries = [...wanted.values()].map(({ root, listing, only }) => ({
    root,
    listing: listing ?? listFolder(root),
    only: only ?? [],
  }));
  return { libraries: libraries.sort((a, b) => (a.root < b.root ? -1 : 1)), outside: [...outside].sort(), failures };
}

interface Wanted {
  readonly root: string;
  readonly listing?: FolderListing;
  /** Undefined: all of it. */
  readonly only: readonly string[] | undefined;
}

interface Looked {
  readonly wanted: readonly Wanted[];
  readonly outside: readonly string[];
}

function lookAt(path: string): Looked | SearchFailure['reason'] {
  try {
    const stats = lstatSync(path);
    const isLinkedFolder = stats.isSymbolicLink() && !isRuleFileName(basename(path));
    if (stats.isDirectory() || isLinkedFolder) return lookInFolder(realpathSync.native(path));
    if (!isRuleFileName(basename(path))) return 'not-a-rule-file';
    return lookAround(realpathSync.native(dirname(path)), basename(path));
  } catch (thrown) {
    const code = thrown instanceof Error && 'code' in thrown ? thrown.code : undefined;
    return code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG' ? 'missing' : 'unreadable';
  }
}

function lookInFolder(folder: string): Looked | SearchFailure['reason'] {
  const listing = listFolder(folder);
  if (listing.unreadableFolders.includes('')) return 'unreadable';
  const roots = rootsIn(listing);
  if (roots.length === 0) return lookAround(folder, '');
  if (roots[0] === '') return { wanted: [{ root: folder, listing, only: undefined }], outside: [] };
  const inNone = listing.ruleFiles.filter((file) => !roots.some((root) => file.startsWith(`${root}/`)));
  return {
    wanted: roots.map((root) => ({ root: join(folder, root), only: undefined })),
    outside: inNone.map((file) => join(folder, file)),
  };
}

/** Folders that hold a library file and lie in no other such folder; '' is the listed folder itself. */
function rootsIn(listing: FolderListing): readonly string[] {
  const holders = [...listing.ruleFiles, ...listing.refused]
    .filter((file) => file === libraryFileName || file.endsWith(`/${libraryFileName}`))
    .map((file) => file.slice(0, Math.max(0, file.length - libraryFileName.length - 1)))
    .sort((a, b) => a.length - b.length);
  const roots: string[] = [];
  for (const holder of holders) {
    if (!roots.some((root) => root === '' || holder.startsWith(`${root}/`))) roots.push(holder);
  }
  return roots.sort();
}

function lookAround(folder: string, name: string): Looked | SearchFailure['reason'] {
  for (let root = folder; ; root = dirname(root)) {
    if (holdsLibraryFile(root)) {
      const only = relative(root, join(folder, name)).split(sep).join('/');
      return { wanted: [{ root, only: only === '' ? undefined : [only] }], outside: [] };
    }
    if (dirname(root) === root) return 'no-library';
  }
}

/** Looks at the name itself, not at where a link of that name leads. */
export function holdsLibraryFile(folder: string): boolean {
  return lstatSync(join(folder, libraryFileName), { throwIfNoEntry: false })?.isDirectory() === false;
}

function merge(wanted: Map<string, Wanted>, one: Wanted): void {
  const known = wanted.get(one.root);
  if (known === undefined) wanted.set(one.root, one);
  else if (known.only === undefined || one.only === undefined) {
    const listing = known.listing ?? one.listing;
    wanted.set(one.root, { root: one.root, only: undefined, ...(listing && { listing }) });
  } else wanted.set(one.root, { ...known, only: [...known.only, ...one.only] });
}
