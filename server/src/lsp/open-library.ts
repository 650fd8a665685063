import type { FileId, IsoDate } from '../base/brand.ts';
import { fileId } from '../base/brand.ts';
import { dayOf } from '../check/day.ts';
import { Engine } from '../check/engine.ts';
import type { KeptFile } from '../library/kept-file.ts';
import { keptPathsIn } from '../library/kept-paths.ts';
import { kindKey } from '../library/keys.ts';
import { isBelow, leftOutFolders } from '../library/left-out.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { recordOf } from '../library/loaded-file.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Disk, FileOnDisk, LibraryOnDisk } from './disk.ts';
import { Slices } from './turns.ts';
import { uriOfPath } from './uris.ts';

/** The library's own file: its settings say what else is part of it. */
const settingsFile = fileId('library.ifu.yaml');

/** Told how far the reading has come; texts that were typed meanwhile can be taken in. */
export type Meanwhile = (read: number, of: number) => void;

/** One library in the editor: files of the disk, and over them the texts of open documents. */
export class OpenLibrary {
  readonly root: string;
  readonly #rules: readonly AnyRule[];
  readonly #disk: Disk;
  readonly #listed = new Map<FileId, FileOnDisk>();
  readonly #openTexts = new Map<FileId, string>();
  /** As the disk or the editor spells them. Kept when a file goes, so that its findings can be taken back under the same name. */
  readonly #paths = new Map<FileId, string>();
  readonly #uris = new Map<FileId, string>();
  /** Files with something wrong besides their text: these are always taken in anew. */
  readonly #odd = new Set<FileId>();
  /** The kept documents that were asked for, and the list of documents that they were asked for by. */
  readonly #kept = new Set<string>();
  #keptFor: unknown;
  #leftOut: readonly string[] = [];
  #whole = false;
  #engine: Engine;
  /** The clock's day; the engine's is the library's own `as_of` where it has one. */
  #today: IsoDate;

  constructor(root: string, rules: readonly AnyRule[], disk: Disk, today: IsoDate) {
    this.root = root;
    this.#rules = rules;
    this.#disk = disk;
    this.#today = today;
    this.#engine = new Engine({ rules, today });
  }

  get engine(): Engine {
    return this.#engine;
  }

  /** False while it is read for the first time: until then nothing can be said that rests on other files. */
  get isWhole(): boolean {
    return this.#whole;
  }

  get hasOpenTexts(): boolean {
    return this.#openTexts.size > 0;
  }

  /** `file:` URI by where the file really lies. */
  uriOf(file: FileId): string {
    const known = this.#uris.get(file);
    if (known !== undefined) return known;
    const uri = uriOfPath(`${this.root}/${this.#paths.get(file) ?? file}`);
    this.#uris.set(file, uri);
    return uri;
  }

