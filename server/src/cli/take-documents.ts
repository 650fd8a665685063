import type { Engine } from '../check/engine.ts';
import { keptFileAt } from '../host/kept-files.ts';
import { PdfReader } from '../host/pdf/pdf-reader.ts';
import { keptPathsIn } from '../library/kept-file.ts';
import type { Progress } from './progress.ts';

/** Reads the documents that the library keeps, so that quotes can be looked for in them. A library that keeps none costs nothing. */
export function takeDocuments(engine: Engine, root: string, program: string, progress: Progress): void {
  const paths = keptPathsIn(engine.view());
  const reader = new PdfReader(program);
  if (paths.length === 0 || !reader.isThere) return;
  for (const [index, path] of paths.entries()) {
    progress.slow?.(index + 1, paths.length, 'document');
    engine.keep(path, keptFileAt(root, path, reader));
  }
  reader.end();
}
