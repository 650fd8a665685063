import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = new URL('../..', import.meta.url).pathname;

/** The part that knows workbooks, built anew. */
export function builtWorkbookPart(): string {
  const { status, stderr } = spawnSync(process.execPath, ['server/build/bundle.mjs', 'workbook'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return join(root, 'dist/workbook.cjs');
}
