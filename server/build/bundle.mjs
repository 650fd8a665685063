// Bundles each face into one file under dist/. Usage: node server/build/bundle.mjs [NAME...], all of them when none is named.
import { chmodSync, readdirSync, readFileSync } from 'node:fs';
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

/** The schemas as text that is parsed one by one when asked for: a check of one file needs two or three of them. */
const schemasOnDemand = {
  name: 'schemas-on-demand',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]schemas\.generated\.ts$/ }, () => {
      const folder = resolve(root, 'schemas');
      const files = readdirSync(folder).filter((name) => name.endsWith('.schema.json'));
      const texts = files.map((name) => [
        name.replace('.schema.json', ''),
        JSON.stringify(JSON.parse(readFileSync(resolve(folder, name), 'utf8'))),
      ]);
      return { contents: onDemand(Object.fromEntries(texts)), loader: 'js' };
    });
  },
};

function onDemand(texts) {
  return `const texts = ${JSON.stringify(texts)};
const made = new Map();
export const schemas = {
  get(name) {
    if (!made.has(name) && Object.hasOwn(texts, name)) made.set(name, JSON.parse(texts[name]));
    return made.get(name);
  },
};`;
}

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
    plugins: [schemasOnDemand],
    legalComments: 'none',
    logLevel: 'warning',
    loader: { '.md': 'text' },
    ...(bundle.banner && { banner: { js: bundle.banner } }),
  });
  if (bundle.executable) chmodSync(resolve(root, bundle.out), 0o755);
}
