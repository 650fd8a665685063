import { existsSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { problemsWhen } from './problems.ts';
import { goTo, goToWords, text } from './text.ts';
import { until } from './wait.ts';
import { notifications, openFile, runCommand } from './window.ts';

/** What touches several files, or the files themselves, in real VS Code: a rename of an id, and files renamed, moved and deleted. */

const folder = path.resolve(import.meta.dirname, '../../samples/saltmere-eye-clinic-corrected');
const pouch = 'packaging/FH-peroxide-pouch.ifu.yaml';
let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: 'files',
    folder,
    extensions: [packagedExtension],
    settings: { 'workbench.colorTheme': 'Default Light Modern', 'files.enableTrash': false },
  });
});
afterAll(() => editor?.close());

/** The editor lists what the command line finds in the same folder, as it is on the disk now. */
async function agreesWithCommandLine(what: string): Promise<readonly string[]> {
  const expected = asLines(foundByCommandLine(editor.folder));
  await problemsWhen(editor, what, (found) => asLines(found).join('\n') === expected.join('\n'));
  return expected;
}

/** The row that the keys go to, once it is that of this file. */
const explorerRow = (name: string) =>
  editor.page.locator('.explorer-folders-view .monaco-list-row.focused').filter({ hasText: name });

/** The row of the open file in the list of files, with the cursor in it. */
async function toExplorer(file: string): Promise<void> {
  await openFile(editor, file);
  await runCommand(editor, 'File: Reveal Active File in Explorer View');
  await explorerRow(path.basename(file)).waitFor();
  await editor.page.locator('.explorer-folders-view .monaco-list').focus();
}

async function renameHere(to: string): Promise<void> {
  await editor.page.keyboard.press('F2');
  const box = editor.page.locator('.explorer-item-edited input, .explorer-item input');
  await box.waitFor();
  await box.fill(to);
  await editor.page.keyboard.press('Enter');
  await box.waitFor({ state: 'hidden' });
}

async function confirm(): Promise<void> {
  const first = editor.page.locator('.monaco-dialog-box .monaco-button').first();
  await first.waitFor();
  await editor.page.keyboard.press('Enter');
  await first.waitFor({ state: 'hidden' });
}

async function idsIn(file: string): Promise<string> {
  await openFile(editor, file);
  return text(editor);
}

const users = [pouch, 'sets/CAMERA-F.ifu.yaml', 'procedures/P08-camera-and-light.ifu.yaml'];

describe('where a file is used', () => {
  it('is shown wherever in it the cursor stands', async () => {
    await openFile(editor, pouch);
    await goTo(editor, 1, 1);
    await runCommand(editor, 'Traywright: Show Where It Is Used');
    const peek = editor.page.locator('.reference-zone-widget');
    for (const file of users) await peek.locator('.monaco-list-row', { hasText: path.basename(file) }).waitFor();
    await editor.page.keyboard.press('Escape');
    await peek.waitFor({ state: 'hidden' });
  });
});

describe('a rename of an id', () => {
  it('is shown before it is done, and then done in every file', async () => {
    await agreesWithCommandLine('the findings');
    await openFile(editor, pouch);
    await goToWords(editor, 3, 'FH-peroxide-pouch');
    await editor.page.keyboard.press('F2');
    const box = editor.page.locator('.rename-box input');
    await box.waitFor();
    await box.fill('FH-pouch');
    await editor.page.keyboard.press('Control+Enter');
    const preview = editor.page.locator('.bulk-edit-panel, .pane-body:has-text("FH-pouch")').first();
    await preview.waitFor();
    await screenshot(editor, 'rename-preview');
    expect(await idsIn(pouch)).toContain('id: FH-peroxide-pouch');
    await preview.locator('.monaco-button', { hasText: 'Apply' }).press('Enter');
    await preview.waitFor({ state: 'hidden' });
    for (const file of users)
      await until(`the new id in ${file}`, async () => ((await idsIn(file)).includes('FH-pouch') ? true : undefined));
    await agreesWithCommandLine('no finding more');
  });

  it('is taken back in every file by one undo', async () => {
    await openFile(editor, pouch);
    await editor.page.keyboard.press('Control+Z');
    for (const file of users)
      await until(`the old id in ${file}`, async () =>
        (await idsIn(file)).includes('FH-peroxide-pouch') ? true : undefined,
      );
    await runCommand(editor, 'File: Save All Files');
    await agreesWithCommandLine('the findings of before');
  });
});

