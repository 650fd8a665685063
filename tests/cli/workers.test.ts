import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { judgedShareIn, toHelperIn } from '../../server/src/cli/together/messages.ts';
import { generateLibrary } from '../bench/generate-library.ts';
import { templatesOf } from '../bench/templates.ts';
import { Built } from '../support/built.ts';
import { cli, folderWith, type Outcome, type Surroundings } from '../support/cli.ts';
import { pdfOf } from '../support/pdf.ts';
import { builtPdfReader } from '../support/pdf-reader.ts';
import { readSample } from '../support/samples.ts';

let built: Built;
beforeAll(async () => {
  built = await Built.of('cli');
});
afterAll(() => built.remove());

const json = ['check', '--format', 'json'];

/** What a check says with so many threads, nothing kept from one to the next. */
function said(workers: number, around: Surroundings, ...words: readonly string[]): Promise<Outcome> {
  return cli([...json, '--no-cache', '--workers', String(workers), ...words], { helper: built.cli, ...around });
}

/** The generated library with four departments, one file in fifty wrong, and files that cannot be read at all. */
function severalDepartments(): string {
  const templates = templatesOf(readSample('lanternfield-corrected'));
  const library = Object.fromEntries(generateLibrary(templates, 1_300, 5));
  return folderWith({
    ...library,
    'devices/a-torn.ifu.yaml': Buffer.of(107, 255, 254, 0, 10),
    'devices/z-half.ifu.yaml': 'kind: device\nid: half\nname: [',
    'sets/none.ifu.yaml': '',
  });
}

describe('a check by several threads', () => {
  it.each(['lanternfield', 'lanternfield-corrected', 'saltmere-eye-clinic'] as const)(
    'says byte for byte what one thread says of %s',
    async (name) => {
      const cwd = folderWith(Object.fromEntries(readSample(name)));
      const alone = await said(1, { cwd });
      for (const workers of [2, 3]) expect(await said(workers, { cwd })).toEqual(alone);
    },
  );

  it('says the same of a large library with several departments, in every form, and of a part of it', async () => {
    const cwd = severalDepartments();
    const reports = folderWith({});
    const inAllForms = async (workers: number) => {
      const outputs = ['sarif', 'junit', 'markdown', 'text'].flatMap((form) => [
        '--output',
        `${form}=${join(reports, form)}`,
      ]);
      const outcome = await said(workers, { cwd }, ...outputs);
      return { ...outcome, written: readdirSync(reports).map((form) => readFileSync(join(reports, form), 'utf8')) };
    };
    const alone = await inAllForms(0);
    expect(alone.out).toContain('"rule"');
    expect(await inAllForms(2)).toEqual(alone);
    const part = ['--fail-on', 'advice', '--max-warnings', '2', 'sterilizers', 'questions'];
    expect(await said(3, { cwd }, ...part)).toEqual(await said(1, { cwd }, ...part));
  }, 240_000);

  it('holds back by a baseline what one thread holds back', async () => {
    const cwd = folderWith(Object.fromEntries(readSample('lanternfield')));
    await cli(['baseline'], { cwd });
    writeFileSync(join(cwd, 'devices/late.ifu.yaml'), 'kind: device\nid: late\nfrobnicate: "yes"\n');
    const alone = await said(1, { cwd });
    expect(alone.out).toContain('late');
    expect(await said(2, { cwd })).toEqual(alone);
  });

  it('looks for quotes in the documents that the library keeps', async () => {
    const cwd = folderWith({
      ...Object.fromEntries(readSample('lanternfield')),
      'documents/pf.ifu.yaml': 'kind: document\nid: pf-1-a\ndoc: PF-1\nrev: A\nfile: pf.pdf\n',
      'documents/pf.pdf': pdfOf([{ lines: ['Dry for at least 30 minutes.'] }]),
      'devices/pale.ifu.yaml':
        'kind: device\nid: pale-forceps\nstatements:\n  s1: {doc: PF-1, rev: A, page: 1, quote: "Dry for at least 20 minutes."}\ndrying: {time: {at_least: 20 min}, src: s1}\n',
    });
    const around = { cwd, pdfReader: builtPdfReader() };
    const alone = await said(1, around);
    expect(alone.out).toContain('quote-not-on-page');
    expect(await said(2, around)).toEqual(alone);
    expect(await said(4, around)).toEqual(alone);
  });

  it('keeps the very results that one thread keeps, and they are taken up again', async () => {
    const cwd = folderWith(Object.fromEntries(readSample('lanternfield')));
    const around = { cwd, helper: built.cli, build: 'one' };
    const kept = async (workers: string) => {
      const folder = join(folderWith({}), 'results');
      const words = [...json, '--cache', folder, '--workers', workers];
      const first = await cli(words, around);
      const bytes = readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ name, parentPath }) => [name, readFileSync(join(parentPath, name)).toString('base64')]);
      expect(await cli(words, around)).toEqual(first);
      return { first, bytes, words };
    };
    const alone = await kept('1');
    const together = await kept('3');
    expect(together.first).toEqual(alone.first);
    expect(together.bytes).toEqual(alone.bytes);
    writeFileSync(join(cwd, 'water/tap.ifu.yaml'), 'kind: water\nid: tap\n');
    const plain = await said(1, { cwd });
    expect(await cli(together.words, around)).toEqual(plain);
    expect(await cli(alone.words, around)).toEqual(plain);
  });

  it('shows how far it is on a terminal and leaves no line behind', async () => {
    const cwd = folderWith(
      Object.fromEntries(Array.from({ length: 400 }, (_, at) => [`q-${at}.ifu.yaml`, `kind: question\nid: q-${at}\n`])),
    );
    writeFileSync(join(cwd, 'library.ifu.yaml'), 'kind: library\nid: many\n');
    const { err } = await said(2, { cwd, terminal: 'terminal' }, '--timing');
    expect(err).toContain('Reading 400 of 401 files');
    expect(err.match(/Checking 400 of 401 files/g)).toHaveLength(1);
    const [, ...last] = err.split('\u001b[K').slice(-2);
    expect(last.join('')).toMatch(/^traywright: \.: read in \d+ ms, checked in \d+ ms\n$/);
  });
});

