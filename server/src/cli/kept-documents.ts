import { programDigest } from '../host/digest.ts';
import { keptFileAt, keptFileDigest } from '../host/kept-files.ts';
import { PdfReader } from '../host/pdf/pdf-reader.ts';
import { PdfTexts } from '../host/pdf-texts.ts';
import type { KeptFile } from '../library/kept-file.ts';
import type { Progress } from './progress.ts';
import type { DocumentReading } from './take-documents.ts';

type Digests = readonly (readonly [path: string, digest: string])[];

/** Stands in the list of digests for the program that reads the documents. */
const readerName = '';

/** The documents that a library keeps, each opened at most once and read only when somebody asks what it says. */
export class KeptDocuments {
  readonly #root: string;
  readonly #reader: PdfReader;
  readonly #reading: DocumentReading;
  #texts: PdfTexts | undefined;
  readonly #progress: Progress;
  readonly #digests = new Map<string, string>();
  #asked = 0;
  #isTorn = false;

  constructor(root: string, reading: DocumentReading, progress: Progress) {
    this.#root = root;
    this.#reading = reading;
    this.#reader = new PdfReader(reading.program);
    this.#progress = progress;
  }

  /** False where the program that reads them is not there. */
  get isPossible(): boolean {
    return this.#reader.isThere;
  }

  /** Looks at the documents at these paths. Returns those that are not what they were. */
  lookAt(paths: readonly string[], before: Digests): readonly string[] {
    if (paths.length === 0) return [];
    const known = new Map(before);
    const reader = programDigest(this.#reading.program) ?? '';
    this.#digests.set(readerName, reader);
    for (const path of paths) {
      const digest = keptFileDigest(this.#root, path);
      this.#digests.set(path, digest === 'unread' ? '' : digest);
    }
    if (known.get(readerName) !== reader) return paths;
    return paths.filter((path) => this.#digests.get(path) === '' || known.get(path) !== this.#digests.get(path));
  }

  /** Undefined for a path that nobody has looked at. */
  read(path: string): KeptFile | undefined {
    if (!this.#digests.has(path)) return undefined;
    this.#asked += 1;
    this.#progress.slow?.(this.#asked, this.#digests.size - 1, 'document');
    const { program, texts } = this.#reading;
    if (texts !== undefined) this.#texts ??= new PdfTexts(texts, program);
    const found = keptFileAt(this.#root, path, this.#reader, this.#texts);
    const digest = found.state === 'read' ? found.sha256 : found.state;
    // What could not be read might be with more time, or on another day.
    if (found.state === 'unread') this.#digests.set(path, '');
    else if (digest !== this.#digests.get(path)) this.#isTorn = true;
    return found;
  }

  /** What each was; undefined where one changed while it was looked at. */
  digests(): Digests | undefined {
    return this.#isTorn ? undefined : [...this.#digests];
  }

  end(): void {
    this.#reader.end();
  }
}
