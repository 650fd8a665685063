import { readdirSync } from 'node:fs';
import path from 'node:path';
import type { Locator } from 'playwright-core';
import { attempt, type EditorWindow } from './harness.ts';
import { until } from './wait.ts';

/** The window around the text: commands, files, messages and themes, by keyboard as a person works. */

export type Theme = 'light' | 'dark' | 'high contrast dark' | 'high contrast light';

export interface Notification {
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
  readonly buttons: readonly string[];
}

/** One entry of a list at the top of the window. */
export interface QuickEntry {
  readonly label: string;
  readonly description: string;
  /** What a screen reader speaks. */
  readonly spoken: string;
}

/** The part of a page's element that is read here, since the page's own types are not those of the tests' side. */
export interface PageElement {
  readonly textContent: string | null;
  readonly className: string;
  readonly style: { readonly top: string; readonly height: string };
  readonly previousElementSibling: PageElement | null;
  getAttribute(name: string): string | null;
  querySelector(selector: string): PageElement | null;
  querySelectorAll(selector: string): Iterable<PageElement>;
  closest(selector: string): PageElement | null;
}

/** The name in VS Code's list of themes, and the class by which its window can be told. */
const themes: Record<Theme, { readonly listed: string; readonly mark: string }> = {
  light: { listed: 'Light Modern', mark: 'vs' },
  dark: { listed: 'Dark Modern', mark: 'vs-dark' },
  'high contrast dark': { listed: 'Dark High Contrast', mark: 'hc-black' },
  'high contrast light': { listed: 'Light High Contrast', mark: 'hc-light' },
};

/** Runs a command by the title that the palette shows, for example "View: Focus Problems". */
export async function runCommand(editor: EditorWindow, title: string): Promise<void> {
  await attempt(editor, `run the command "${title}"`, () =>
    chooseByName(editor, `>${title}`, (entry) => entry.label === title, 'F1'),
  );
}

/** What the open list at the top of the window offers, as far as it is drawn, once it offers anything. */
export async function quickList(editor: EditorWindow): Promise<QuickEntry[]> {
  return attempt(editor, 'read the list at the top of the window', () =>
    until('entries', async () => nonEmpty(await quickEntries(editor))),
  );
}

/** The titles that the palette offers for what is typed. */
export async function commandsFor(editor: EditorWindow, typed: string): Promise<string[]> {
  return attempt(editor, `list the commands for "${typed}"`, async () => {
    await openPalette(editor);
    await fillQuickInput(editor, `>${typed}`);
    const labels = (await quickList(editor)).map((entry) => entry.label);
    await closeQuickInput(editor);
    return labels;
  });
}

/** Opens a file by its path in the folder, through quick open, and puts the cursor into it. */
export async function openFile(editor: EditorWindow, file: string): Promise<void> {
  await attempt(editor, `open the file ${file}`, async () => {
    const folder = path.dirname(file);
    await chooseByName(
      editor,
      file,
      (entry) => entry.label === path.basename(file) && entry.description === (folder === '.' ? '' : folder),
      'Control+P',
    );
    const uriEnd = `${path.basename(editor.folder)}/${file}`.split('/').map(encodeURIComponent).join('/');
    await editor.page.locator(`.editor-group-container.active .monaco-editor[data-uri$="${uriEnd}"]`).waitFor();
    await editor.page.locator(`.monaco-editor.focused[data-uri$="${uriEnd}"]`).waitFor();
  });
}

/** Opens a file where files are open already: not over a panel beside them. */
export async function openFileLeft(editor: EditorWindow, file: string): Promise<void> {
  await editor.page.keyboard.press('Control+1');
  await editor.page.locator('.editor-group-container.active').first().waitFor();
  await openFile(editor, file);
}

/** Opens the menu of what has the cursor, by keyboard, and chooses an entry of it. */
export async function chooseInMenu(editor: EditorWindow, entry: string, opens = 'Shift+F10'): Promise<void> {
  await attempt(editor, `choose "${entry}" in the menu`, async () => {
    await editor.page.keyboard.press(opens);
    const listed = editor.page.locator('.monaco-menu .action-label', { hasText: entry }).first();
    await listed.waitFor();
    await pressUntilFocused(editor, 'ArrowDown', entry);
    await editor.page.keyboard.press('Enter');
    await listed.waitFor({ state: 'hidden' });
  });
}

/**
 * Types into the quick input and chooses the entry whose name fits, wherever it stands in the list. The list is drawn anew while it is
 * being filtered, so an entry that is no longer there when it is clicked is looked for again. With `opens`, a key, the quick input is
 * opened by it, and opened again when something that takes the cursor meanwhile (a file that is being shown, a message) has closed it.
 */