describe('a thread that fails', () => {
  /** Instead of a helper; `rest` runs once it was told to begin. */
  const faulty = (rest: string) => {
    const folder = folderWith({
      'helper.cjs': `const { parentPort } = require('node:worker_threads');
parentPort.on('message', ({ say, task }) => { if (say === 'begin') { ${rest} } });`,
    });
    return join(folder, 'helper.cjs');
  };

  /** What it would have judged is taken, so that nobody else does it. */
  const takesItsShare =
    'const left = new Int32Array(task.shares); const share = left[task.worker]; left[task.worker] = ((share >>> 16) << 16) | (share >>> 16);';

  it.each([
    ['throws', `${takesItsShare} throw new Error('a fault\\u001b[2J');`, 'a fault'],
    ['ends', `${takesItsShare} process.exit(7);`, 'it ended too early'],
    [
      'says nothing of use',
      `${takesItsShare} parentPort.postMessage({ files: ['x'] }); parentPort.close();`,
      'not whole',
    ],
  ])(
    'and %s is told of once, and its work is done by the first',
    async (_, rest, why) => {
      const cwd = folderWith(Object.fromEntries(readSample('lanternfield')));
      const alone = await said(1, { cwd });
      const together = await said(2, { cwd, helper: faulty(rest) });
      expect({ ...together, err: '' }).toEqual(alone);
      expect(together.err).toMatch(
        /^traywright: \.: a thread that checks beside the first ended early \(.*\)[^\n]*\n$/,
      );
      expect(together.err).toContain(why);
      expect(together.err).not.toContain('\u001b');
    },
    60_000,
  );

  it('for want of memory costs nothing but time, and what is kept is the same', async () => {
    const cwd = severalDepartments();
    const kept = async (words: readonly string[], around: Partial<Surroundings>) => {
      const results = join(folderWith({}), 'results');
      const outcome = await cli([...json, '--cache', results, ...words], { cwd, build: 'one', ...around });
      const bytes = readdirSync(results).map((name) => readFileSync(join(results, name)).toString('base64'));
      return { outcome, bytes };
    };
    const alone = await kept(['--workers', '1'], {});
    const together = await kept(['--workers', '2'], { helper: built.cli, helperMemory: 20 });
    expect(together.outcome.err).toMatch(/ended early \(.*memory limit.*\); the first did its work as well\.\n$/);
    expect({ ...together, outcome: { ...together.outcome, err: '' } }).toEqual(alone);
  }, 240_000);

  it('is told of where its program is not there', async () => {
    const cwd = folderWith(Object.fromEntries(readSample('lanternfield')));
    const together = await said(2, { cwd, helper: join(cwd, 'no-such.cjs') });
    expect({ ...together, err: '' }).toEqual(await said(1, { cwd }));
    expect(together.err).toContain('ended early');
  });
});

describe('what threads say to each other', () => {
  it('is looked at before it is believed', () => {
    const memory = new SharedArrayBuffer(8);
    expect(toHelperIn({ say: 'begin', task: { shares: memory } })).toBeDefined();
    for (const odd of [undefined, 7, 'begin', {}, { say: 'begin' }, { say: 'files', opened: {} }, { say: 'stop' }])
      expect(toHelperIn(odd)).toBeUndefined();
    const rows = { ends: Uint32Array.of(0), values: new Uint8Array() };
    const reads = { ends: Uint32Array.of(1), values: Uint32Array.of(5) };
    const whole = { files: ['a'], findings: rows, reads, answers: { keys: Uint32Array.of(3), reads, brief: rows } };
    expect(judgedShareIn(whole)?.reads.row(0)).toEqual(Uint32Array.of(5));
    for (const odd of [
      { files: [] },
      { files: 'a' },
      { findings: reads },
      { reads: rows },
      { reads: { ends: Uint32Array.of(2), values: Uint32Array.of(5) } },
      { answers: { keys: new Uint32Array(), reads, brief: rows } },
      { answers: { keys: Uint32Array.of(3), reads, brief: [] } },
      { answers: undefined },
    ])
      expect(judgedShareIn({ ...whole, ...odd })).toBeUndefined();
  });
});
