// Bundles each face into one file under dist/, the command line into a program and what Node makes of it. Usage: node server/build/bundle.mjs [NAME...], all of them when none is named.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmodSync, copyFileSync, readdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { build, transform } from 'esbuild';
import { noNetworkGlobals, noNetworkModules } from './no-network.mjs';
import { nodeOnDemand } from './node-on-demand.mjs';

const root = resolve(import.meta.dirname, '../..');

/** One row a face: its entry and file from the root, and what it runs on. */
export const bundles = [
  {
    name: 'cli',
    entry: 'server/src/cli/main.ts',
    out: 'dist/traywright-core.cjs',
    format: 'cjs',
    platform: 'node',
    launcher: 'dist/traywright.cjs',
  },
  { name: 'server', entry: 'server/src/lsp/main.ts', out: 'dist/server.cjs', format: 'cjs', platform: 'node' },
  {
    name: 'pdf-reader',
    entry: 'server/src/host/pdf/reader.ts',
    out: 'dist/pdf-reader.cjs',
    format: 'cjs',
    platform: 'node',
    // Of the way to a drawing package nothing is left: nothing is loaded from anywhere.
    define: { 'import.meta.url': 'undefined' },
  },
  {
    name: 'workbook',
    entry: 'server/src/host/workbook/workbook.ts',
    out: 'dist/workbook.cjs',
    format: 'cjs',
    platform: 'node',
  },
  {
    name: 'client',
    entry: 'client/src/node.ts',
    out: 'dist/client.cjs',
    format: 'cjs',
    platform: 'node',
    external: ['vscode'],
  },
  {
    name: 'worker',
    entry: 'server/src/lsp/worker.ts',
    out: 'dist/server-worker.js',
    format: 'iife',
    platform: 'browser',
  },
  {
    name: 'browser-client',
    entry: 'client/src/browser.ts',
    out: 'dist/client-browser.js',
    format: 'cjs',
    platform: 'browser',
    external: ['vscode'],
  },
  // Beside the other media: the page may load nothing from any other folder.
  { name: 'page', entry: 'client/page/main.ts', out: 'client/media/set-sheet.js', format: 'iife', platform: 'browser' },
  {
    name: 'review-page',
    entry: 'client/page/review-main.ts',
    out: 'client/media/review.js',
    format: 'iife',
    platform: 'browser',
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

/** The compiled schemas: their names serve nobody, and every character is read at each start. */
const shortValidators = {
  name: 'short-validators',
  setup({ onLoad }) {
    onLoad({ filter: /validators\.generated\.js$/ }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, 'utf8'), { minify: true });
      return { contents: code, loader: 'js' };
    });
  },
};

/** What a bundle is built with. */
export function optionsOf(bundle) {
  return {
    absWorkingDir: root,
    entryPoints: [bundle.entry],
    outfile: bundle.out,
    bundle: true,
    format: bundle.format,
    platform: bundle.platform,
    target: bundle.platform === 'node' ? 'node20' : 'es2022',
    external: bundle.external ?? [],
    define: { ...noNetworkGlobals, ...bundle.define },
    mainFields: ['module', 'main'],
    minifySyntax: true,
    minifyWhitespace: true,
    minifyIdentifiers: bundle.name === 'pdf-reader',
    // Plain ASCII: Node reads such a file faster and keeps it in half the memory.
    charset: 'ascii',
    // The form of the reader that can be bundled in part; its other form comes whole.
    alias: { yaml: resolve(root, 'node_modules/yaml/browser/index.js') },
    plugins: [noNetworkModules, schemasOnDemand, shortValidators, ...(bundle.name === 'cli' ? [nodeOnDemand] : [])],
    legalComments: bundle.name === 'pdf-reader' ? 'eof' : 'none',
    logLevel: 'warning',
    loader: { '.md': 'text' },
  };
}

/** Builds all bundles, or those that are named. */
async function make(wanted) {
  for (const bundle of bundles) {
    if (wanted.length > 0 && !wanted.includes(bundle.name)) continue;
    await build(optionsOf(bundle));
    if (bundle.name !== 'pdf-reader') writeAscii(resolve(root, bundle.out));
    if (bundle.launcher !== undefined) makeLauncher(bundle);
  }
}

/** Rewrites the file with what is left of other characters (they stand in patterns, which `charset` leaves alone) as escapes. */
function writeAscii(file) {
  const text = readFileSync(file, 'utf8');
  const escaped = text.replace(/(\\?)([^\t-~])/g, (_, before, character) => {
    if (before !== '') throw new Error(`${file}: an escaped ${character} cannot be written in ASCII`);
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
  if (escaped !== text) writeFileSync(file, escaped, 'latin1');
}

/** A command is started many times a day: what Node makes of the program's text is kept beside it. See launcher.cjs. */
function makeLauncher({ out, launcher }) {
  const core = resolve(root, out);
  const text = readFileSync(core, 'latin1');
  const name = createHash('sha256').update(text).digest('hex').slice(0, 32);
  writeFileSync(core, `/*${name}*/${text}`, 'latin1');
  copyFileSync(resolve(import.meta.dirname, 'launcher.cjs'), resolve(root, launcher));
  chmodSync(resolve(root, launcher), 0o755);
  const compile = resolve(import.meta.dirname, 'compile.cjs');
  const { status } = spawnSync(process.execPath, [compile, core, resolve(root, 'samples/lanternfield')], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (status !== 0 && status !== 1) throw new Error(`${core} cannot be run (${status})`);
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === import.meta.filename)
  await make(process.argv.slice(2));
