import type { LibraryView } from './view.ts';

/** Folders below the root that the library's own settings leave out (output that was generated from it, for one). */
export function leftOutFolders(view: LibraryView): readonly string[] {
  const names = view.all('library')[0]?.generated?.items ?? [];
  return names
    .map(({ text }) => text.replace(/^\.\//, '').replace(/\/$/, ''))
    .filter((name) => name !== '' && name !== '.');
}

/** True when `path` is one of the paths or lies below one. */
export function isBelow(path: string, paths: readonly string[]): boolean {
  return paths.some((other) => path === other || path.startsWith(`${other}/`));
}
