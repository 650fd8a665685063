import type { Dirent } from 'node:fs';
import { readdirSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { isNearRuleFileName, isRuleFileName } from './library-paths.ts';

/** What lies in a folder and below it. Paths are relative to the folder, `/`-separated, as the disk spells them, in code-unit order. */
export interface FolderListing {
  /** Ordinary files with the name of a rule file. */
  readonly ruleFiles: readonly string[];
  /** Names of rule files that are links, pipes, devices or folders: never opened, never followed. */
  readonly refused: readonly string[];
  readonly unreadableFolders: readonly string[];
  /** Links with other names: not followed, so that a linked folder does not go missing unseen. */
  readonly links: readonly string[];
  /** Ordinary files that were probably meant as rule files. */
  readonly nearMisses: readonly string[];
}

const skipped: ReadonlySet<string> = new Set(['node_modules', '.git']);

/** Lists `folder` (absolute, without links) and what lies below. Follows no link; an unreadable folder is listed as such. */
export function listFolder(folder: string): FolderListing {
  const listing = { ruleFiles: [], refused: [], unreadableFolders: [], links: [], nearMisses: [] } as MutableListing;
  const unreadable = walk(folder, (entry, path) => sortEntry(entry, path, listing));
  listing.unreadableFolders.push(...unreadable);
  for (const paths of Object.values(listing)) paths.sort();
  return listing;
}

/** Ordinary files below `folder` with the name of a PDF, found in the same way. */
export function pdfsBelow(folder: string): readonly string[] {
  const found: string[] = [];
  walk(folder, (entry, path) => {
    if (entry.isFile() && /\.pdf$/i.test(entry.name)) found.push(path);
  });
  return found.sort();
}

/** Shows everything below a folder that is no folder itself. Answers which folders could not be read. */
function walk(folder: string, see: (entry: Dirent, path: string) => void): string[] {
  const unreadable: string[] = [];
  const waiting = [''];
  for (let below = waiting.pop(); below !== undefined; below = waiting.pop()) {
    const entries = entriesOf(folder, below);
    if (entries === undefined) unreadable.push(below);
    for (const entry of entries ?? []) {
      const path = below === '' ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory() && !isRuleFileName(entry.name)) {
        if (!skipped.has(entry.name)) waiting.push(path);
      } else see(entry, path);
    }
  }
  return unreadable;
}

type MutableListing = { [Name in keyof FolderListing]: string[] };

function sortEntry(entry: Dirent, path: string, listing: MutableListing): void {
  if (isRuleFileName(entry.name)) (entry.isFile() ? listing.ruleFiles : listing.refused).push(path);
  else if (entry.isSymbolicLink()) listing.links.push(path);
  else if (entry.isFile() && isNearRuleFileName(entry.name)) listing.nearMisses.push(path);
}

/** Undefined when the folder can't be read, or is no longer where it was listed (swapped for a link meanwhile). */
function entriesOf(folder: string, below: string): Dirent[] | undefined {
  const path = join(folder, below);
  try {
    return realpathSync.native(path) === path ? readdirSync(path, { withFileTypes: true }) : undefined;
  } catch {
    return undefined;
  }
}
