import { dirname, relative, resolve, sep } from 'node:path';
import { isRuleFileName } from '../host/library-paths.ts';
import type { LibrarySearch } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { realFolder } from '../host/real-folder.ts';
import { readStandardInput } from '../host/standard-input.ts';
import { fileIdOf } from '../library/listed-files.ts';
import type { TypedFile } from './open-library.ts';

/** The library around a rule file whose text comes on standard input, and that text. The file need not be there yet; its folder must. */
export function typedSearch(path: string, from: string): LibrarySearch & { readonly typed?: TypedFile } {
  const none = (reason: 'missing' | 'not-a-rule-file' | 'no-library' | 'unreadable') => ({
    libraries: [],
    outside: [],
    failures: [{ path, reason }],
  });
  if (!isRuleFileName(path)) return none('not-a-rule-file');
  const folder = realFolder(dirname(resolve(from, path)));
  if (folder === undefined) return none('missing');
  const library = findLibraries([folder], from).libraries.find(({ root }) => isAround(root, folder));
  if (library === undefined) return none('no-library');
  const input = readStandardInput();
  if ('why' in input) return none('unreadable');
  const name = resolve(from, path).split(sep).pop() ?? '';
  const inside = relative(library.root, resolve(folder, name)).split(sep).join('/');
  const typed = { file: fileIdOf(inside), text: input.text };
  return { libraries: [{ ...library, only: [inside] }], outside: [], failures: [], typed };
}

function isAround(root: string, folder: string): boolean {
  const way = relative(root, folder);
  return way === '' || !way.startsWith('..');
}
