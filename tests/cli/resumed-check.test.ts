import { existsSync, readFileSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cli, folderWith } from '../support/cli.ts';
import { pdfOf } from '../support/pdf.ts';
import { builtPdfReader } from '../support/pdf-reader.ts';
import { readSample } from '../support/samples.ts';
import { runs } from '../unit/fuzz/runs.ts';

const pdfReader = builtPdfReader();
const pdf = (words: string) => pdfOf([{ lines: [words] }]);

/** A whole department, with a document whose file it keeps and a device that quotes it. */
const texts: Readonly<Record<string, string>> = {
  ...Object.fromEntries(readSample('lanternfield')),
  'documents/pf.ifu.yaml': 'kind: document\nid: pf-1-a\ndoc: PF-1\nrev: A\nfile: pf.pdf\n',
  'devices/pale.ifu.yaml':
    'kind: device\nid: pale-forceps\nstatements:\n  s1: {doc: PF-1, rev: A, page: 1, quote: "Dry for at least 20 minutes."}\ndrying: {time: {at_least: 20 min}, src: s1}\n',
};
const paths = Object.keys(texts);

type Step = (cwd: string) => void;

const at = fc.double({ min: 0, max: 0.999, noNaN: true });
const which = fc.constantFrom(...paths);

const steps: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(which, at, fc.constantFrom('digit', 'letter', 'cut', 'line', 'comment')).map(edit) },
  {
    weight: 2,
    arbitrary: fc.tuple(which, which).map(
      ([path, other]) =>
        (cwd: string) =>
          write(cwd, path, texts[other] ?? ''),
    ),
  },
  { weight: 2, arbitrary: which.map((path) => (cwd: string) => rmSync(join(cwd, path), { force: true })) },
  { weight: 2, arbitrary: which.map((path) => (cwd: string) => rename(cwd, path)) },
  {
    weight: 2,
    arbitrary: which.map((path) => (cwd: string) => write(cwd, path.replace('.ifu', '-too.ifu'), texts[path] ?? '')),
  },
  { weight: 1, arbitrary: fc.constantFrom('unknown-id', 'no-such', 'drying-missing').map(ignore) },
  {
    weight: 2,
    arbitrary: fc
      .constantFrom('Dry for at least 20 minutes.', 'Dry for at least 30 minutes.', undefined)
      .map((words) => (cwd: string) => {
        if (words === undefined) rmSync(join(cwd, 'documents/pf.pdf'), { force: true });
        else writeFileSync(join(cwd, 'documents/pf.pdf'), pdf(words));
      }),
  },
  { weight: 1, arbitrary: fc.constant((cwd: string) => writeFileSync(join(cwd, 'documents/pf.pdf'), 'no PDF')) },
  {
    weight: 1,
    arbitrary: which.map((path) => (cwd: string) => writeFileSync(join(cwd, path), Buffer.of(107, 255, 254, 0, 10))),
  },
  { weight: 6, arbitrary: which.map((path) => (cwd: string) => write(cwd, path, texts[path] ?? '')) },
);

/** As a copy program or a version control may leave it: nothing but the bytes tells. */
function write(cwd: string, path: string, text: string): void {
  const target = join(cwd, path);
  writeFileSync(target, text);
  utimesSync(target, 1_000_000_000, 1_000_000_000);
}

function edit([path, share, how]: readonly [string, number, string]): Step {
  return (cwd: string) => {
    if (!existsSync(join(cwd, path))) return;
    const text = readFileSync(join(cwd, path), 'utf8');
    const place = Math.floor(share * text.length);
    write(cwd, path, text.slice(0, place) + tail(text.slice(place), how));
  };
}

function tail(text: string, how: string): string {
  if (how === 'digit') return text.replace(/\d/, (digit) => String((Number(digit) + 1) % 10));
  if (how === 'letter') return text.replace(/[a-y]/, (letter) => String.fromCharCode(letter.charCodeAt(0) + 1));
  if (how === 'cut') return text.slice(2);
  if (how === 'line') return text.replace(/\n[^\n]*/, '');
  return `${text}# a word\n`;
}

function rename(cwd: string, path: string): void {
  if (existsSync(join(cwd, path))) renameSync(join(cwd, path), join(cwd, path.replace('.ifu', '-moved.ifu')));
}

/** Another setting of the library, with a reason or none. */
function ignore(rule: string): Step {
  return (cwd: string) =>
    write(
      cwd,
      'library.ifu.yaml',
      `${texts['library.ifu.yaml'] ?? ''}\nrules:\n  ${rule}: {severity: ignored, reason: tried}\n`,
    );
}

describe('a check that takes up an earlier one', () => {
  it('says byte for byte what a check from the beginning says, whatever changed', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.record({
            taken: fc.array(steps, { minLength: 1, maxLength: 4 }),
            today: fc.constantFrom('2025-03-03', '2025-03-03', '2025-03-03', '2031-01-01'),
          }),
          { minLength: 1, maxLength: 4 },
        ),
        async (rounds) => {
          const cwd = folderWith({ ...texts, 'documents/pf.pdf': pdf('Dry for at least 20 minutes.') });
          const results = join(folderWith({}), 'results');
          const words = ['check', '--format', 'json'];
          await cli([...words, '--cache', results], { cwd, pdfReader, build: 'one', today: '2025-03-03' });
          for (const { taken, today } of rounds) {
            for (const step of taken) step(cwd);
            const around = { cwd, pdfReader, build: 'one', today };
            const plain = await cli([...words, '--no-cache'], around);
            expect(await cli([...words, '--cache', results], around)).toEqual(plain);
            expect(await cli([...words, '--cache', results], around)).toEqual(plain);
          }
        },
      ),
      { numRuns: runs(3), seed: 20250303 },
    );
  }, 600_000);

  it('calls a device by its new name', async () => {
    const cwd = folderWith(texts);
    const results = join(folderWith({}), 'results');
    const words = ['check', '--format', 'json'];
    const around = { cwd, pdfReader, build: 'one', today: '2025-03-03' };
    await cli([...words, '--cache', results], around);
    for (const path of paths.filter((one) => one.startsWith('devices/'))) {
      write(cwd, path, (texts[path] ?? '').replace(/^name: .*$/m, 'name: Renamed'));
      const resumed = await cli([...words, '--cache', results], around);
      expect(resumed, path).toEqual(await cli([...words, '--no-cache'], around));
    }
  }, 300_000);
});
