import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { git } from '../support/git.ts';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { text } from './text.ts';
import { until } from './wait.ts';
import { notifications, openFile, runCommand, useTheme } from './window.ts';

/** The review of a revision in real VS Code: a department whose take-apart scissors have a new instruction, decided on by keyboard. */

const samples = path.resolve(import.meta.dirname, '../../samples');
const scissors = 'devices/duskwell-lap-scissors-takeapart.ifu.yaml';
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
    settings: { 'workbench.colorTheme': 'Default Light Modern' },
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
  const folder = path.join(editor.folder, 'sign-offs');
  return existsSync(folder) ? readdirSync(folder).filter((name) => name.startsWith('SO-DW-REP-077-E')) : [];
}

describe('the review of a revision', () => {
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
    await editor.page.keyboard.press('Control+Z');
    await until('the record to be taken back', async () => {
      const agree = editor.page.locator('.monaco-dialog-box .monaco-button').first();
      if (await agree.isVisible()) await agree.click();
      return records().length === 0 ? true : undefined;
    });
    expect(await notifications(editor)).toEqual([]);
  });
});
