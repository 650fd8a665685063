// Runs one TypeScript file of this folder: bundles it in memory and imports the result. Usage: node server/build/run.mjs FILE [ARGS]
import { mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [entry, ...rest] = process.argv.slice(2);
const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(root, 'node_modules', '.run-'));
const outfile = join(folder, 'run.mjs');
try {
  await build({
    entryPoints: [resolve(entry)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
    loader: { '.md': 'text' },
  });
  process.argv = [process.argv[0], outfile, ...rest];
  await import(pathToFileURL(outfile).href);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
