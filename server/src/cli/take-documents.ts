import { resolve } from 'node:path';
import type { Engine } from '../check/engine.ts';
import { keptFileAt } from '../host/kept-files.ts';
import { PdfReader } from '../host/pdf/pdf-reader.ts';
import { PdfTexts } from '../host/pdf-texts.ts';
import { keptPathsIn } from '../library/kept-paths.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';
import type { Progress } from './progress.ts';

/** How documents are read. */
export interface DocumentReading {
  /** The program that reads PDFs, an absolute path. */
  readonly program: string;
  /** The folder in which texts are kept from one run to the next; nothing is kept without one. */
  readonly texts: string | undefined;
}

/** Where texts of documents are kept, whatever the size of the library: beside other results. */
export function placeOfTexts({ results, cwd }: CommandIo, { switches, values }: Arguments): string | undefined {
  const asked = values.get('cache');
  if (switches.has('no-cache')) return undefined;
  return asked === undefined ? results : resolve(cwd, asked);
}

/** Reads the documents that the library keeps, so that quotes can be looked for in them. A library that keeps none costs nothing. */
export function takeDocuments(
  engine: Engine,
  root: string,
  { program, texts }: DocumentReading,
  progress: Progress,
): void {
  const paths = keptPathsIn(engine.view());
  const reader = new PdfReader(program);
  if (paths.length === 0 || !reader.isThere) return;
  const known = texts === undefined ? undefined : new PdfTexts(texts, program);
  for (const [index, path] of paths.entries()) {
    progress.slow?.(index + 1, paths.length, 'document');
    engine.keep(path, keptFileAt(root, path, reader, known));
  }
  reader.end();
}
