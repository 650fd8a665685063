// `npm run fuzz [TIMES]`: the trials with made-up input, many times as long as in `npm test` (50 times when nothing is said).
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const { status } = spawnSync(
  process.execPath,
  [
    resolve(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--config',
    'tests/vitest.config.ts',
    'tests/unit/fuzz',
    'tests/unit/schema/passes.test.ts',
    'tests/unit/sheet/archive.test.ts',
    'tests/cli/resumed-check.test.ts',
    'tests/unit/editor/completion-property.test.ts',
  ],
  { cwd: root, stdio: 'inherit', env: { ...process.env, FUZZ_TIMES: process.argv[2] ?? '50' } },
);
process.exit(status ?? 1);
