import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { git } from '../support/git.ts';
import { attempt, type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { colourAlone, nameless, outOfOrder } from './spoken.ts';
import { replaceWords, text, undo } from './text.ts';
import { until } from './wait.ts';
import {
  chooseInMenu,
  notifications,
  openFile,
  openFileLeft,
  pressUntilFocused,
  quickInputQuestion,
  quickList,
  runCommand,
  useTheme,
} from './window.ts';

/** The review of a revision in real VS Code: a department whose take-apart scissors have a new instruction, decided on by keyboard. */

const samples = path.resolve(import.meta.dirname, '../../samples');
const scissors = 'devices/duskwell-lap-scissors-takeapart.ifu.yaml';
const already = new Set(readdirSync(path.join(samples, 'lanternfield-corrected/sign-offs')));
const home = mkdtempSync(path.join(tmpdir(), 'review-'));
let editor: Editor;

beforeAll(async () => {
  const folder = path.join(home, 'department');
  cpSync(path.join(samples, 'lanternfield-corrected'), folder, { recursive: true });
  git(folder, 'init', '-q', '-b', 'main');
  git(folder, 'add', '-A');
  git(folder, 'commit', '-q', '-m', 'as it was');
  cpSync(path.join(samples, 'lanternfield-revision'), folder, { recursive: true });
  editor = await startEditor({
    name: 'review',
    folder,
    extensions: [packagedExtension],
    // In a browser VS Code saves by itself unless it is told not to.
    settings: { 'workbench.colorTheme': 'Default Light Modern', 'git.enabled': true, 'files.autoSave': 'off' },
  });
});
afterAll(async () => {
  await editor?.close();
  rmSync(home, { recursive: true, force: true });
});

/** The page of the review, as drawn. */
function page() {
  return editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
}

async function counter(words: string): Promise<void> {
  await page().locator('.counter', { hasText: words }).waitFor();
}

/** Goes on with a key until what has the cursor is what is wanted. */
async function pressUntilOn(key: string, what: RegExp): Promise<string> {
  let at = '';
  return until(
    `the cursor on ${what}`,
    async () => {
      at = await page().locator('body').evaluate(`document.activeElement?.dataset.keep ?? ''`);
      if (what.test(at)) return at;
      await editor.page.keyboard.press(key);
      return undefined;
    },
    { describe: () => at },
  );
}

/** To the next change that nobody has looked at. */
async function next(): Promise<string> {
  await pressUntilOn('Shift+Tab', /^next$/);
  await editor.page.keyboard.press('Enter');
  return until('the cursor on a choice', async () => {
    const at: string = await page().locator('body').evaluate(`document.activeElement?.dataset.keep ?? ''`);
    return /^(?:decision|look) /.test(at) ? at : undefined;
  });
}

function records(): readonly string[] {
  return readdirSync(path.join(editor.folder, 'sign-offs')).filter((name) => !already.has(name));
}

async function undone(): Promise<void> {
  await editor.page.keyboard.press('Control+Z');
  await until('the records to be taken back', async () => {
    const agree = editor.page.locator('.monaco-dialog-box .monaco-button').first();
    if (await agree.isVisible()) await agree.click();
    return records().length === 0 ? true : undefined;
  });
}

/** Nothing is open, so that what a menu opens is new. */
async function closeAll(): Promise<void> {
  await runCommand(editor, 'View: Close All Editors');
  await editor.page.locator('.tab').first().waitFor({ state: 'hidden' });
}

async function reviewOf(title: string): Promise<void> {
  await attempt(editor, `see what changed in ${title}`, async () => {
    await editor.page
      .locator('.tab', { hasText: `What changed: ${title}` })
      .first()
      .waitFor();
    await counter('All ');
  });
}

describe('the review of a revision', () => {
  it('without an open file asks which one is meant', async () => {
    await closeAll();
    await runCommand(editor, 'Traywright: Compare with Last Accepted');
    await until('the question', async () =>
      (await quickInputQuestion(editor)).includes('No rule file is open. Which one is to be compared?')
        ? true
        : undefined,
    );
    const [first, ...files] = (await quickList(editor)).map(({ label }) => label);
    expect(first).toBe('All files of the library');
    expect(files.every((label) => label.endsWith('.ifu.yaml'))).toBe(true);
    await screenshot(editor, 'which-file');
    await editor.page.keyboard.press('Escape');
  });

  it('opens by keyboard, beside both texts, with what changed and what it does here', async () => {
    await openFile(editor, scissors);
    await runCommand(editor, 'Traywright: Compare with Last Accepted');
    await counter('6 of 6 not looked at yet, 5 to decide.');
    await editor.page.locator('.monaco-diff-editor').first().waitFor();
    await page()
      .locator('.counts', { hasText: '1 new prohibition, 2 stricter, 1 became silent, 1 looser, 1 re-citation' })
      .waitFor();
    await page().locator('.lost', { hasText: 'Test the insulation over the full length before each use.' }).waitFor();
    const first = page().locator('article').first();
    await first.locator('h3', { hasText: 'stricter' }).waitFor();
    await first.locator('.effect', { hasText: 'Here: route breaks' }).waitFor();
    await first.locator('blockquote', { hasText: 'minimum dry time 30 minutes' }).waitFor();
    await first.locator('blockquote', { hasText: 'minimum dry time 40 minutes' }).waitFor();
    await screenshot(editor, 'light');
  });

  it('names everything for a screen reader', async () => {
    for (const group of await page().locator('fieldset').all()) {
      expect(await group.locator('legend').textContent()).toMatch(/^Your decision on change \d$/);
      expect(await group.getByRole('radio').count()).toBe(3);
      for (const name of ['Agree', 'Disagree', 'Ask the maker'])
        expect(await group.getByRole('radio', { name, exact: true }).count()).toBe(1);
    }
    expect(await page().getByRole('button', { name: 'Write the record' }).isDisabled()).toBe(true);
    expect(await page().getByRole('status').textContent()).toContain('6 of 6 not looked at yet');
    expect(await nameless(page())).toEqual([]);
    expect(await outOfOrder(page())).toEqual([]);
    expect(await colourAlone(page(), '.effect, .change > h3')).toEqual([]);
  });

  it('shows the old and the new text of a change', async () => {
    await page().locator('article .words button').first().focus();
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.tab.active', { hasText: 'as last recorded' }).waitFor();
    await page().locator('article .words button').nth(1).focus();
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('[id="status.editor.selection"] >> text=/selected/').waitFor();
    await screenshot(editor, 'texts');
  });

  it('is decided on by keyboard, counts down, and is kept when the panel is closed', async () => {
    await page().locator('[data-keep="next"]').focus();
    for (let left = 6; left > 0; left--) {
      await counter(`${left} of 6 not looked at yet`);
      const at = await next();
      await editor.page.keyboard.press('Space');
      if (left === 4 && at.startsWith('decision')) await editor.page.keyboard.press('ArrowRight');
      if (left === 3) await screenshot(editor, 'halfway');
    }
    await counter('All 6 looked at.');
    await useTheme(editor, 'dark');
    await screenshot(editor, 'dark');
    await useTheme(editor, 'high contrast dark');
    await screenshot(editor, 'high-contrast-dark');
    await useTheme(editor, 'high contrast light');
    await screenshot(editor, 'high-contrast-light');
    await editor.page.locator('.tab', { hasText: 'What changed' }).locator('.codicon-close').first().click();
    await openFile(editor, scissors);
    await runCommand(editor, 'Traywright: Compare with Last Accepted');
    await counter('All 6 looked at.');
  });

  it('writes the record to complete as one edit that can be taken back', async () => {
    expect(records()).toEqual([]);
    await page().locator('[data-keep="write"]').focus();
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.tab.active', { hasText: 'SO-DW-REP-077-E' }).waitFor();
    const written = await until('the record', () => records()[0]);
    const file = readFileSync(path.join(editor.folder, 'sign-offs', written), 'utf8');
    expect(file).toMatch(/^kind: sign-off$/m);
    expect(file.match(/^ {2}- fingerprint: "[0-9a-f]{16}"$/gm)).toHaveLength(5);
    expect(file.match(/^ {4}decision: agree$/gm)).toHaveLength(4);
    expect(file.match(/^ {4}decision: disagree$/gm)).toHaveLength(1);
    expect(file).toMatch(/^reviewer: +# role/m);
    expect(await text(editor)).toContain('kind: sign-off');
    await screenshot(editor, 'record');
    await undone();
    expect(await notifications(editor)).toEqual([]);
  });
});

describe('a change in a second file, while the review is open', () => {
  const clamp = 'devices/pellamont-bone-clamp.ifu.yaml';

  it('is there as it is typed, before it is saved', async () => {
    await closeAll();
    await runCommand(editor, 'Traywright: Review All Changes since the Last Recorded State');
    await reviewOf('Lanternfield General');
    await openFileLeft(editor, clamp);
    await replaceWords(editor, 55, '30 min', '35 min');
    await counter('1 of 7 not looked at yet.');
    await page().locator('h3', { hasText: 'pellamont-bone-clamp' }).waitFor();
    expect(readFileSync(path.join(editor.folder, clamp), 'utf8')).not.toContain('35 min');
  });

  it('leaves on show what was there while the text can’t be read', async () => {
    await openFileLeft(editor, clamp);
    await runCommand(editor, 'Traywright: Compare with Last Accepted');
    await counter('1 of 1 not looked at yet.');
    await replaceWords(editor, 3, 'id:', 'di:');
    await page()
      .locator('.waits', { hasText: 'Shown as it was before. This file can’t be read as it is now.' })
      .waitFor();
    await counter('1 of 1 not looked at yet');
    await undo(editor);
    await page().locator('.waits').waitFor({ state: 'detached' });
  });

  it('is written down with the first as one edit: one undo takes both records back', async () => {
    await runCommand(editor, 'Traywright: Review All Changes since the Last Recorded State');
    await counter('1 of 7 not looked at yet.');
    await page().locator('[data-keep="next"]').focus();
    await editor.page.keyboard.press('Enter');
    await pressUntilOn('Tab', /^decision /);
    await editor.page.keyboard.press('Space');
    await counter('All 7 looked at.');
    await page().locator('[data-keep="write"]').focus();
    await editor.page.keyboard.press('Enter');
    await until('both records', () => (records().length === 2 ? true : undefined));
    await editor.page.locator('.tab.active', { hasText: 'SO-' }).waitFor();
    await text(editor);
    await undone();
    await runCommand(editor, 'File: Save All Files');
  });
});

describe('the menus', () => {
  const name = path.basename(scissors);

  it('of a file in the list of files', async () => {
    await closeAll();
    await openFile(editor, scissors);
    await runCommand(editor, 'File: Reveal Active File in Explorer View');
    await editor.page.locator('.explorer-folders-view .monaco-list-row.focused', { hasText: name }).waitFor();
    await closeAll();
    await editor.page.locator('.explorer-folders-view .monaco-list').focus();
    await chooseInMenu(editor, 'Compare with Last Accepted');
    await reviewOf(name);
  });

  it('of a file among the changes, and of the changes as a whole', async () => {
    await closeAll();
    await runCommand(editor, 'Source Control: Focus on Changes View');
    const changes = editor.page.locator('.scm-view .monaco-list[aria-label="Source Control Management"]');
    await changes.locator('.monaco-list-row', { hasText: name }).waitFor();
    await changes.focus();
    await editor.page.keyboard.press('Home');
    await until('the cursor on the file', async () => {
      if (await changes.locator('.monaco-list-row.focused', { hasText: name }).isVisible()) return true;
      await editor.page.keyboard.press('ArrowDown');
      return undefined;
    });
    await chooseInMenu(editor, 'Compare with Last Accepted');
    await reviewOf(name);
    await closeAll();
    await runCommand(editor, 'Source Control: Focus on Changes View');
    await changes.focus();
    await editor.page.keyboard.press('Shift+Tab');
    await pressUntilFocused(editor, 'ArrowRight', 'More Actions');
    await chooseInMenu(editor, 'Review All Changes since the Last Recorded State', 'Enter');
    await reviewOf('Lanternfield General');
    await screenshot(editor, 'from-source-control');
  });

  it('of an open file: in its text, above it, and on its tab', async () => {
    const menu = editor.page.locator('.monaco-menu .action-label', { hasText: 'Compare with Last Accepted' });
    const group = editor.page.locator('.editor-group-container.active');
    // VS Code passes over a click on a menu that has only just opened.
    const clickEntry = async () => {
      await menu.waitFor();
      await until('the menu to close', async () => {
        if (!(await menu.isVisible())) return true;
        await menu.click({ timeout: 2_000 }).catch(() => undefined);
        return undefined;
      });
    };
    const ways = [
      () => chooseInMenu(editor, 'Compare with Last Accepted'),
      async () => {
        await group.locator('.editor-actions [aria-label="More Actions..."]').click();
        await clickEntry();
      },
      async () => {
        await group.locator('.tab', { hasText: name }).click({ button: 'right' });
        await clickEntry();
      },
    ];
    for (const choose of ways) {
      await closeAll();
      await openFile(editor, scissors);
      await choose();
      await reviewOf(name);
    }
  });
});
