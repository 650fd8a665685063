// Bundles each face into one file under dist/; the command line into two programs, what Node makes of them, and what they read on demand.
// Usage: node server/build/bundle.mjs [NAME...], all of them when none is named.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  appendFileSync,
  chmodSync,
  copyFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { build, transform } from 'esbuild';
import { noNetworkGlobals, noNetworkModules } from './no-network.mjs';
import { nodeOnDemand } from './node-on-demand.mjs';
import { textsOnDemand } from './texts-on-demand.mjs';

const root = resolve(import.meta.dirname, '../..');

/** One row a face: its entry and file from the root, and what it runs on. */
export const bundles = [
  {
    name: 'cli',
    entry: 'server/src/cli/main.ts',
    out: 'dist/traywright-core.cjs',
    format: 'cjs',
    platform: 'node',
    // What its functions are tried with before they are kept, so that those a command needs are among what is kept.
    trial: ['routes', 'samples/lanternfield', '--today', '2025-03-03'],
  },
  // `check` runs at every change, and starts sooner when the other commands are not read with it (DEVELOPERS.md has the measurement).
  // Its name is the same: the launcher needs both.
  {
    name: 'cli',
    entry: 'server/src/cli/check-main.ts',
    out: 'dist/traywright-check.cjs',
    format: 'cjs',
    platform: 'node',
    trial: ['check', '--today', '2025-03-03'],
    // A library that is checked for the first time, and one that was checked before and changed a little: what either needs is kept.
    libraries: ['samples/lanternfield', 'samples/lanternfield-corrected'],
    // What a check of few files is tried with.
    few: ['library.ifu.yaml', 'devices/duskwell-lap-scissors-takeapart.ifu.yaml', 'water/tap.ifu.yaml'],
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
const schemasAsText = {
  name: 'schemas-as-text',
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
    plugins: [
      noNetworkModules,
      ...(bundle.trial === undefined ? [schemasAsText, shortValidators] : [nodeOnDemand, textsOnDemand]),
    ],
    legalComments: bundle.name === 'pdf-reader' ? 'eof' : 'none',
    logLevel: 'warning',
    loader: { '.md': 'text' },
  };
}

/** Builds a bundle into a folder, with what belongs to it. */
export async function writeBundle(bundle, folder) {
  const { outputFiles } = await build({ ...optionsOf(bundle), write: false });
  mkdirSync(folder, { recursive: true });
  for (const { path, text } of outputFiles) {
    const written = bundle.name === 'pdf-reader' ? text : inAscii(path, text);
    const isProgram = bundle.trial !== undefined && basename(path) === basename(bundle.out);
    writeWhole(join(folder, basename(path)), isProgram ? asProgram(written) : written);
  }
  if (bundle.trial === undefined) return;
  copyFileSync(resolve(import.meta.dirname, 'launcher.cjs'), join(folder, 'traywright.cjs'));
  chmodSync(join(folder, 'traywright.cjs'), 0o755);
}

/** The text with what is left of other characters (they stand in patterns, which `charset` leaves alone) as escapes. */
function inAscii(file, text) {
  return text.replace(/(\\?)([^\t-~])/g, (_, before, character) => {
    if (before !== '') throw new Error(`${file}: an escaped ${character} cannot be written in ASCII`);
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}

/** As a function to be called by launcher.cjs, so that nothing has to be put around so long a text at each start; named by its content. */
function asProgram(text) {
  const name = createHash('sha256').update(text).digest('hex').slice(0, 32);
  return `/*${name}*/(function (exports, require, module, __filename, __dirname) {${text}\n})`;
}

/** At once, so that whoever runs the program meanwhile reads the old or the new one. */
function writeWhole(file, text) {
  const part = `${file}.${process.pid}`;
  writeFileSync(part, text);
  renameSync(part, file);
}

/** A command is started many times a day: what Node makes of the program's text is kept beside it. See launcher.cjs. */
function keepCompiled({ out, trial, libraries = [], few = [] }) {
  const program = resolve(root, out);
  const compile = resolve(import.meta.dirname, 'compile.cjs');
  const folder = mkdtempSync(join(tmpdir(), 'traywright-'));
  try {
    const copies = libraries.map((library) => join(folder, basename(library)));
    for (const [at, copy] of copies.entries()) cpSync(resolve(root, libraries[at]), copy, { recursive: true });
    const results = copies.length === 0 ? [] : ['--cache', join(folder, 'results')];
    const run = (...words) => {
      const { status } = spawnSync(process.execPath, words, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
      if (status !== 0 && status !== 1) throw new Error(`${out} cannot be run (${status})`);
    };
    const known = copies.slice(1);
    if (known.length > 0) {
      run(join(dirname(program), 'traywright.cjs'), ...trial, ...known, ...results);
      for (const copy of known) for (const kind of ['devices', 'sets', 'documents']) touchOne(join(copy, kind));
    }
    run(compile, program, 'all', ...trial, ...copies, ...results);
    if (few.length === 0) return;
    const small = join(folder, 'few');
    for (const file of few) cpSync(join(copies[0], file), join(small, file));
    run(compile, program, 'few', ...trial, small);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function touchOne(folder) {
  const [name] = readdirSync(folder).sort();
  appendFileSync(join(folder, name), '# looked at\n');
}

/** Builds all bundles, or those that are named. */
async function make(wanted) {
  for (const bundle of bundles) {
    if (wanted.length > 0 && !wanted.includes(bundle.name)) continue;
    await writeBundle(bundle, dirname(resolve(root, bundle.out)));
    if (bundle.trial !== undefined) keepCompiled(bundle);
  }
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === import.meta.filename)
  await make(process.argv.slice(2));
