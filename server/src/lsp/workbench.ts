import type { FileId } from '../base/brand.ts';
import type { Engine } from '../check/engine.ts';
import type { FileRecord } from '../library/file-record.ts';
import { Folders } from './folders.ts';
import type { DiskChange, Outside } from './libraries.ts';
import { Libraries } from './libraries.ts';
import { LooseDocument } from './loose-document.ts';
import { Lull } from './lull.ts';
import type { OpenLibrary } from './open-library.ts';
import { untilQuiet } from './turns.ts';
import { addressOf } from './uris.ts';

/** Where a file of the editor is checked. `library` is missing for a document that is checked by itself. */
export interface Home {
  readonly engine: Engine;
  readonly file: FileId;
  readonly library?: OpenLibrary;
}

interface OpenText {
  readonly text: string;
  readonly home?: OpenLibrary | LooseDocument;
}

/**
 * Everything that is open: folders, their libraries, documents. Files are known by their address: the editor's URI in one spelling. Changes
 * are noted at once and taken in when there is a moment's quiet; all of it stands in one line, so that no two passes mix. `touched` is told
 * which files may have other findings.
 */
export class Workbench {
  readonly folders: Folders;
  readonly libraries: Libraries;
  /** When there is time for what nobody waits for. */
  readonly lull = new Lull();
  readonly #outside: Outside;
  readonly #open = new Map<string, OpenText>();
  readonly #unread = new Set<string>();
  readonly #onDisk = new Map<string, DiskChange>();
  readonly #touched = new Set<string>();
  /** Who waits for the text of a document only. */
  readonly #waiting = new Set<{ readonly address: string; resolve(): void }>();
  #line: Promise<void> = Promise.resolve();
  #changes = 0;
  /** Told which files may have other findings. */
  onTouched: (addresses: ReadonlySet<string>) => void = () => undefined;
  /** Told of a fault of ours; the work after it goes on. */
  onFailure: (reason: unknown) => void = () => undefined;

  constructor(outside: Outside) {
    this.#outside = outside;
    this.folders = new Folders(outside.disk);
    this.libraries = new Libraries(outside, (library, files) => {
      for (const file of files) this.#touched.add(this.folders.addressOfReal(library.uriOf(file)));
    });
    this.libraries.meanwhile = () => this.#takeInMeanwhile();
  }

