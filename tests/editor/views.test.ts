import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Editor, openFolder, packagedExtension, screenshot, startEditor } from './harness.ts';
import { colourAlone, headless, nameless, outOfOrder } from './spoken.ts';
import { goToWords, hoverAt, replaceWords, text, undo } from './text.ts';
import { until } from './wait.ts';
import { notifications, openFileLeft, type PageElement, quickList, runCommand, statusBar, useTheme } from './window.ts';

/** The views beside the text in real VS Code, on the demo department, by keyboard. */

const folder = path.resolve(import.meta.dirname, '../../samples/lanternfield');
const set = 'sets/LAP-CHOLE-B.ifu.yaml';
let editor: Editor;

/** What must stay text wherever it is shown. */
const hostile = '</script><script>alert(1)</script><img src=x onerror=alert(2)> [x](command:workbench.action.quit) $';

beforeAll(async () => {
  editor = await startEditor({
    name: 'views',
    folder,
    extensions: [packagedExtension],
    // In a browser VS Code saves by itself unless it is told not to.
    settings: { 'workbench.colorTheme': 'Default Light Modern', 'files.autoSave': 'off' },
  });
});
afterAll(() => editor?.close());

/** The page of the sheet, as drawn. */
function page() {
  return editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
}

async function status(words: string | RegExp): Promise<void> {
  await page().locator('.status', { hasText: words }).waitFor();
}

/** Goes on with the Tab key until what has the cursor is what is wanted. */
async function tabTo(what: string): Promise<void> {
  let at = '';
  await until(
    `the cursor on ${what}`,
    async () => {
      at = await page().locator('body').evaluate(`document.activeElement?.dataset.keep ?? ''`);
      if (at.startsWith(what)) return true;
      await editor.page.keyboard.press('Tab');
      return undefined;
    },
    { describe: () => at },
  );
}

async function openSheet(): Promise<void> {
  await openFileLeft(editor, set);
  await runCommand(editor, 'Traywright: Open the Set Sheet');
  await status('No route for the set as built');
}

describe('the set sheet', () => {
  it('opens by keyboard and shows the smallest clash with both sentences', async () => {
    await openSheet();
    const sections = page().locator('section');
    const clash = sections.filter({ has: page().locator('h2', { hasText: 'Smallest clash' }) });
    await clash.locator('blockquote', { hasText: 'Do not use steam.' }).waitFor();
    await clash.locator('blockquote', { hasText: 'Do not use hydrogen peroxide.' }).waitFor();
    await screenshot(editor, 'sheet-light');
  });

  it('has a name for every part, heads for every table, and a word for every sign', async () => {
    expect(await page().locator('table').count()).toBeGreaterThan(0);
    expect(await nameless(page())).toEqual([]);
    expect(await headless(page())).toEqual([]);
    expect(await outOfOrder(page())).toEqual([]);
    expect(await page().locator('.sign').count()).toBeGreaterThan(5);
    expect(await colourAlone(page(), '.status, .marked:has(.sign), .bars .said')).toEqual([]);
  });

  it('imagines a member away, by keyboard, and says so; the file stays as it is', async () => {
    await page().locator('h1 button').focus();
    await tabTo('leave-out/cassivane-camera-head');
    await editor.page.keyboard.press('Space');
    await status('A provisional route only');
    await page().locator('.imagined', { hasText: 'Only imagined: leave out Camera head' }).waitFor();
    await screenshot(editor, 'sheet-imagined');
    await editor.page.keyboard.press('Space');
    await status('No route for the set as built');
    await openFileLeft(editor, set);
    expect(await text(editor)).toContain('{device: cassivane-camera-head, qty: 1}');
  });

  it('follows the text as it is typed', async () => {
    await openFileLeft(editor, set);
    await replaceWords(editor, 11, '  - {device: cassivane-camera-head, qty: 1}', '#');
    await status('A provisional route only');
    await undo(editor);
    await status('No route for the set as built');
  });

  it('follows the text of a device in it, as it is typed and not saved', async () => {
    const device = 'devices/cassivane-camera-head.ifu.yaml';
    await openFileLeft(editor, device);
    const saved = readFileSync(path.join(editor.folder, device), 'utf8');
    const line = saved.split('\n').findIndex((words) => words.includes('Do not use steam.')) + 1;
    await replaceWords(editor, line, 'steam', 'soda');
    await page().locator('blockquote', { hasText: 'Do not use soda.' }).waitFor();
    expect(readFileSync(path.join(editor.folder, device), 'utf8')).toBe(saved);
    await undo(editor);
    await page().locator('blockquote', { hasText: 'Do not use steam.' }).waitFor();
  });

  it('leads from a cell to the sentence', async () => {
    await page().locator('h1 button').focus();
    await tabTo('1 ');
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.tab.active', { hasText: 'cassivane-camera-head.ifu.yaml' }).waitFor();
    await editor.page.locator('[id="status.editor.selection"] >> text=/selected/').waitFor();
    await screenshot(editor, 'sheet-jump');
  });

  it('is there again after it was hidden, and after the window was opened anew', async () => {
    await openSheet();
    await page().locator('h1 button').focus();
    await runCommand(editor, 'File: New Untitled Text File');
    const tab = editor.page.locator('.tab', { hasText: 'Sheet: LAP-CHOLE-B' }).first();
    await tab.click();
    await status('No route for the set as built');
    await openFolder(editor, editor.folder);
    // Which of the tabs was in front may not have been noted yet when the window went.
    await tab.click();
    await status('No route for the set as built');
  });
});

