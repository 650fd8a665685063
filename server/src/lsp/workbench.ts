import type { FileId } from '../base/brand.ts';
import type { Engine } from '../check/engine.ts';
import type { FileRecord } from '../library/file-record.ts';
import { Folders } from './folders.ts';
import type { DiskChange, Outside } from './libraries.ts';
import { Libraries } from './libraries.ts';
import { LooseDocument } from './loose-document.ts';
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
  readonly #outside: Outside;
  readonly #open = new Map<string, OpenText>();
  readonly #unread = new Set<string>();
  readonly #onDisk = new Map<string, DiskChange>();
  readonly #touched = new Set<string>();
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
  }

  /** A document was opened or changed. Cheap: nothing is read or checked yet. */
  edit(uri: string, text: string): void {
    const address = addressOf(uri);
    const home = this.#open.get(address)?.home;
    this.#open.set(address, { text, ...(home && { home }) });
    this.#changes++;
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

  isInView(address: string): boolean {
    return this.#open.has(address) || this.folders.holds(address);
  }

  #queue(work: () => Promise<void>): void {
    this.#line = this.#line.then(async () => {
      try {
        await untilQuiet(() => this.#changes);
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

  async #takeInTexts(): Promise<void> {
    const waiting = [...this.#unread];
    this.#unread.clear();
    for (const address of waiting) await this.#takeInText(address);
  }

  async #takeInText(address: string): Promise<void> {
    const home = this.#open.get(address)?.home ?? (await this.#newHome(address));
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
