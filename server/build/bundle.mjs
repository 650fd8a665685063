// Bundles each face into one file under dist/. Usage: node server/build/bundle.mjs [NAME...], all of them when none is named.
import { chmodSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { build, transform } from 'esbuild';

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

/** Compiled schemas: their names serve nobody, and every character is read at each start. */
const shortValidators = {
  name: 'short-validators',
  setup({ onLoad }) {
    onLoad({ filter: /validators\.generated\.js$/ }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, 'utf8'), { minify: true });
      return { contents: code, loader: 'js' };
    });
  },
};

/** Large data as text to be parsed, which is quicker to start with than the same as code. */
const schemasAsText = {
  name: 'schemas-as-text',
  setup({ onLoad }) {
    onLoad({ filter: /\.schema\.json$/ }, ({ path }) => {
      const text = JSON.stringify(JSON.parse(readFileSync(path, 'utf8')));
      return { contents: `export default JSON.parse(${JSON.stringify(text)});`, loader: 'js' };
    });
  },
};

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
    // Plain ASCII: Node reads such a file faster and keeps it in half the memory.
    charset: 'ascii',
    // The form of the reader that can be bundled in part; its other form comes whole.
    alias: { yaml: resolve(root, 'node_modules/yaml/browser/index.js') },
    plugins: [shortValidators, schemasAsText],
    legalComments: 'none',
    logLevel: 'warning',
    loader: { '.md': 'text' },
    ...(bundle.banner && { banner: { js: bundle.banner } }),
  });
  if (bundle.executable) chmodSync(resolve(root, bundle.out), 0o755);
}