describe('[X05] [X06] values that would be markup', () => {
  it('stay text in the sheet and in the hover', async () => {
    const name = JSON.stringify(`${hostile}{7*7}`);
    const lines = [
      'kind: set',
      'id: X06',
      `name: ${name}`,
      'members:',
      '  - {device: quillmark-ringed-forceps, qty: 1}',
    ];
    writeFileSync(path.join(editor.folder, 'sets/x06.ifu.yaml'), `${lines.join('\n')}\npackaging: P2-wrap-heavy\n`);
    await openFileLeft(editor, 'sets/x06.ifu.yaml');
    await runCommand(editor, 'Traywright: Open the Set Sheet');
    await page().locator('h1', { hasText: hostile }).waitFor();
    expect(await page().locator('main script, main img, main a').count()).toBe(0);
    const policy = await page().locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
    expect(policy).toMatch(/^default-src 'none'; script-src 'nonce-[0-9a-f]{32}'; style-src 'nonce-[0-9a-f]{32}'$/);
    await screenshot(editor, 'sheet-hostile');
    await goToWords(editor, 3, 'name');
    await hoverAt(editor, 3, 'name', 'Name');
  });
});

describe('looks', () => {
  it.each(['dark', 'high contrast dark', 'high contrast light', 'light'] as const)('%s', async (theme) => {
    await openSheet();
    await useTheme(editor, theme);
    await status('No route for the set as built');
    await screenshot(editor, `sheet-${theme}`);
  });

  it('at 200 %, every part is still in reach', async () => {
    await editor.page.setViewportSize({ width: 640, height: 800 });
    await openSheet();
    // The sheet is drawn anew when something comes in late: the heading is looked for again then.
    await until('the heading in view', () =>
      page()
        .locator('h2', { hasText: 'Who governs' })
        .scrollIntoViewIfNeeded({ timeout: 3_000 })
        .then(
          () => true,
          () => undefined,
        ),
    );
    const overflow = await page()
      .locator('body')
      .evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth');
    await screenshot(editor, 'sheet-narrow');
    await editor.page.setViewportSize({ width: 1280, height: 800 });
    expect(overflow).toBeLessThanOrEqual(1);
  });
});

describe('the library view', () => {
  it('lists the stages of work, and the files of each with their findings', async () => {
    await runCommand(editor, 'View: Show Traywright');
    const rows = editor.page.locator('.pane-body .monaco-list-row');
    await rows.filter({ hasText: 'Devices' }).first().waitFor();
    const spoken = await rows.evaluateAll((all: PageElement[]) =>
      all.map((row) => row.getAttribute('aria-label') ?? ''),
    );
    expect(spoken.join('\n')).toMatch(/Sets: 7 files, 7 with findings/);
    expect(spoken.join('\n')).toMatch(/Devices: \d+ files, \d+ with findings, 1 review late/);
    expect(spoken.join('\n')).toMatch(/Encoded: \d+ of \d+ device families in sets/);
    await rows
      .filter({ hasText: /^\s*Sets/ })
      .first()
      .click();
    await rows.filter({ hasText: 'Laparoscopic cholecystectomy B' }).waitFor();
    await screenshot(editor, 'library');
  });
});

describe('a second reading', () => {
  it('starts from the quotes alone and is compared field by field', async () => {
    await openFileLeft(editor, 'devices/cassivane-camera-head.ifu.yaml');
    await runCommand(editor, 'Traywright: Begin a Second Reading');
    await until('the copy', async () =>
      (await text(editor)).includes('# Second reading of device') ? true : undefined,
    );
    const copy = await text(editor);
    expect(copy).toContain('quote:');
    expect(copy).not.toContain('sterilization:');
    await editor.page.keyboard.press('Control+End');
    await editor.page.keyboard.insertText('class: semi-critical\n');
    await runCommand(editor, 'Traywright: Compare Two Readings');
    await until('the field that differs', async () =>
      (await quickList(editor)).some(({ label }) => label === 'class') ? true : undefined,
    );
    await screenshot(editor, 'two-readings');
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    // Both places are shown; the first reading comes last and has the cursor then.
    await editor.page
      .locator('.editor-group-container.active .monaco-editor.focused[data-uri$="cassivane-camera-head.ifu.yaml"]')
      .waitFor();
  });
});

describe('the foot of the window', () => {
  it('says how many files and findings there are, and how long ago', async () => {
    const item = editor.page.locator('[id$="traywright.status"]');
    await item.filter({ hasText: /\d+ files, \d+ findings, \d+ (s|min) ago/ }).waitFor();
    expect((await statusBar(editor)).join('\n')).toMatch(/Traywright: \d+ files, \d+ errors/);
  });
});

describe('a folder without a library', () => {
  it('is welcomed with what to do', async () => {
    const empty = path.join(editor.folder, '../empty');
    mkdirSync(empty);
    await openFolder(editor, empty);
    // The palette knows the commands of an extension only from then on.
    await editor.page.locator('.activitybar [aria-label^="Traywright"]').first().waitFor();
    await runCommand(editor, 'View: Show Traywright');
    await editor.page.locator('.welcome-view-content', { hasText: 'This folder is not a rule library yet' }).waitFor();
    await screenshot(editor, 'welcome');
    expect(await notifications(editor)).toEqual([]);
  });
});
