import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { problemsWhen } from './problems.ts';
import { notifications, openFile, useTheme } from './window.ts';

/** The demo department in real VS Code. */

const folder = path.resolve(import.meta.dirname, '../../samples/lanternfield');
let editor: Editor;

beforeAll(async () => {
  const settings = { 'workbench.colorTheme': 'Default Light Modern' };
  editor = await startEditor({
    name: 'demo',
    folder,
    extensions: [packagedExtension],
    trust: 'no folder is trusted',
    settings,
  });
});
afterAll(() => editor?.close());

describe('the demo department, in a folder that is not trusted', () => {
  it('shows every finding of the command line, in files that nobody opened, and no other', async () => {
    const expected = asLines(foundByCommandLine(folder));
    expect(expected.length).toBeGreaterThan(0);
    const listed = await problemsWhen(editor, 'all findings', (found) => found.length === expected.length);
    expect(asLines(listed)).toEqual(expected);
    expect(await notifications(editor)).toEqual([]);
  });

  it('looks right in light and dark', async () => {
    const first = foundByCommandLine(folder).find(({ file }) => file.startsWith('devices/'));
    expect(first).toBeDefined();
    await openFile(editor, first?.file ?? '');
    await screenshot(editor, 'light');
    await useTheme(editor, 'dark');
    await screenshot(editor, 'dark');
    await useTheme(editor, 'high contrast dark');
    await screenshot(editor, 'high-contrast');
  });
});
