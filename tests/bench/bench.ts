/**
 * Measures speed and memory against floors that run beside it. Usage: npm run bench [-- MODE [PART...]]. Writes server/docs/bench.md and
 * .json: rows measured anew take the place of those of the same name. MODE: "full" (unless given); "once", one round each, for a busy
 * machine; "small", the same for 100 and 1,000 files only; "quick", a few rounds for these two, which writes nothing. PART: cold, reading, warm,
 * one, keystrokes, completions, latency; all of these unless given. "size", which takes long, is measured only when it is named: the cost of
 * a file in libraries of up to 50,000.
 */
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { build } from 'esbuild';
import { allRules } from '../../server/src/rules/all.generated.ts';
import type { Completions } from './completions.ts';
import { generateLibrary } from './generate-library.ts';
import { growthPlot } from './growth-plot.ts';
import type { Keystrokes } from './keystrokes.ts';
import { latencyRows } from './latency-rows.ts';
import type { Results, Row } from './results.ts';
import { growthRow, merged, page } from './results.ts';
import type { Program } from './runs.ts';
import { interleaved, quantile, runOnce } from './runs.ts';
import { templatesOf } from './templates.ts';

const root = process.cwd();
const [mode = 'full', ...parts] = process.argv.slice(2);
const sizes = mode === 'quick' || mode === 'small' ? [100, 1_000] : [100, 1_000, 10_000];
const largest = sizes.at(-1) ?? 0;
const today = ['--today', '2025-03-03', '--quiet'];
const folder = mkdtempSync(join(tmpdir(), 'traywright-bench-'));
try {
  const programs = await bundled([
    'parse-only',
    'read-only',
    'bare',
    'keystrokes',
    'completions',
    'floor-server',
    'latency',
  ]);
  makeLibraries();
  const measures = {
    cold: () => coldRows(programs),
    reading: () => readingRows(programs),
    warm: () => warmRows(programs),
    one: () => oneFileRows(programs),
    keystrokes: () => keystrokeRows(programs),
    completions: () => completionRows(programs),
    latency: () => latencyRows(programs, join(folder, String(largest)), mode, root),
    size: () => sizeRows(),
  };
  const rows: Row[] = [];
  for (const [part, measure] of Object.entries(measures)) {
    if (parts.length > 0 ? !parts.includes(part) : part === 'size') continue;
    rows.push(...measure());
    if (mode !== 'quick') keep(rows);
  }
  process.stdout.write(page(resultsOf(rows)));
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function resultsOf(rows: readonly Row[]): Results {
  return { node: process.versions.node, processors: availableParallelism(), rules: allRules.length, rows };
}

/** After each part, so that a run that is stopped is not lost. */
function keep(rows: readonly Row[]): void {
  const file = join(root, 'server/docs/bench.json');
  const old = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Results).rows : [];
  const results = resultsOf(merged(old, rows));
  writeFileSync(join(root, 'server/docs/bench.md'), page(results));
  writeFileSync(file, `${JSON.stringify(results, undefined, 2)}\n`);
}

function rounds(usual: number): number {
  return mode === 'once' || mode === 'small' ? 1 : usual;
}

function makeLibraries(): void {
  const templates = templatesOf(corrected());
  for (const size of sizes) write(join(folder, String(size)), generateLibrary(templates, size));
}

