import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { problemsWhen } from './problems.ts';
import { hoverAt, replaceWords, undo } from './text.ts';
import { notifications, openFile, runCommand } from './window.ts';

/** The packaged extension where VS Code has nothing but the browser: client and server are web workers of the page. */

const folder = path.join(import.meta.dirname, 'fixtures/small-library');
let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: 'browser',
    folder,
    extensions: [packagedExtension],
    extensionHost: 'in the browser',
    settings: { 'workbench.colorTheme': 'Default Light Modern' },
  });
});
afterAll(() => editor?.close());

describe('in the browser alone', () => {
  it('finds what the command line finds, without a process', async () => {
    const expected = asLines(foundByCommandLine(folder));
    const listed = await problemsWhen(editor, 'all findings', (found) => found.length === expected.length);
    expect(asLines(listed)).toEqual(expected);
    expect(editor.server.processes().filter(({ command }) => command.includes('server.cjs'))).toEqual([]);
    await screenshot(editor, 'problems');
  });

  it('shows the quote over a number', async () => {
    await openFile(editor, 'devices/pale-forceps.ifu.yaml');
    const said = await hoverAt(editor, 11, '140 C', 'page 2');
    expect(said).toContain('“Do not exceed 140 °C.”');
  });

  it('follows the text as it is typed, in other files too', async () => {
    await replaceWords(editor, 2, 'pale-forceps', 'pale-forcep');
    const follows = (id: string) =>
      problemsWhen(editor, `the set to name ${id}`, (found) =>
        found.some(({ code, message }) => code === 'unknown-id' && message.includes(`"${id}"`)),
      );
    await follows('pale-forceps');
    await undo(editor);
    await follows('pale-forcep');
  });

  it('draws the set sheet', async () => {
    await openFile(editor, 'sets/tray-a.ifu.yaml');
    await runCommand(editor, 'Traywright: Open the Set Sheet');
    const page = editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
    await page.locator('h2', { hasText: 'What if' }).waitFor();
    await screenshot(editor, 'sheet');
    expect(await notifications(editor)).toEqual([]);
  });
});