  /** A document was opened or changed. Cheap: nothing is read or checked yet. */
  edit(uri: string, text: string): void {
    const address = addressOf(uri);
    const home = this.#open.get(address)?.home;
    this.#open.set(address, { text, ...(home && { home }) });
    this.#changes++;
    this.lull.changed();
    if (this.#unread.size === 0) this.#queue(() => this.#takeInTexts());
    this.#unread.add(address);
  }

  close(uri: string): void {
    const address = addressOf(uri);
    const home = this.#open.get(address)?.home;
    this.#open.delete(address);
    this.#changes++;
    if (home !== undefined) this.#queue(async () => this.#closed(address, home));
  }

  isOpen(address: string): boolean {
    return this.#open.has(address);
  }

  /** Looks again which libraries the folders hold, and reads what is new in them. */
  rescan(): void {
    this.#queue(() => this.#rescan());
  }

  /** The disk (or the editor) says that files or folders have changed. */
  diskChanged(changes: readonly { readonly uri: string; readonly how: DiskChange['how'] }[]): void {
    for (const { uri, how } of changes) {
      const path = this.folders.realPathOf(uri);
      if (path === undefined) continue;
      if (this.#onDisk.size === 0) this.#queue(() => this.#takeInDisk());
      if (weightOf(this.#onDisk.get(path)?.how) < weightOf(how)) this.#onDisk.set(path, { path, how });
    }
    this.#changes++;
  }

  /** Resolves when all changes known by now are taken in. Never rejects. */
  async settled(): Promise<void> {
    for (let last: Promise<void> | undefined; last !== this.#line; ) {
      last = this.#line;
      await last;
    }
  }

  /** Resolves when the newest text of a document is taken in. Of what it rests on, a library that is being read may still lack some. */
  async textTaken(address: string): Promise<void> {
    let resolve = (): void => undefined;
    const meanwhile = new Promise<void>((done) => {
      resolve = done;
    });
    const waiting = { address, resolve };
    this.#waiting.add(waiting);
    await Promise.race([this.settled(), meanwhile]);
    this.#waiting.delete(waiting);
  }

  homeOf(address: string): Home | undefined {
    const home = this.#open.get(address)?.home;
    if (home instanceof LooseDocument) return home;
    const path = this.folders.realPathOf(address);
    const library = home ?? (path === undefined ? undefined : this.libraries.around(path));
    if (path === undefined || library === undefined) return undefined;
    return { engine: library.engine, file: library.fileAt(path), library };
  }

  recordAt(address: string): FileRecord | undefined {
    const home = this.homeOf(address);
    return home?.engine.library.record(home.file);
  }

  /** The editor's URI of another file that a finding in `home` speaks of; `own` is that of the file itself. */
  addressIn(home: Home, file: FileId, own: string): string {
    if (home.library === undefined || file === home.file) return own;
    return this.folders.addressOfReal(home.library.uriOf(file));
  }

  /** Every file in view: those of the open folders' libraries, and the open documents. */
  addresses(): ReadonlySet<string> {
    const all = new Set<string>(this.#open.keys());
    for (const library of this.libraries.all()) {
      for (const file of library.files()) {
        const address = this.folders.addressOfReal(library.uriOf(file));
        if (this.folders.holds(address)) all.add(address);
      }
    }
    return all;
  }

  /** A library is being read for the first time. */
  get isReading(): boolean {
    return [...this.libraries.all()].some(({ isWhole }) => !isWhole);
  }

  /** How many there are. Asked after each change, so nothing is listed where a library is in view as a whole. */
  countOfFiles(): number {
    let count = 0;
    for (const library of this.libraries.all()) {
      const files = library.files();
      count += this.folders.isOpenAround(library.root)
        ? files.length
        : files.filter((file) => this.folders.holds(this.folders.addressOfReal(library.uriOf(file)))).length;
    }
    for (const address of this.#open.keys())
      if (!this.folders.holds(address) || this.recordAt(address) === undefined) count++;
    return count;
  }

  isInView(address: string): boolean {
    return this.#open.has(address) || this.folders.holds(address);
  }

  #queue(work: () => Promise<void>): void {
    this.#line = this.#line.then(async () => {
      try {
        // Requests count too: of several that come with a change, the most urgent is to be known when the text is there.
        await untilQuiet(() => this.#changes + this.lull.requests);
        this.libraries.useToday();
        await work();
      } catch (reason) {
        this.onFailure(reason);
      }
      this.#tell();
      this.#readKept();
    });
  }

  /** Documents that libraries keep are read beside all other work; what comes of it is taken in like any change. */
  #readKept(): void {
    const { disk } = this.#outside;
    if (disk.keptFile === undefined) return;
    for (const library of this.libraries.all()) {
      for (const path of library.newKeptPaths()) {
        disk.keptFile(library.root, path).then(
          (found) => this.#queue(async () => this.#noteTouched(library, library.keep(path, found))),
          (reason) => this.onFailure(reason),
        );
      }
    }
  }

  #tell(): void {
    if (this.#touched.size === 0) return;
    const touched = new Set(this.#touched);
    this.#touched.clear();
    try {
      this.onTouched(touched);
    } catch (reason) {
      this.onFailure(reason);
    }
  }

  /** While a library is read, which can take many seconds: what is typed in it is looked at all the same. */
  #takeInMeanwhile(): void {
    for (const address of this.#unread) {
      const path = this.folders.realPathOf(address);
      const home = this.#open.get(address)?.home ?? (path === undefined ? undefined : this.libraries.around(path));
      if (home === undefined) continue;
      this.#unread.delete(address);
      this.#takeInTextAt(address, home);
    }
    for (const { address, resolve } of this.#waiting) if (!this.#unread.has(address)) resolve();
    this.#tell();
  }

  async #takeInTexts(): Promise<void> {
    for (const address of this.#unread) {
      try {
        await this.#takeInText(address);
      } catch (reason) {
        this.onFailure(reason);
      }
      this.#unread.delete(address);
    }
  }

  async #takeInText(address: string): Promise<void> {
    this.#takeInTextAt(address, this.#open.get(address)?.home ?? (await this.#newHome(address)));
  }

  #takeInTextAt(address: string, home: OpenLibrary | LooseDocument): void {
    const open = this.#open.get(address);
    if (open === undefined) return;
    if (open.home !== home) this.#open.set(address, { text: open.text, home });
    this.#touched.add(address);
    if (home instanceof LooseDocument) home.open(open.text);
    else this.#noteTouched(home, home.open(home.fileAt(this.folders.realPathOf(address) ?? ''), open.text));
  }

  /** The library around a document, opened if need be; a document without one is checked by itself. */
  async #newHome(address: string): Promise<OpenLibrary | LooseDocument> {
    const path = this.folders.realPathOf(address);
    const isRuleFile = path?.endsWith('.ifu.yaml') === true;
    const library =
      path === undefined || !isRuleFile
        ? undefined
        : (this.libraries.around(path) ?? (await this.libraries.openAround(path)));
    return library ?? new LooseDocument(address, this.#outside.rules, this.#outside.today());
  }

  #closed(address: string, home: OpenLibrary | LooseDocument): void {
    if (this.#open.has(address)) return;
    this.#touched.add(address);
    const path = this.folders.realPathOf(address);
    if (home instanceof LooseDocument || path === undefined) return;
    this.#noteTouched(home, home.close(home.fileAt(path)));
    this.libraries.letGo(this.folders.realPaths());
  }

  async #rescan(): Promise<void> {
    const folders = this.folders.realPaths();
    await this.libraries.scan(folders);
    this.libraries.letGo(folders);
    for (const [address, { text }] of this.#open) {
      this.#open.set(address, { text });
      await this.#takeInText(address);
    }
  }

  async #takeInDisk(): Promise<void> {
    const changes = [...this.#onDisk.values()];
    this.#onDisk.clear();
    if ((await this.libraries.takeIn(changes)) === 'scan') await this.#rescan();
  }

  #noteTouched(library: OpenLibrary, files: Iterable<FileId>): void {
    for (const file of files) this.#touched.add(this.folders.addressOfReal(library.uriOf(file)));
  }
}

/** Of several changes of one path the one with the widest effect counts. */
function weightOf(how: DiskChange['how'] | undefined): number {
  return how === undefined ? 0 : { written: 1, 'other-came': 2, 'came-or-went': 3 }[how];
}
