// Bundles each face into one file under dist/. Usage: node server/build/bundle.mjs [NAME...], all of them when none is named.
import { chmodSync } from 'node:fs';
import { resolve } from 'node:path';
import { build } from 'esbuild';

const root = resolve(import.meta.dirname, '../..');

/** One row a face: its entry and file from the root, and what it runs on. */
const bundles = [
  {
    name: 'cli',
    entry: 'server/src/cli/main.ts',
    out: 'dist/traywright.cjs',
    format: 'cjs',
    platform: 'node',
    banner: '#!/usr/bin/env node',
    executable: true,
  },
  { name: 'server', entry: 'server/src/lsp/main.ts', out: 'dist/server.cjs', format: 'cjs', platform: 'node' },
  {
    name: 'client',
    entry: 'client/src/extension.ts',
    out: 'dist/client.cjs',
    format: 'cjs',
    platform: 'node',
    external: ['vscode'],
  },
];

const wanted = process.argv.slice(2);
for (const bundle of bundles) {
  if (wanted.length > 0 && !wanted.includes(bundle.name)) continue;
  await build({
    absWorkingDir: root,
    entryPoints: [bundle.entry],
    outfile: bundle.out,
    bundle: true,
    format: bundle.format,
    platform: bundle.platform,
    target: bundle.platform === 'node' ? 'node20' : 'es2022',
    external: bundle.external ?? [],
    mainFields: ['module', 'main'],
    minifySyntax: true,
    minifyWhitespace: true,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    loader: { '.md': 'text' },
    ...(bundle.banner && { banner: { js: bundle.banner } }),
  });
  if (bundle.executable) chmodSync(resolve(root, bundle.out), 0o755);
}
