import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inFolder, inPackage, type StaticEditor, startStaticEditor } from './browser-only/static-editor.ts';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type EditorWindow, packagedExtension, screenshot, startBrowser } from './harness.ts';
import { problemsWhen } from './problems.ts';
import { replaceWords, text, undo } from './text.ts';
import { answerQuestions, chooseByName, runCommand } from './window.ts';

/**
 * The extension in VS Code as a page that has no server, on a folder that lies on no disk: what VS Code searches and watches elsewhere is
 * not there. Files are opened from the list of files, since nothing can search for them.
 */

const library = path.resolve(import.meta.dirname, '../../samples/saltmere-eye-clinic');
const home = mkdtempSync(path.join(tmpdir(), 'browser-only-'));
let server: StaticEditor;
let editor: EditorWindow;
let close: () => Promise<void>;

beforeAll(async () => {
  server = await startStaticEditor({
    extensions: {
      traywright: inPackage(packagedExtension),
      virtual: inFolder(path.join(import.meta.dirname, 'browser-only/virtual-folder')),
    },
    folder: library,
    settings: { 'workbench.startupEditor': 'none', 'workbench.colorTheme': 'Default Light Modern' },
  });
  const { browser, page } = await startBrowser(home, server.address);
  close = () => browser.close();
  editor = { name: 'browser-only', page, folder: `/${path.basename(library)}` };
  await page.goto(server.address);
  await row('library.ifu.yaml').waitFor();
});
afterAll(async () => {
  await close?.();
  await server?.stop();
  rmSync(home, { recursive: true, force: true });
});

function row(name: string) {
  return editor.page.locator('.explorer-folders-view .monaco-list-row', { hasText: name }).first();
}

/** The page of the sheet, as drawn. */
function sheet() {
  return editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
}

describe('in a browser alone, on a folder that lies on no disk', () => {
  it('finds, as soon as one file is opened, what the command line finds on the disk', async () => {
    await row('library.ifu.yaml').dblclick();
    await editor.page.locator('.monaco-editor.focused[data-uri$="library.ifu.yaml"]').waitFor();
    const expected = asLines(foundByCommandLine(library));
    expect(expected.length).toBeGreaterThan(10);
    const listed = await problemsWhen(editor, 'all findings', (found) => found.length === expected.length);
    expect(asLines(listed)).toEqual(expected);
    await screenshot(editor, 'problems');
  });

  it('shows the sheet of a set, which follows what is typed', async () => {
    await row('sets').click();
    await row('CAMERA-F.ifu.yaml').dblclick();
    await editor.page.locator('.monaco-editor.focused[data-uri$="CAMERA-F.ifu.yaml"]').waitFor();
    await runCommand(editor, 'Traywright: Open the Set Sheet');
    await sheet().locator('h1', { hasText: 'Microscope camera' }).waitFor();
    await replaceWords(editor, 4, 'Microscope', 'Telescope');
    await sheet().locator('h1', { hasText: 'Telescope camera' }).waitFor();
    await undo(editor);
    await sheet().locator('h1', { hasText: 'Microscope camera' }).waitFor();
    await screenshot(editor, 'sheet');
  });

  it('makes a new file in the folder', async () => {
    await runCommand(editor, 'Traywright: New Rule File');
    await chooseByName(editor, 'document', ({ label }) => label === 'Document');
    const made = editor.page.locator('.tab.active', { hasText: 'of-the-browser.ifu.yaml' });
    await answerQuestions(editor, { 'its id': 'of-the-browser' }, made);
    expect(await text(editor)).toMatch(/^kind: document$/m);
    await problemsWhen(editor, 'what is open in it', (found) =>
      found.some(({ file, code }) => file === 'documents/of-the-browser.ifu.yaml' && code === 'still-to-write'),
    );
  });
});
