import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from '../command-line.ts';
import type { DiagnosticsByFile, Neovim } from './driver.ts';
import { startOnSmallLibrary } from './small-library.ts';

/** Neovim's own client with the bundled server over standard input and output: findings, hover and definitions without our extension. */

let neovim: Neovim;
let folder: string;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ neovim, folder, close } = await startOnSmallLibrary());
});
afterAll(() => close?.());

describe('Neovim', () => {
  it('is told the findings of files that nobody opened', async () => {
    await neovim.open('library.ifu.yaml');
    const expected = asLines(foundByCommandLine(folder));
    const found = await neovim.diagnosticsWhen('all findings', (files) => linesOf(files).length === expected.length);
    expect(linesOf(found)).toEqual(expected);
    expect(expected.join('\n')).toContain('sets/tray-a.ifu.yaml:6:14 error unknown-id');
  });

  it('shows the quote over a value, and leads from a citation to its statement and on to the document', async () => {
    await neovim.open('devices/pale-forceps.ifu.yaml');
    expect(await neovim.hover({ line: 10, character: 26 })).toContain('Do not exceed 140 °C.');
    expect(await neovim.definition({ line: 10, character: 38 })).toMatchObject([
      { file: 'devices/pale-forceps.ifu.yaml', range: { start: { line: 8 } } },
    ]);
    expect(await neovim.definition({ line: 8, character: 13 })).toMatchObject([{ file: 'documents/pg-12.ifu.yaml' }]);
  });

  it('loses a finding to an edit', async () => {
    await neovim.open('devices/grey-scissors.ifu.yaml');
    await neovim.change({ start: { line: 5, character: 0 }, end: { line: 5, character: 4 } }, 'class');
    await neovim.diagnosticsWhen('one finding less', (files) => !linesOf(files).join().includes('unknown-field'));
    await neovim.undo();
    await neovim.diagnosticsWhen('the finding again', (files) => linesOf(files).join().includes('unknown-field'));
    expect(await neovim.messages()).toEqual([]);
  });
});

const severities = ['', 'error', 'warning', 'info'];

function linesOf(files: DiagnosticsByFile): string[] {
  return asLines(
    Object.entries(files).flatMap(([file, list]) =>
      list.map(({ range, severity, code, message }) => ({
        file,
        line: range.start.line + 1,
        column: range.start.character + 1,
        severity: severities[severity] ?? '',
        code: String(code),
        message,
      })),
    ),
  );
}
