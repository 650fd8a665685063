import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, realpathSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { KeptPage } from '../library/kept-file.ts';
import { writeAtomically } from './atomic-write.ts';
import { programDigest } from './digest.ts';
import { readBytes } from './read-text.ts';

const ending = '.pdf-text';
const daysKept = 30;
const largest = 64_000_000;

/**
 * The text of PDFs, kept from one run to the next beside other results, for this user alone: reading a long one takes seconds. Each is known by the digest of the
 * PDF's bytes and by the program that read it. What is damaged, cut, older or not there is read anew, so nothing here throws.
 */
export class PdfTexts {
  readonly #folder: string;
  readonly #path: string;
  #digest: string | undefined;
  #isTidy = false;

  /** `program`: the path of the program that reads PDFs. Nothing is looked at before a text is asked for. */
  constructor(folder: string, program: string) {
    this.#folder = folder;
    this.#path = program;
  }

  /** Empty where there is no such program. */
  get #program(): string {
    this.#digest ??= programDigest(this.#path) ?? '';
    return this.#digest;
  }

  /** The pages of the PDF with this digest, as they were read by the same program. */
  pagesOf(sha256: string): readonly KeptPage[] | undefined {
    const read = readBytes(join(this.#folder, `${sha256}${ending}`), largest);
    if (!('bytes' in read) || this.#program === '') return undefined;
    const bytes = Buffer.from(read.bytes);
    const end = bytes.indexOf(10);
    const body = bytes.subarray(end + 1);
    if (end < 0 || bytes.toString('latin1', 0, end) !== this.#headOf(sha256, body)) return undefined;
    return JSON.parse(body.toString('utf8')) as readonly KeptPage[];
  }

  keep(sha256: string, pages: readonly KeptPage[]): void {
    const body = Buffer.from(JSON.stringify(pages), 'utf8');
    if (this.#program === '' || body.length > largest / 2) return;
    try {
      mkdirSync(this.#folder, { recursive: true, mode: 0o700 });
      const head = Buffer.from(`${this.#headOf(sha256, body)}\n`, 'latin1');
      writeAtomically(realpathSync.native(this.#folder), `${sha256}${ending}`, Buffer.concat([head, body]), 0o600);
      this.#forgetOld();
    } catch {
      // A folder that is no folder, or one that may not be written in.
    }
  }

  /** Tells a whole body, of this PDF, read by this program, from any other. */
  #headOf(sha256: string, body: Uint8Array): string {
    return `traywright-pdf-text ${sha256} ${this.#program} ${createHash('sha256').update(body).digest('hex')}`;
  }

  #forgetOld(): void {
    if (this.#isTidy) return;
    this.#isTidy = true;
    const oldest = Date.now() - daysKept * 86_400_000;
    for (const name of readdirSync(this.#folder)) {
      if (!/^[0-9a-f]{64}\.pdf-text$/.test(name)) continue;
      const path = join(this.#folder, name);
      if ((statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? oldest) < oldest) rmSync(path, { force: true });
    }
  }
}