/** Programs of this folder as they would be shipped: the floors are given the same reader and the same treatment as the command line. */
async function bundled(names: readonly string[]): Promise<ReadonlyMap<string, string>> {
  await build({
    entryPoints: names.map((name) => join(root, `tests/bench/${name}.ts`)),
    outdir: join(folder, 'programs'),
    outExtension: { '.js': '.cjs' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    minifySyntax: true,
    minifyWhitespace: true,
    alias: { yaml: resolve(root, 'node_modules/yaml/browser/index.js') },
    logLevel: 'warning',
  });
  return new Map(names.map((name) => [name, join(folder, 'programs', `${name}.cjs`)]));
}

function coldRows(bundles: ReadonlyMap<string, string>): readonly Row[] {
  return sizes.flatMap((size) => {
    const library = join(folder, String(size));
    const parse = (documents: string): Program => ({
      name: documents,
      file: bundles.get('parse-only') ?? '',
      args: [library, documents],
    });
    const check = (name: string, workers: string): Program => ({
      name,
      file: 'dist/traywright.cjs',
      args: ['check', library, ...today, '--no-cache', '--workers', workers],
    });
    const checks = [check('check', '1'), ...(size < 1_000 ? [] : [check('together', '2')])];
    const programs = [parse('drop'), ...checks, ...(rounds(3) === 1 ? [] : [parse('keep')])];
    const uses = interleaved(programs, rounds(size < 10_000 ? 3 : 5), root);
    const rows = coldRowsOf(size, uses);
    if (mode !== 'quick') keep(rows);
    return rows;
  });
}

function coldRowsOf(size: number, uses: ReturnType<typeof interleaved>): readonly Row[] {
  const [drop, check, together, kept] = ['drop', 'check', 'together', 'keep'].map((name) => uses.get(name));
  if (drop === undefined || check === undefined) return [];
  const files = `${size.toLocaleString('en')} files`;
  const goal = size === 10_000;
  const row = (what: string, ours: number, floor: number, unit: string, name: string, wanted?: number): Row => ({
    what: `${what}, ${files}`,
    ratio: ours / floor,
    ...(goal && wanted !== undefined && { goal: wanted }),
    floor: name,
    measured: `${Math.round(ours)} ${unit}${unit === 'ms' ? `, ${(ours / size).toFixed(1)} a file` : ''}`,
  });
  const ofTwo =
    together === undefined
      ? []
      : [
          row('cold check, two threads', together.cpuMs, drop.cpuMs, 'ms', 'parse-only'),
          row(
            'cold check, two threads, by the clock',
            together.wallMs,
            drop.wallMs,
            'ms',
            'parse-only, by the clock',
            0.8,
          ),
          row('peak memory, two threads', together.peakMb, drop.peakMb, 'MB', 'parse-only, documents let go', 2),
        ];
  return [
    row('cold check, one thread', check.cpuMs, drop.cpuMs, 'ms', 'parse-only', 1.35),
    row('cold check, one thread, by the clock', check.wallMs, drop.wallMs, 'ms', 'parse-only, by the clock'),
    row('peak memory', check.peakMb, drop.peakMb, 'MB', 'parse-only, documents let go', 2),
    ...ofTwo,
    ...(kept === undefined ? [] : [row('peak memory', check.peakMb, kept.peakMb, 'MB', 'parse-only, documents kept')]),
  ];
}

/** What a file costs against the size of its library, beside what one costs among ten thousand; and a plot of it. */
function sizeRows(): readonly Row[] {
  const templates = templatesOf(corrected());
  const all = mode === 'full' || mode === 'once' ? [100, 1_000, 10_000, 20_000, 50_000] : [100, 1_000, 3_000];
  const programs = all.map((size): Program => {
    const library = join(folder, `size-${size}`);
    write(library, generateLibrary(templates, size));
    const args = ['check', library, ...today, '--no-cache', '--workers', '1'];
    return { name: String(size), file: 'dist/traywright.cjs', args };
  });
  const uses = interleaved(programs, rounds(3), root);
  const costs = all.map((size) => ({ size, ms: uses.get(String(size))?.cpuMs ?? Number.NaN }));
  const floor = costs.filter(({ size }) => size <= 10_000).at(-1);
  if (floor === undefined) return [];
  if (mode !== 'quick') writeFileSync(join(root, 'server/docs/growth.svg'), growthPlot(costs, floor));
  return costs.map(({ size, ms }) => ({
    what: `${growthRow} ${size.toLocaleString('en')} files`,
    ratio: ms / size / (floor.ms / floor.size),
    floor: `a file of ${floor.size.toLocaleString('en')}`,
    measured: `${(ms / size).toFixed(2)} ms a file`,
  }));
}

/** What is left of a check when nothing is judged. */
function readingRows(bundles: ReadonlyMap<string, string>): readonly Row[] {
  const [parse, read] = ['parse-only', 'read-only'];
  return sizes.flatMap((size) => {
    const args = [join(folder, String(size)), 'drop'];
    const programs = [parse, read].map((name): Program => ({ name, file: bundles.get(name) ?? '', args }));
    const uses = interleaved(programs, rounds(3), root);
    const [ours, floor] = [uses.get(read), uses.get(parse)];
    if (ours === undefined || floor === undefined) return [];
    const what = `reading alone, one thread, ${size.toLocaleString('en')} files`;
    const measured = `${Math.round(ours.cpuMs)} ms, ${((1_000 * ours.cpuMs) / size).toFixed(0)} µs a file`;
    return [{ what, ratio: ours.cpuMs / floor.cpuMs, floor: 'parse-only', measured }];
  });
}

/** The same check again, nothing changed and one file changed. Each library has its results in a folder of its own. */
function warmRows(programs: ReadonlyMap<string, string>): readonly Row[] {
  const bare = { name: 'bare', file: programs.get('bare') ?? '', args: [] };
  return sizes.flatMap((size) => {
    const library = join(folder, String(size));
    const args = ['check', library, ...today, '--cache', join(folder, `results-${size}`)];
    const check = { name: 'nothing', file: 'dist/traywright.cjs', args };
    const edits = ['documents', 'sets', 'devices'].map((kind): Program => {
      const changed = fileAmong(library, kind);
      return {
        ...check,
        name: `one file (${kind.slice(0, -1)})`,
        before: () => appendFileSync(changed, '# looked at\n'),
      };
    });
    runOnce(check, root);
    // In turn, so that the check in which nothing changed always follows one that was kept.
    const uses = interleaved([bare, ...edits, check], mode === 'full' ? 5 : mode === 'quick' ? 2 : 3, root);
    const floor = uses.get('bare')?.cpuMs ?? Number.NaN;
    return [check, ...edits].map(({ name }): Row => {
      const ours = uses.get(name)?.cpuMs ?? Number.NaN;
      const goal = size === 10_000 ? { goal: name === 'nothing' ? 7 : 5 } : {};
      const what = `check again, ${name} changed, ${size.toLocaleString('en')} files`;
      return { what, ratio: ours / floor, ...goal, floor: 'bare Node', measured: `${Math.round(ours)} ms` };
    });
  });
}

function fileAmong(library: string, kind: string): string {
  const names = readdirSync(join(library, kind)).sort();
  return join(library, kind, names[Math.floor(names.length / 2)] ?? '');
}

function oneFileRows(programs: ReadonlyMap<string, string>): readonly Row[] {
  const files = corrected();
  const only = (name: string, path: string): Program => {
    const library = join(folder, name);
    write(library, new Map(['library.ifu.yaml', path].map((one) => [one, files.get(one) ?? ''])));
    return { name, file: 'dist/traywright.cjs', args: ['check', library, ...today] };
  };
  const bare = { name: 'bare', file: programs.get('bare') ?? '', args: [] };
  const device = only('one-device', 'devices/duskwell-lap-scissors-takeapart.ifu.yaml');
  const tiny = only('one-tiny', 'water/tap.ifu.yaml');
  const uses = interleaved([bare, device, tiny], mode === 'full' ? 25 : 9, root);
  return [device, tiny].flatMap(({ name }) => {
    const ours = uses.get(name);
    const floor = uses.get('bare');
    if (ours === undefined || floor === undefined) return [];
    const what = `check of one file (${name === 'one-tiny' ? 'tiny' : 'a whole device'})`;
    return [
      { what, ratio: ours.cpuMs / floor.cpuMs, goal: 2, floor: 'bare Node', measured: `${Math.round(ours.cpuMs)} ms` },
      {
        what: `${what}, by the clock`,
        ratio: ours.wallMs / floor.wallMs,
        floor: 'bare Node, by the clock',
        measured: `${Math.round(ours.wallMs)} ms`,
      },
    ];
  });
}

function keystrokeRows(programs: ReadonlyMap<string, string>): readonly Row[] {
  const file = programs.get('keystrokes') ?? '';
  const program = { name: 'keystrokes', file, args: [join(folder, String(largest)), mode === 'full' ? '300' : '60'] };
  const rows = JSON.parse(runOnce(program, root).output) as readonly Keystrokes[];
  return rows.flatMap(({ name, own, all, affected, parse }) => {
    const row = (what: string, times: readonly number[], share: number): Row => ({
      what: `edit of ${name}, ${what}, ${share === 0.5 ? 'median' : 'p95'}`,
      ratio: quantile(times, share) / quantile(parse, share),
      floor: '`yaml` parsing the same text',
      measured: `${quantile(times, share).toFixed(1)} ms, ${quantile(affected, share)} files`,
    });
    const seen = 'findings of the file';
    const everywhere = 'findings of all files it affects';
    return [row(seen, own, 0.5), row(seen, own, 0.95), row(everywhere, all, 0.5), row(everywhere, all, 0.95)];
  });
}

/** What may be written at a place, and what stands beside a file, right after an edit of it. */
function completionRows(programs: ReadonlyMap<string, string>): readonly Row[] {
  const file = programs.get('completions') ?? '';
  const program = { name: 'completions', file, args: [join(folder, String(largest)), mode === 'full' ? '300' : '60'] };
  const rows = JSON.parse(runOnce(program, root).output) as readonly Completions[];
  return rows.flatMap(({ name, answer, parse }) =>
    [0.5, 0.95].map((share) => ({
      what: `answer: ${name}, ${share === 0.5 ? 'median' : 'p95'}`,
      ratio: quantile(answer, share) / quantile(parse, share),
      floor: '`yaml` parsing the same text',
      measured: `${quantile(answer, share).toFixed(1)} ms`,
    })),
  );
}

function corrected(): ReadonlyMap<string, string> {
  const sample = join(root, 'samples/lanternfield-corrected');
  const paths = readdirSync(sample, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ifu.yaml'));
  return new Map(paths.map((path) => [path.replaceAll('\\', '/'), readFileSync(join(sample, path), 'utf8')]));
}

function write(library: string, files: ReadonlyMap<string, string>): void {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(library, path)), { recursive: true });
    writeFileSync(join(library, path), text);
  }
}
