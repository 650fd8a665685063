import type { FileId, IsoDate } from '../base/brand.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Disk, LibraryOnDisk } from './disk.ts';
import { OpenLibrary } from './open-library.ts';
import { isWithin } from './uris.ts';

/** All that the server needs from outside: the disk, the rules and the day. */
export interface Outside {
  readonly disk: Disk;
  readonly rules: readonly AnyRule[];
  today(): IsoDate;
}

/** Told the files (by their real URI) whose findings may differ now. */
export type TouchedFiles = (library: OpenLibrary, files: Iterable<FileId>) => void;

/**
 * A change that the disk reports. Of a new or lost name the folder is listed again; of a mere change the file is read. What came under
 * a name that is no rule file's matters when it is a folder: its files may come without a word about each.
 */
export interface DiskChange {
  /** Where it really lies. */
  readonly path: string;
  readonly how: 'written' | 'came-or-went' | 'other-came';
}

/** The libraries that are open, by the real path of their root. */
export class Libraries {
  readonly #outside: Outside;
  readonly #touched: TouchedFiles;
  readonly #open = new Map<string, OpenLibrary>();
  /** Called while a library is read. */
  progress: (read: number, of: number) => void = () => undefined;
  /** Called between two slices of that work. */
  meanwhile: () => void = () => undefined;

  constructor(outside: Outside, touched: TouchedFiles) {
    this.#outside = outside;
    this.#touched = touched;
  }

  all(): Iterable<OpenLibrary> {
    return this.#open.values();
  }

  /** The library that the path lies in. */
  around(path: string): OpenLibrary | undefined {
    let best: OpenLibrary | undefined;
    for (const library of this.#open.values()) {
      if (path === library.root || !isWithin(library.root, path)) continue;
      if (best === undefined || library.root.length < best.root.length) best = library;
    }
    return best;
  }

  /** Makes the open libraries those that these folders lead to, and those whose documents are open. */
  async scan(folders: readonly string[]): Promise<void> {
    const found = new Map<string, LibraryOnDisk>();
    for (const folder of folders)
      for (const library of this.#outside.disk.librariesFor(folder)) found.set(library.root, library);
    for (const [root, library] of this.#open) {
      if (found.has(root)) continue;
      const still = library.hasOpenTexts ? this.#outside.disk.list(root) : undefined;
      if (still === undefined) this.#remove(library);
      else found.set(root, still);
    }
    for (const library of found.values()) await this.fill(library);
  }

  /** Opens the library around a rule file, when there is one. */
  async openAround(path: string): Promise<OpenLibrary | undefined> {
    for (const found of this.#outside.disk.librariesFor(path)) await this.fill(found);
    return this.around(path);
  }

  async fill(found: LibraryOnDisk): Promise<void> {
    const { disk, rules, today } = this.#outside;
    const library = this.#open.get(found.root) ?? new OpenLibrary(found.root, rules, disk, today());
    this.#open.set(found.root, library);
    const touched = await library.refill(found, (read, of) => {
      this.progress(read, of);
      this.meanwhile();
    });
    this.#touched(library, touched);
  }

  /** Takes in what changed on disk. Answers `scan` when libraries may have come or gone. */
  async takeIn(reported: readonly DiskChange[]): Promise<'done' | 'scan'> {
    const others = reported.filter(({ path }) => this.around(path)?.keptChanged(path) !== 'document');
    const changes = others.filter(
      ({ path, how }) => how !== 'other-came' || this.#outside.disk.realFolder(path) !== undefined,
    );
    if (changes.some((change) => this.#movesLibraries(change))) return 'scan';
    const written = new Map<OpenLibrary, Set<FileId>>();
    const listAgain = new Set<OpenLibrary>();
    for (const { path, how } of changes) {
      const library = this.around(path);
      if (library === undefined) continue;
      const file = library.fileAt(path);
      if (how !== 'written' || !library.isListed(file)) listAgain.add(library);
      else written.set(library, (written.get(library) ?? new Set()).add(file));
    }
    for (const [library, files] of written) this.#touched(library, await library.reread(files));
    for (const library of listAgain) {
      const found = this.#outside.disk.list(library.root);
      if (found === undefined) return 'scan';
      await this.fill(found);
    }
    return 'done';
  }

  /** Lets go of libraries that no folder and no open document needs. */
  letGo(folders: readonly string[]): void {
    for (const library of this.#open.values()) {
      const inView = folders.some((folder) => isWithin(folder, library.root) || isWithin(library.root, folder));
      if (!inView && !library.hasOpenTexts) this.#remove(library);
    }
  }

  /** On a new day everything is judged anew. */
  useToday(): void {
    const today = this.#outside.today();
    for (const library of this.#open.values()) this.#touched(library, library.useDay(today));
  }

  #movesLibraries({ path, how }: DiskChange): boolean {
    if (how === 'written') return false;
    if (how === 'other-came' && this.around(path) === undefined)
      return this.#outside.disk.librariesFor(path).length > 0;
    return path.endsWith('/library.ifu.yaml') || [...this.#open.keys()].some((root) => isWithin(path, root));
  }

  #remove(library: OpenLibrary): void {
    this.#open.delete(library.root);
    this.#touched(library, library.files());
  }
}
