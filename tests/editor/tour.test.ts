import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type Editor, packagedExtension, screenshot, startEditor, waitForWorkbench } from './harness.ts';
import { type Problem, problemsWhen } from './problems.ts';
import { hoverAt, save, text } from './text.ts';
import { until } from './wait.ts';
import {
  answerQuestions,
  chooseByName,
  chooseFolder,
  type PageElement,
  pressUntilFocused,
  quickInputQuestion,
  runCommand,
  useTheme,
} from './window.ts';

/** The tour in real VS Code, from an empty folder to the last of its five steps, by keyboard: each step does what it says. */

const samples = path.resolve(import.meta.dirname, '../../samples');
const home = mkdtempSync(path.join(tmpdir(), 'tour-'));
/** `npm run pictures` runs the tour once in light and once in dark. */
const isDark = process.env.TOUR_IN === 'dark';
let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: isDark ? 'tour-dark' : 'tour',
    folder: home,
    extensions: [packagedExtension],
    settings: { 'workbench.colorTheme': isDark ? 'Default Dark Modern' : 'Default Light Modern' },
  });
});
afterAll(async () => {
  await editor?.close();
  rmSync(home, { recursive: true, force: true });
});

/** Opens a step of the tour and presses its button. The tour opens at the first step that is not done: others lie above or below. */
async function press(step: string, button: string, effect: Locator): Promise<void> {
  await editor.page.locator('.tab', { hasText: 'Walkthrough: Traywright' }).first().waitFor();
  await runCommand(editor, 'Traywright: Take the Tour');
  const steps = editor.page.locator('.getting-started-step');
  const expanded = editor.page.locator('.getting-started-step.expanded');
  await expanded.waitFor();
  const titles = await steps.allInnerTexts();
  const [shown] = await expanded.allInnerTexts();
  const [wanted, open] = [titles.findIndex((title) => title.startsWith(step)), titles.indexOf(shown ?? '')];
  if (wanted !== open) {
    if (wanted < open) await pressUntilFocused(editor, 'Tab', 'Checkbox for Step');
    await pressUntilFocused(editor, wanted < open ? 'Shift+Tab' : 'Tab', step);
    await editor.page.keyboard.press('Enter');
  }
  await editor.page.locator('.getting-started-step.expanded', { hasText: step }).waitFor();
  // The tour draws itself anew while steps are done, and then the button no longer has the cursor: it is gone to again.
  await until(`what "${button}" opens`, async () => {
    if (await effect.isVisible()) return true;
    await pressUntilFocused(editor, 'Tab', button);
    await editor.page.keyboard.press('Enter');
    await effect.waitFor({ timeout: 15_000 }).catch(() => undefined);
    return undefined;
  });
}

/** VS Code takes the cursor back into the tour a moment after a key was pressed there: what was opened must have it after that. */
async function cursorStaysIn(place: string): Promise<void> {
  await editor.page.waitForTimeout(500);
  expect(await editor.page.evaluate(`document.activeElement?.closest(${JSON.stringify(place)}) !== null`)).toBe(true);
}

/** The steps that are not done, by what a screen reader speaks of their boxes. The tour must be in sight. */
async function stepsOpen(): Promise<readonly string[]> {
  const boxes = editor.page.locator('[aria-label^="Checkbox for Step"]');
  const states = await until('five steps', async () => {
    const all = await boxes.evaluateAll((found: PageElement[]) =>
      found.map((box) => box.getAttribute('aria-label') ?? ''),
    );
    return all.length === 5 ? all : undefined;
  });
  return states.filter((state) => !state.endsWith(': Completed'));
}

function ofTime(found: readonly Problem[]): readonly Problem[] {
  return found.filter(
    ({ file, code }) => file.endsWith('fennoway-knee-system.ifu.yaml') && code === 'quote-bound-changed',
  );
}

