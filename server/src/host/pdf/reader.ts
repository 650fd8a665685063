import { parentPort } from 'node:worker_threads';
import { pagesOf } from './pdf-pages.ts';
import type { PdfRequest } from './pdf-reader.ts';

/**
 * The program that reads PDFs, in a thread of its own with a bundle of its own: one that hangs or swells is stopped from outside, and who
 * has no PDF never loads it.
 */
parentPort?.on('message', async ({ bytes, port, done }: PdfRequest) => {
  port.postMessage(await pagesOf(bytes));
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
  port.close();
});
