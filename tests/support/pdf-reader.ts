import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;

/** The program that reads PDFs, built anew. */
export function builtPdfReader(): string {
  const { status, stderr } = spawnSync(process.execPath, ['server/build/bundle.mjs', 'pdf-reader'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return join(root, 'dist/pdf-reader.cjs');
}
