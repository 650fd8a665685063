import { lstatSync, realpathSync } from 'node:fs';

/** Where a folder really lies, links resolved; undefined when there is no such folder. */
export function realFolder(path: string): string | undefined {
  try {
    const real = realpathSync.native(path);
    return lstatSync(real).isDirectory() ? real : undefined;
  } catch {
    return undefined;
  }
}
