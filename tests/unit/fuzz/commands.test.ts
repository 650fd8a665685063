import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../../server/src/cli/commands.ts';
import { cli, folderWith } from '../../support/cli.ts';
import { cut, cutText } from '../../support/fuzz.ts';
import { readSample } from '../../support/samples.ts';
import { runs } from './runs.ts';

const sample = [...readSample('lanternfield')];
const files = Object.fromEntries(sample);
const day = ['--today', '2025-03-03'];

/** An exit code that is no fault of ours, and no trace of one. */
function expectAnswered({ code, out, err }: { code: number; out: string; err: string }): void {
  expect([0, 1, 2, 4]).toContain(code);
  expect(`${out}${err}`).not.toMatch(/\n {4}at |(?<![\w-])undefined(?![\w-])|\[object Object\]/);
}

function bytesBelow(folder: string): string {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.yaml'));
  return names
    .sort()
    .map((name) => `${name}\n${readFileSync(join(folder, name), 'latin1')}`)
    .join('\n');
}

describe('comparing two states of which one is cut about', () => {
  const changes = fc.array(fc.tuple(fc.nat(sample.length - 1), cut), { minLength: 1, maxLength: 6 });

  it.each(['text', 'json', 'markdown', 'html'])(
    'as %s answers, changes nothing and holds no script',
    async (format) => {
      const cwd = folderWith({ ...prefixed('old', files), ...prefixed('new', files) });
      await fc.assert(
        fc.asyncProperty(changes, async (cuts) => {
          for (const [which, one] of cuts) {
            const [file, text] = sample[which] ?? ['none', ''];
            writeFileSync(join(cwd, 'new', file), cutText(text, one));
          }
          const before = bytesBelow(cwd);
          const answer = await cli(['compare', 'old', 'new', '--format', format, ...day], { cwd });
          expectAnswered(answer);
          expect(bytesBelow(cwd)).toBe(before);
          if (format === 'json' && answer.code < 2) expect(() => JSON.parse(answer.out)).not.toThrow();
          if (format === 'html') expect(answer.out).not.toMatch(/<script|\son\w+=/i);
          for (const [which] of cuts) {
            const [file, text] = sample[which] ?? ['none', ''];
            writeFileSync(join(cwd, 'new', file), text);
          }
        }),
        { numRuns: runs(3), seed: 20250303 },
      );
    },
    3_600_000,
  );
});

describe('any command over a department', () => {
  const values = fc.oneof(
    fc.constantFrom(
      'LAP-CHOLE-B',
      'duskwell-lap-scissors',
      'S1-pv132-4-20',
      'chemistry/C4=C5',
      '2025-03-04T07:30',
      'a4',
    ),
    fc.constantFrom(
      '.',
      'sets/LAP-CHOLE-B.ifu.yaml',
      'log.csv',
      '-',
      '--',
      '0',
      '-1',
      '1e9',
      '2025-02-30',
      'json',
      'html',
    ),
    fc.string({ unit: 'binary', maxLength: 8 }),
  );
  const command = fc.constantFrom(...commands.filter(({ name }) => !['help', 'version'].includes(name)));
  const line = command.chain(({ name, options }) => {
    // What is watched is never over, and nobody types here.
    const known = options
      .filter((option) => !['watch', 'stdin'].includes(option.name))
      .map((option) => `--${option.name}`);
    const word = known.length === 0 ? values : fc.oneof(values, fc.constantFrom(...known));
    return fc.array(word, { maxLength: 6 }).map((words) => [name, ...words]);
  });
  const log = fc.array(fc.oneof(fc.constantFrom('time,temp\n', '00:00:01', ',134.2', ';', '\n', '2025-03-03'), values));

  it('answers, and leaves the rule files that were there as they are', async () => {
    await fc.assert(
      fc.asyncProperty(line, log, async (words, pieces) => {
        const cwd = folderWith({ ...files, 'log.csv': pieces.join('') });
        expectAnswered(await cli(words, { cwd }));
        for (const [file, text] of sample) expect(readFileSync(join(cwd, file), 'utf8') === text, file).toBe(true);
      }),
      { numRuns: runs(40), seed: 20250303 },
    );
  }, 3_600_000);
});

describe('files of random bytes', () => {
  const folder = { 'library.ifu.yaml': 'kind: library\nid: lib\n', 'good.ifu.yaml': 'kind: question\nid: q\n' };
  const lines = [['check'], ['routes'], ['compare', '.', '.'], ['sheet', 'export', '--out', 'out'], ['quiz']];

  it('are findings; every command answers and leaves them as they are', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.uint8Array({ maxLength: 300 }), { minLength: 1, maxLength: 4 }),
        fc.constantFrom(...lines),
        async (contents, words) => {
          const odd = Object.fromEntries(contents.map((bytes, n) => [`odd/${n}.ifu.yaml`, bytes]));
          const cwd = folderWith({ ...folder, ...odd });
          const before = bytesBelow(cwd);
          expectAnswered(await cli([...words, ...(words[0] === 'compare' ? day : [])], { cwd }));
          expect(bytesBelow(cwd)).toBe(before);
        },
      ),
      { numRuns: runs(40), seed: 20250303 },
    );
  }, 3_600_000);
});

describe('tables of random cells', () => {
  const cell = fc.oneof(
    fc.constantFrom('=1+1', '+5', '-5', '@x', '\tx', "'=x", '007', '1E5', '12:30', 'a,b', 'a"b', 'a\nb', 'a;b', ''),
    fc.constantFrom(
      'duskwell-lap-scissors',
      'LAP-CHOLE-B',
      'critical',
      'devices/../x.ifu.yaml',
      '../../x',
      '__proto__',
    ),
    fc.string({ unit: 'binary', maxLength: 12 }),
  );

  it('taken in change nothing without being told to, and with it only what can be read again', async () => {
    const cwd = folderWith(files);
    await cli(['sheet', 'export', '--out', 'out', ...day], { cwd });
    const names = readdirSync(join(cwd, 'out'));
    const tables = new Map(names.map((name) => [name, readFileSync(join(cwd, 'out', name), 'utf8').split('\r\n')]));
    const place = fc.record({ row: fc.nat(20), column: fc.nat(12), to: cell });
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...names),
        fc.array(place, { minLength: 1, maxLength: 5 }),
        fc.boolean(),
        async (name, places, writes) => {
          const lines = [...(tables.get(name) ?? [])];
          for (const { row, column, to } of places) {
            const cells = lines[row]?.split(',') ?? [];
            if (column < cells.length) cells[column] = `"${to.replaceAll('"', '""')}"`;
            if (row < lines.length) lines[row] = cells.join(',');
          }
          writeFileSync(join(cwd, 'out', name), lines.join('\r\n'));
          const before = bytesBelow(cwd);
          const answer = await cli(['sheet', 'import', `out/${name}`, ...(writes ? ['--write'] : []), ...day], { cwd });
          expectAnswered(answer);
          if (!writes || answer.code !== 0) expect(bytesBelow(cwd)).toBe(before);
          const again = await cli(['check', '--format', 'json', ...day], { cwd });
          expect(again.out).not.toMatch(/"(?:internal|reader-failed|not-readable)"/);
          for (const [file, text] of sample) writeFileSync(join(cwd, file), text);
        },
      ),
      { numRuns: runs(8), seed: 20250303 },
    );
  }, 3_600_000);
});

function prefixed(folder: string, texts: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(texts).map(([file, text]) => [join(folder, file), text]));
}