  /** The id of the file at an absolute path below the root. */
  fileAt(path: string): FileId {
    const below = path.slice(this.root.length).replace(/^\//, '');
    const asSpelled = fileId(below);
    const file = this.#listed.has(asSpelled) ? asSpelled : fileId(below.normalize('NFC'));
    if (!this.#paths.has(file)) this.#paths.set(file, below);
    return file;
  }

  files(): readonly FileId[] {
    return this.#engine.library.files();
  }

  isListed(file: FileId): boolean {
    return this.#listed.has(file);
  }

  /** Findings can depend on the day: on a new one everything is judged anew. Returns the files concerned. */
  useDay(today: IsoDate): readonly FileId[] {
    this.#today = today;
    const view = this.#engine.view();
    const day = dayOf(view, today);
    if (day === view.today) return [];
    const old = this.#engine.library;
    this.#engine = new Engine({ rules: this.#rules, today: day });
    for (const path of this.#kept) this.#engine.keep(path, old.keptFile(path));
    for (const file of old.files()) {
      const record = old.record(file);
      if (record !== undefined) this.#engine.put(record);
    }
    return this.files();
  }

  /** Takes in what the disk holds now; `meanwhile` is called between slices of the work. Returns the files whose findings may differ. */
  async refill(found: LibraryOnDisk, meanwhile: Meanwhile): Promise<ReadonlySet<FileId>> {
    const touched = new Set<FileId>();
    const present = new Set(found.files.map(({ file }) => file));
    for (const file of [...this.#listed.keys()]) if (!present.has(file)) this.#gone(file, touched);
    for (const listed of found.files) this.#list(listed);
    const slices = new Slices();
    let read = 0;
    for (const listed of settingsFirst(found.files)) {
      this.#load(listed, touched);
      read++;
      await slices.pause(() => meanwhile(read, found.files.length));
    }
    meanwhile(read, found.files.length);
    this.#whole = true;
    return touched;
  }

  #list(listed: FileOnDisk): void {
    this.#listed.set(listed.file, listed);
    if (this.#paths.get(listed.file) !== listed.path) this.#uris.delete(listed.file);
    this.#paths.set(listed.file, listed.path);
  }

  /** Reads some listed files again. */
  async reread(files: Iterable<FileId>): Promise<ReadonlySet<FileId>> {
    const touched = new Set<FileId>();
    const slices = new Slices();
    for (const file of files) {
      const listed = this.#listed.get(file);
      if (listed !== undefined) this.#load(listed, touched);
      await slices.pause();
    }
    return touched;
  }

  /** The text of an open document stands before that of the disk. */
  open(file: FileId, text: string): readonly FileId[] {
    this.#openTexts.set(file, text);
    if (this.#isLeftOut(file)) return [];
    return this.#put({ file, text, problems: this.#listed.get(file)?.problems ?? [] });
  }

  /** The document was closed: what the disk holds counts again, or nothing when the file is not there. */
  close(file: FileId): readonly FileId[] {
    this.#openTexts.delete(file);
    const listed = this.#listed.get(file);
    return listed === undefined || this.#isLeftOut(file)
      ? this.#engine.delete(file)
      : this.#put(this.#disk.load(this.root, listed));
  }

  /** Documents that the library keeps and nobody has asked for yet. Costs nothing until a document's file changes. */
  newKeptPaths(): readonly string[] {
    const documents = this.#engine.library.entities(kindKey('document'));
    if (documents === this.#keptFor) return [];
    this.#keptFor = documents;
    const fresh = keptPathsIn(this.#engine.view()).filter((path) => !this.#kept.has(path));
    for (const path of fresh) this.#kept.add(path);
    return fresh;
  }

  /** Something at this absolute path has changed on disk: kept documents there or below will be asked for again. */
  keptChanged(path: string): 'document' | 'other' {
    const below = path.slice(this.root.length).replace(/^\//, '');
    const isDocument = this.#kept.has(below);
    for (const kept of this.#kept) {
      if (kept !== below && !kept.startsWith(`${below}/`)) continue;
      this.#kept.delete(kept);
      this.#keptFor = undefined;
    }
    return isDocument ? 'document' : 'other';
  }

  keep(path: string, found: KeptFile | undefined): readonly FileId[] {
    return this.#engine.keep(path, found);
  }

  #load(listed: FileOnDisk, touched: Set<FileId>): void {
    const { file, problems } = listed;
    if (this.#isLeftOut(file)) return;
    const text = this.#openTexts.get(file);
    const loaded = text === undefined ? this.#disk.load(this.root, listed) : { file, text, problems };
    for (const affected of this.#put(loaded)) touched.add(affected);
  }

  #put(loaded: LoadedFile): readonly FileId[] {
    const { file, text, problems } = loaded;
    const plain = problems.length === 0 && text !== undefined;
    if (plain && !this.#odd.has(file) && this.#engine.library.record(file)?.text === text) return [];
    if (plain) this.#odd.delete(file);
    else this.#odd.add(file);
    const affected = this.#engine.put(recordOf(loaded));
    return file === settingsFile ? [...affected, ...this.useDay(this.#today), ...this.#useSettings()] : affected;
  }

  /** The library file may leave other folders out than before. */
  #useSettings(): readonly FileId[] {
    const before = this.#leftOut;
    this.#leftOut = leftOutFolders(this.#engine.view());
    if (before.join('\n') === this.#leftOut.join('\n')) return [];
    const touched = new Set<FileId>();
    for (const listed of this.#listed.values()) {
      if (!this.#isLeftOut(listed.file)) this.#load(listed, touched);
      else for (const affected of this.#engine.delete(listed.file)) touched.add(affected);
    }
    return [...touched];
  }

  #isLeftOut(file: FileId): boolean {
    return file !== settingsFile && isBelow(this.#paths.get(file) ?? file, this.#leftOut);
  }

  #gone(file: FileId, touched: Set<FileId>): void {
    this.#listed.delete(file);
    if (this.#openTexts.has(file)) return;
    this.#odd.delete(file);
    for (const affected of this.#engine.delete(file)) touched.add(affected);
  }
}

/** What is said about the other files depends on it from the first one on. */
function settingsFirst(files: readonly FileOnDisk[]): readonly FileOnDisk[] {
  return [...files.filter(({ file }) => file === settingsFile), ...files.filter(({ file }) => file !== settingsFile)];
}