export async function chooseByName(
  editor: EditorWindow,
  typed: string,
  fits: (entry: QuickEntry) => boolean,
  opens?: string,
): Promise<void> {
  const rows = editor.page.locator('.quick-input-widget .quick-input-list .monaco-list-row');
  const input = quickInput(editor);
  let clicked = false;
  let opened = opens === undefined;
  let lookedInVain = 0;
  await until(
    `an entry for "${typed}"`,
    async () => {
      // A click that took effect late: what it chose is no longer on offer.
      const isOpen = await input.isVisible();
      if (!isOpen && clicked) return true;
      if (opens !== undefined && !(opened && isOpen)) await editor.page.keyboard.press(opens);
      opened = true;
      if ((await shownIn(input)) !== typed && !(await typeInto(input, typed))) return undefined;
      const index = (await quickEntries(editor)).findIndex(fits);
      const again = (await quickEntries(editor))[index];
      if (again === undefined || !fits(again)) {
        if (clicked) return true;
        // The list is made when something is typed: what came into being since (a command, a file) is on it only when that is done again.
        if (++lookedInVain % 50 === 0) await typeInto(input, typed.slice(0, 1));
        return undefined;
      }
      clicked = true;
      // By its name: drawn anew between looking and clicking, another may stand in its place.
      return rows
        .and(editor.page.locator(`[aria-label=${JSON.stringify(again.spoken)}]`))
        .first()
        .click({ timeout: 3_000 })
        .then(
          () => true,
          () => undefined,
        );
    },
    { describe: async () => (await quickEntries(editor)).map((entry) => entry.spoken).join('\n') },
  );
}

async function shownIn(input: Locator): Promise<string | undefined> {
  return input.inputValue({ timeout: 1_000 }).catch(() => undefined);
}

async function typeInto(input: Locator, typed: string): Promise<boolean> {
  return input.fill(typed, { timeout: 3_000 }).then(
    () => true,
    () => false,
  );
}

/** Waits for a question at the top of the window (a list or a line to fill) and gives its title and placeholder. */
export async function quickInputQuestion(editor: EditorWindow): Promise<string> {
  const widget = editor.page.locator('.quick-input-widget');
  await widget.waitFor();
  const placeholder = (await widget.locator('input').first().getAttribute('placeholder')) ?? '';
  const titles = await widget.locator('.quick-input-title').allInnerTexts();
  return [...titles, placeholder].filter((text) => text.trim() !== '').join(' ');
}

/** A list that has just opened may pass over a key: then it is pressed again. Milliseconds. */
const untilAskedAgain = 2_000;

/**
 * Answers or passes over one question after the other until `end` is there. Each is answered and then waited for: between two of them the
 * cursor is where it was before the first, and Enter would do something there.
 */
export async function answerQuestions(
  editor: EditorWindow,
  answers: Readonly<Record<string, string>>,
  end: Locator,
): Promise<void> {
  const widget = editor.page.locator('.quick-input-widget');
  let [answered, at] = ['', 0];
  await attempt(editor, 'answer the questions', () =>
    until(
      'the end of the questions',
      async () => {
        if (await end.isVisible()) return true;
        if (!(await widget.isVisible())) return undefined;
        const question = await quickInputQuestion(editor);
        if (question === answered && Date.now() - at < untilAskedAgain) return undefined;
        const [about] = Object.keys(answers).filter((words) => question.includes(words));
        if (about !== undefined) await fillQuickInput(editor, answers[about] ?? '');
        [answered, at] = [question, Date.now()];
        await quickInput(editor).press('Enter');
        return undefined;
      },
      { describe: () => answered },
    ),
  );
}

/** Answers a question at the top of the window that asks for a line of text. */
export async function answerQuickInput(editor: EditorWindow, answer: string): Promise<void> {
  await attempt(editor, `answer "${answer}"`, async () => {
    await fillQuickInput(editor, answer);
    await editor.page.keyboard.press('Enter');
  });
}

/**
 * Answers a question for a folder by its path. The dialog goes through the folders on the way; asked too early it takes the folder above,
 * so the answer is given again until it is taken.
 */
export async function chooseFolder(editor: EditorWindow, folder: string): Promise<void> {
  const widget = editor.page.locator('.quick-input-widget');
  const input = quickInput(editor);
  const inside = ['..', ...readdirSync(folder).sort()].join();
  const isListed = async () => {
    const listed = (await quickEntries(editor)).map(({ label }) => label).join();
    const chosen = await widget.locator('.quick-input-list .monaco-list-row.focused').count();
    return listed === inside && chosen === 0 && (await shownIn(input)) === `${folder}/`;
  };
  await attempt(editor, `choose the folder ${folder}`, () =>
    until('the folder to be taken', async () => {
      if (!(await widget.isVisible())) return true;
      if ((await shownIn(input)) !== `${folder}/`) await typeInto(input, `${folder}/`);
      await editor.page.waitForTimeout(500);
      if (await isListed()) await input.press('Enter');
      await widget.waitFor({ state: 'hidden', timeout: 2_000 }).catch(() => undefined);
      return undefined;
    }),
  );
}

