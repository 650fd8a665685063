import type { FileId } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import type { KeptFile } from '../library/kept-file.ts';
import type { LoadedFile } from '../library/loaded-file.ts';

/** A rule file as the disk lists it. */
export interface FileOnDisk {
  readonly file: FileId;
  /** Below the library's root, `/` between parts, as the disk spells it. */
  readonly path: string;
  readonly problems: readonly Problem[];
}

export interface LibraryOnDisk {
  /** Absolute, links resolved, `/` between parts. */
  readonly root: string;
  readonly files: readonly FileOnDisk[];
}

/** An earlier state of a library, as somebody recorded it. */
export interface RecordedState {
  /** What the history calls it. */
  readonly name: string;
  /** `YYYY-MM-DD`. */
  readonly day: string;
  /** What was written about it, first line. */
  readonly subject: string;
}

/** What was recorded of libraries earlier. A reason in plain words where it can't be read. */
export interface History {
  /** States in which these files were recorded anew, newest first. */
  statesOf(root: string, paths: readonly string[], most: number): readonly RecordedState[] | { readonly why: string };
  /** The rule files of one state. `last`: the newest one. */
  filesAt(root: string, name: string | 'last'): { readonly files: readonly LoadedFile[] } | { readonly why: string };
  textAt(root: string, name: string, path: string): string | undefined;
}

/** The disk as the server sees it. A server without one (in a browser) checks open documents by themselves. Nothing here throws. */
export interface Disk {
  /** Where a folder really lies, links resolved; undefined when there is none. */
  realFolder(folder: string): string | undefined;
  /** Of a folder the libraries in it, else the one around it; of a rule file the one around it. */
  librariesFor(path: string): readonly LibraryOnDisk[];
  /** What lies in the library now; undefined when it is no library any more. */
  list(root: string): LibraryOnDisk | undefined;
  load(root: string, file: FileOnDisk): LoadedFile;
  /** Rule files below a folder that is no library, by path below it; undefined when there is no such folder. */
  looseFiles?(folder: string): readonly LoadedFile[] | undefined;
  /** Missing where no history can be read. */
  readonly history?: History;
  /** What a document that the library keeps holds; missing where documents can't be opened. `path` is below the root. */
  keptFile?(root: string, path: string): Promise<KeptFile | undefined>;
  /** PDFs anywhere in the library, below its root; missing where folders can't be looked into. */
  pdfs?(root: string): readonly string[];
  /** SHA-256 of some of them, as far as they can be read in a moment. */
  digests?(root: string, paths: readonly string[]): ReadonlyMap<string, string>;
}
