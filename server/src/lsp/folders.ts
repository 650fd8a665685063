import type { Disk } from './disk.ts';
import { addressOf, isWithin, pathOfUri, uriOfPath } from './uris.ts';

/** A folder that the editor has open, as it names it and where it really lies. */
interface Folder {
  readonly path: string;
  readonly real: string;
}

/** The open folders: which files are in view, and how the editor spells a file that was found through a link. */
export class Folders {
  readonly #disk: Disk;
  readonly #folders = new Map<string, Folder>();

  constructor(disk: Disk) {
    this.#disk = disk;
  }

  /** Folders that are no `file:` URI (another computer's, a browser's) are not on this disk and are left alone. */
  add(uri: string): void {
    const path = pathOfUri(uri);
    const real = path === undefined ? undefined : this.#disk.realFolder(path);
    if (path !== undefined && real !== undefined) this.#folders.set(path, { path, real });
  }

  remove(uri: string): void {
    const path = pathOfUri(uri);
    if (path !== undefined) this.#folders.delete(path);
  }

  /** Where they really lie. */
  realPaths(): readonly string[] {
    return [...this.#folders.values()].map(({ real }) => real);
  }

  /** Where a file of the editor really lies; undefined when its URI leads to no disk. */
  realPathOf(uri: string): string | undefined {
    const path = pathOfUri(uri);
    if (path === undefined) return undefined;
    const folder = deepest([...this.#folders.values()].filter((one) => isWithin(one.path, path)));
    return folder === undefined ? path : `${folder.real}${path.slice(folder.path.length)}`;
  }

  /** The editor's URI of a file, by where it really lies. */
  addressOfReal(realUri: string): string {
    if (![...this.#folders.values()].some((one) => one.path !== one.real)) return realUri;
    const path = pathOfUri(realUri);
    if (path === undefined) return realUri;
    const folder = deepest([...this.#folders.values()].filter((one) => isWithin(one.real, path)));
    return folder === undefined ? addressOf(realUri) : uriOfPath(`${folder.path}${path.slice(folder.real.length)}`);
  }

  /** One of them is, or lies around, this real path. */
  isOpenAround(real: string): boolean {
    return [...this.#folders.values()].some((folder) => isWithin(folder.real, real));
  }

  holds(address: string): boolean {
    const path = pathOfUri(address);
    return path !== undefined && [...this.#folders.values()].some((folder) => isWithin(folder.path, path));
  }
}

function deepest(folders: readonly Folder[]): Folder | undefined {
  return [...folders].sort((a, b) => b.path.length - a.path.length)[0];
}