/** Every message that VS Code holds for the user, those that have already faded from sight too. */
export async function notifications(editor: EditorWindow): Promise<Notification[]> {
  return attempt(editor, 'read the notifications', async () => {
    await runCommand(editor, 'Notifications: Show Notifications');
    const center = editor.page.locator('.notifications-center.visible');
    await center.waitFor();
    const held = await center.locator('.notification-list-item').evaluateAll((items: PageElement[]) =>
      items.map((item) => ({
        icon: item.querySelector('.notification-list-item-icon')?.className ?? '',
        message: item.querySelector('.notification-list-item-message')?.textContent ?? '',
        buttons: [...item.querySelectorAll('.notification-list-item-buttons-container .monaco-button')].map(
          (button) => button.textContent ?? '',
        ),
      })),
    );
    await runCommand(editor, 'Notifications: Hide Notifications');
    await center.waitFor({ state: 'hidden' });
    return held.map(({ icon, message, buttons }) => ({ severity: severityOfIcon(icon), message, buttons }));
  });
}

/**
 * Switches the colour theme as a person does, from VS Code's list, and waits until the window has it. A tour that has just opened takes the
 * cursor, and the list is gone with it: then it is opened again.
 */
export async function useTheme(editor: EditorWindow, theme: Theme): Promise<void> {
  const { listed, mark } = themes[theme];
  const marked = editor.page.locator(`.monaco-workbench.${mark}`);
  const widget = editor.page.locator('.quick-input-widget');
  await attempt(editor, `switch to the ${theme} theme`, () =>
    until('the theme', async () => {
      await runCommand(editor, 'Preferences: Color Theme');
      if (!(await isShownWithin(widget, 3_000))) return undefined;
      await chooseByName(editor, listed, (entry) => entry.label === listed);
      return (await isShownWithin(marked, 10_000)) ? true : undefined;
    }),
  );
}

/** `within`: milliseconds. */
async function isShownWithin(shown: Locator, within: number): Promise<boolean> {
  return shown.waitFor({ timeout: within }).then(
    () => true,
    () => false,
  );
}

/** Texts of the status bar, by the names that a screen reader speaks. */
export async function statusBar(editor: EditorWindow): Promise<string[]> {
  return editor.page
    .locator('.statusbar-item')
    .evaluateAll((items: PageElement[]) => items.map((item) => item.getAttribute('aria-label') ?? ''));
}

/** Puts the cursor back into the text of the open file. A panel that has just opened takes it once more: then the key is pressed again. */
export async function focusText(editor: EditorWindow): Promise<void> {
  const focused = editor.page.locator('.editor-group-container.active .monaco-editor.focused').first();
  await until('the cursor in the text', async () => {
    await editor.page.keyboard.press('Control+1');
    return (await isShownWithin(focused, 2_000)) ? true : undefined;
  });
}

/** What a screen reader speaks of what has the cursor: its name, else its text. A hint that VS Code puts before it is left out. */
export async function focusedWords(editor: EditorWindow): Promise<string> {
  const words = await editor.page.evaluate(`{
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    (at?.getAttribute('aria-label') || at?.textContent || '').slice(0, 300);
  }`);
  return String(words)
    .replace(/^Inspect this in the accessible view[^\n]*/, '')
    .trim();
}

/** Goes on with a key until the name of what has the cursor begins as wanted. */
export async function pressUntilFocused(editor: EditorWindow, key: string, wanted: string): Promise<void> {
  const passed: string[] = [];
  await attempt(editor, `go to "${wanted}" with ${key}`, () =>
    until(
      `the cursor on "${wanted}"`,
      async () => {
        const at = await focusedWords(editor);
        if (at.startsWith(wanted)) return true;
        passed.push(at.slice(0, 60));
        await editor.page.keyboard.press(key);
        return undefined;
      },
      { describe: () => passed.slice(0, 40).join('\n') },
    ),
  );
}

function quickInput(editor: EditorWindow): Locator {
  return editor.page
    .locator('.quick-input-widget .quick-input-filter input, .quick-input-widget input[type="text"]')
    .first();
}

/** The list of commands. What takes the cursor meanwhile (a file that is just being shown) closes it: then it is opened again. */
async function openPalette(editor: EditorWindow): Promise<void> {
  const line = quickInput(editor);
  await until('the list of commands', async () => {
    await editor.page.keyboard.press('F1');
    return line.fill('>', { timeout: 3_000 }).then(
      () => true,
      () => undefined,
    );
  });
}

export async function fillQuickInput(editor: EditorWindow, typed: string): Promise<void> {
  const input = quickInput(editor);
  await input.waitFor();
  await input.fill(typed);
}

async function closeQuickInput(editor: EditorWindow): Promise<void> {
  await editor.page.keyboard.press('Escape');
  await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

function quickEntries(editor: EditorWindow): Promise<QuickEntry[]> {
  return editor.page
    .locator('.quick-input-widget .quick-input-list .monaco-list-row')
    .evaluateAll((rows: PageElement[]) =>
      rows.map((row) => ({
        label: row.querySelector('.quick-input-list-label .label-name')?.textContent ?? '',
        description: row.querySelector('.quick-input-list-label .label-description')?.textContent ?? '',
        spoken: row.getAttribute('aria-label') ?? '',
      })),
    );
}

function severityOfIcon(icon: string): Notification['severity'] {
  if (icon.includes('codicon-error')) {
    return 'error';
  }
  return icon.includes('codicon-warning') ? 'warning' : 'info';
}

function nonEmpty<T>(list: T[]): T[] | undefined {
  return list.length === 0 ? undefined : list;
}