describe('the tour', () => {
  it('opens in a folder that holds nothing; a step that needs the demo says so', async () => {
    await runCommand(editor, 'Traywright: Take the Tour');
    await editor.page.locator('.getting-started-step').first().waitFor();
    expect(await editor.page.locator('.getting-started-step').count()).toBe(5);
    await screenshot(editor, 'first');
    const message = editor.page.locator('.notification-list-item', { hasText: 'Do the first step' }).first();
    await press('Read the sentence behind a number', 'Go to That Word', message);
    await message.locator('.monaco-button', { hasText: 'Open a Copy of the Demo' }).waitFor();
    await runCommand(editor, 'Notifications: Clear All Notifications');
  });

  it('copies the demo into a folder that is chosen', async () => {
    const question = editor.page.locator('.quick-input-title', { hasText: 'Where should the copy' });
    await press('Open a copy of the demo department', 'Open a Copy of the Demo', question);
    await until('the question for a folder', async () =>
      (await quickInputQuestion(editor)).includes('Where should the copy') ? true : undefined,
    );
    await cursorStaysIn('.quick-input-widget');
    await chooseFolder(editor, editor.folder);
    await editor.page.waitForURL(/lanternfield-demo/);
    await waitForWorkbench(editor);
    expect(readdirSync(editor.folder)).toEqual(['lanternfield-demo']);
    editor = { ...editor, folder: path.join(editor.folder, 'lanternfield-demo') };
    const copied = readdirSync(editor.folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ifu.yaml'),
    );
    const original = path.join(samples, 'lanternfield');
    const demo = readdirSync(original, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ifu.yaml'),
    );
    expect(copied.sort()).toEqual(demo.sort());
    for (const name of copied)
      expect(readFileSync(path.join(editor.folder, name))).toEqual(readFileSync(path.join(original, name)));
  });

  it('is there again when the window has opened with the copy', async () => {
    await editor.page.locator('.getting-started-step').first().waitFor();
    await editor.page.locator('[id$="traywright.status"]', { hasText: /\d+ findings/ }).waitFor();
    await screenshot(editor, 'library');
  });

  it('shows what was found: all that the command line finds in the copy, each line leading to its place', async () => {
    const rows = editor.page.locator('.markers-panel-container .monaco-list-row');
    await press('See what was found', 'Show the List', rows.first());
    await cursorStaysIn('.markers-panel');
    const expected = asLines(foundByCommandLine(editor.folder));
    const listed = await problemsWhen(editor, 'all findings', (found) => found.length === expected.length);
    expect(asLines(listed)).toEqual(expected);
    expect(ofTime(listed)).toHaveLength(1);
    await editor.page.locator('.markers-panel-container .monaco-list').focus();
    for (const key of ['Home', 'ArrowDown', 'Enter']) await editor.page.keyboard.press(key);
    const [first] = listed;
    await editor.page.locator('.tab.active', { hasText: path.basename(first?.file ?? '') }).waitFor();
    await editor.page.locator(`[id="status.editor.selection"] >> text=/^Ln ${first?.line}, /`).waitFor();
  });

  it('leads to a word that was copied wrongly, with its sentence; typed over, the finding goes', async () => {
    const marked = editor.page.locator('[id="status.editor.selection"] >> text=/^Ln 29, Col \\d+ \\(8 selected\\)$/');
    await press('Read the sentence behind a number', 'Go to That Word', marked);
    const squiggle = editor.page.locator('.editor-group-container.active .squiggly-error').first();
    await squiggle.waitFor();
    await screenshot(editor, 'problems');
    await editor.page.keyboard.press('Control+.');
    const mends = editor.page.locator('.action-widget .monaco-list-row');
    await mends.filter({ hasText: 'Change to at most' }).waitFor();
    await screenshot(editor, 'editor');
    await editor.page.keyboard.press('Escape');
    await mends.first().waitFor({ state: 'hidden' });
    await editor.page.keyboard.press('Control+K');
    await editor.page.keyboard.press('Control+I');
    const hover = editor.page.locator('.monaco-resizable-hover .monaco-hover:not(.hidden)').first();
    await hover.filter({ hasText: 'Sonicate for up to 10 minutes.' }).filter({ hasText: 'page 6' }).waitFor();
    await screenshot(editor, 'quote');
    await editor.page.keyboard.type('at_most');
    await editor.page.keyboard.press('Escape');
    expect(await text(editor)).toContain('time: {at_most: 10 min}');
    await problemsWhen(editor, 'the finding to go', (found) => found.length > 0 && ofTime(found).length === 0);
    await hoverAt(editor, 29, '10 min', 'Sonicate for up to 10 minutes.');
    await save(editor);
  });

  it('opens the sheet of a set; without the camera head a route opens', async () => {
    const tab = editor.page.locator('.tab', { hasText: 'Sheet: LAP-CHOLE-B' });
    await press('Ask why a set has no route', 'Open the Sheet of LAP-CHOLE-B', tab);
    const sheet = editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
    await sheet.locator('.status', { hasText: 'No route for the set as built' }).waitFor();
    await sheet.locator('blockquote', { hasText: 'Do not use steam.' }).waitFor();
    await sheet.locator('blockquote', { hasText: 'Do not use hydrogen peroxide.' }).waitFor();
    await cursorStaysIn('iframe');
    await runCommand(editor, 'View: Hide Panel');
    await screenshot(editor, 'sheet');
    await sheet.locator('h1 button').focus();
    await until('the cursor on the camera head', async () => {
      const at: string = await sheet.locator('body').evaluate(`document.activeElement?.dataset.keep ?? ''`);
      if (at === 'leave-out/cassivane-camera-head') return true;
      await editor.page.keyboard.press('Tab');
      return undefined;
    });
    await editor.page.keyboard.press('Space');
    await sheet.locator('.status', { hasText: 'A provisional route only' }).waitFor();
    await screenshot(editor, 'imagined');
    const file = readFileSync(path.join(editor.folder, 'sets/LAP-CHOLE-B.ifu.yaml'), 'utf8');
    expect(file).toContain('{device: cassivane-camera-head, qty: 1}');
  });

  it('asks for a new file; Escape ends it and nothing is made', async () => {
    const before = readdirSync(editor.folder, { recursive: true }).length;
    await press('Write down an instruction of your own', 'New Rule File', editor.page.locator('.quick-input-widget'));
    await until('the first question', async () =>
      (await quickInputQuestion(editor)).includes('What does it describe') ? true : undefined,
    );
    await cursorStaysIn('.quick-input-widget');
    await editor.page.mouse.move(0, 0);
    await editor.page.locator('.workbench-hover').first().waitFor({ state: 'hidden' });
    await screenshot(editor, 'new-file');
    await editor.page.keyboard.press('Escape');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    expect(readdirSync(editor.folder, { recursive: true })).toHaveLength(before);
    await until('all steps but this one done', async () => {
      const open = await stepsOpen();
      return open.length === 1 && open[0]?.includes('of your own') === true ? true : undefined;
    });
  });

  it('makes the file when each question is answered or passed over; what is open in it is found', async () => {
    await press('Write down an instruction of your own', 'New Rule File', editor.page.locator('.quick-input-widget'));
    await chooseByName(editor, 'document', ({ label }) => label === 'Document');
    await until('the next question', async () =>
      (await quickInputQuestion(editor)).includes('What does it describe') ? undefined : true,
    );
    await cursorStaysIn('.quick-input-widget');
    const made = editor.page.locator('.tab.active', { hasText: 'of-the-tour.ifu.yaml' });
    await answerQuestions(editor, { 'its id': 'of-the-tour' }, made);
    const written = await text(editor);
    expect(written).toMatch(/^kind: document$/m);
    expect(written).toMatch(/^id: of-the-tour$/m);
    await problemsWhen(editor, 'what is open in it', (found) =>
      found.some(({ file, code }) => file.endsWith('of-the-tour.ifu.yaml') && code === 'still-to-write'),
    );
  });

  it('has five steps done then', async () => {
    await runCommand(editor, 'Traywright: Take the Tour');
    await until('no step left', async () => ((await stepsOpen()).length === 0 ? true : undefined));
    await screenshot(editor, 'done-light');
    await useTheme(editor, 'dark');
    await screenshot(editor, 'done-dark');
  });
});