describe('the PDF that a document keeps', () => {
  it('is led to by the page of a sentence: where it lies and which page, since VS Code shows no PDFs', async () => {
    await openFile(editor, pouch);
    await goToWords(editor, 26, '2, section');
    await runCommand(editor, 'Open Link');
    const said = await until('the message', async () => {
      const held = await notifications(editor);
      return held.length > 0 ? held : undefined;
    });
    expect(said.map(({ message }) => message)).toHaveLength(1);
    expect(said[0]?.message).toContain('This is in documents/FT-H-2.pdf, page 2. VS Code can’t show PDFs by itself');
    expect(said[0]?.buttons).toEqual(['Show the File']);
    await screenshot(editor, 'page-of-pdf');
    await runCommand(editor, 'Notifications: Clear All Notifications');
  });

  it('is named by its document, to which the number of the document leads', async () => {
    await openFile(editor, pouch);
    await goToWords(editor, 26, 'FT-H');
    await editor.page.keyboard.press('F12');
    await editor.page.locator('.monaco-editor.focused[data-uri$="documents/FT-H-2.ifu.yaml"]').waitFor();
    expect(await text(editor)).toContain('file: FT-H-2.pdf');
  });
});

describe('files in the list of files', () => {
  it('renamed: what names it by its id goes on, and findings are under the new name', async () => {
    await toExplorer(pouch);
    await renameHere('peroxide-bag.ifu.yaml');
    await until(
      'the new name',
      () => existsSync(path.join(editor.folder, 'packaging/peroxide-bag.ifu.yaml')) || undefined,
    );
    await agreesWithCommandLine('the findings under the new name');
  });

  it('a PDF renamed: its document names it anew in the same step, and one undo takes both back', async () => {
    const document = 'documents/FT-H-2.ifu.yaml';
    const before = await agreesWithCommandLine('the findings of before');
    await toExplorer(document);
    await editor.page.keyboard.press('ArrowDown');
    await explorerRow('FT-H-2.pdf').waitFor();
    await renameHere('hot air, second edition.pdf');
    // VS Code says that files are to change with it, and asks.
    await confirm();
    const [old, now] = ['documents/FT-H-2.pdf', 'documents/hot air, second edition.pdf'];
    const isThere = (file: string) => existsSync(path.join(editor.folder, file));
    await until('the new name', () => isThere(now) || undefined);
    await openFile(editor, document);
    await until(
      'the new name in the document',
      async () => (await text(editor)).includes('file: "hot air, second edition.pdf"') || undefined,
    );
    await runCommand(editor, 'File: Save All Files');
    expect(await agreesWithCommandLine('the same findings')).toEqual(before);
    await screenshot(editor, 'pdf-renamed');
    await toExplorer(document);
    await editor.page.keyboard.press('Control+Z');
    await until('the old name', () => (isThere(old) && !isThere(now)) || undefined);
    await openFile(editor, document);
    await until(
      'the old name in the document',
      async () => (await text(editor)).includes('file: FT-H-2.pdf') || undefined,
    );
    await runCommand(editor, 'File: Save All Files');
    expect(await agreesWithCommandLine('the findings of before')).toEqual(before);
  });

  it('a folder renamed: the PDF that a document keeps goes with it', async () => {
    await toExplorer('documents/FT-H-2.ifu.yaml');
    await editor.page.keyboard.press('ArrowLeft');
    await renameHere('papers');
    await until('the new name', () => existsSync(path.join(editor.folder, 'papers/FT-H-2.pdf')) || undefined);
    const found = await agreesWithCommandLine('the findings under the new name');
    expect(found.filter((line) => line.includes('.pdf'))).toEqual([]);
  });

  it('deleted: whatever names it says so', async () => {
    const before = asLines(foundByCommandLine(editor.folder));
    await toExplorer('packaging/peroxide-bag.ifu.yaml');
    await editor.page.keyboard.press('Delete');
    await confirm();
    await until(
      'the file to be gone',
      () => !existsSync(path.join(editor.folder, 'packaging/peroxide-bag.ifu.yaml')) || undefined,
    );
    const found = await agreesWithCommandLine('the findings about what is missing');
    expect(found.filter((line) => !before.includes(line)).join('\n')).toContain('FH-peroxide-pouch');
    await screenshot(editor, 'deleted');
  });
});
