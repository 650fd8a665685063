import { lstatSync, realpathSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { ruleFilesOf } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { type FolderListing, listFolder } from './folder-walk.ts';
import { loadFile } from './library-files.ts';
import { isRuleFileName } from './library-paths.ts';
import { holdsLibraryFile } from './library-search.ts';

/** What a path names, looked at without asking whether a library holds it. `root` is absolute, links resolved. */
export type Named =
  | { readonly is: 'file'; readonly root: string; readonly files: readonly LoadedFile[] }
  | { readonly is: 'folder' | 'library'; readonly root: string; readonly listing: FolderListing }
  | { readonly is: 'nothing'; readonly why: string };

/** Looks at a path as a user writes it, seen from `from`. Never throws. */
export function lookAtPath(path: string, from: string): Named {
  const full = resolve(from, path);
  try {
    if (lstatSync(full).isFile()) return fileAt(full, path);
    const root = realpathSync.native(full);
    return { is: holdsLibraryFile(root) ? 'library' : 'folder', root, listing: listFolder(root) };
  } catch {
    return { is: 'nothing', why: `there is no file or folder "${path}" that can be opened.` };
  }
}

function fileAt(full: string, path: string): Named {
  if (!isRuleFileName(basename(full)))
    return { is: 'nothing', why: `"${path}" is not a rule file: their names end in ".ifu.yaml".` };
  const root = realpathSync.native(dirname(full));
  const listing: FolderListing = {
    ruleFiles: [basename(full)],
    refused: [],
    unreadableFolders: [],
    links: [],
    nearMisses: [],
  };
  return { is: 'file', root, files: filesIn(root, listing) };
}

/** Every rule file of a listing, opened. */
export function filesIn(root: string, listing: FolderListing): readonly LoadedFile[] {
  return ruleFilesOf(listing).map((listed) => loadFile(root, listed));
}
