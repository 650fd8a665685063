import { keptPath } from './kept-file.ts';
import type { LibraryView } from './view.ts';

/** Where all documents of the library lie that keep a file in it, each path once. */
export function keptPathsIn(view: LibraryView): readonly string[] {
  const paths = new Set<string>();
  for (const { file } of view.all('document')) {
    const path = file === undefined ? undefined : keptPath(file);
    if (path !== undefined) paths.add(path);
  }
  return [...paths].sort();
}
