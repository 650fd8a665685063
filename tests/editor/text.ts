import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { attempt, type EditorWindow } from './harness.ts';
import { until } from './wait.ts';
import { focusText, type PageElement } from './window.ts';

/** The text of the open file: moving, typing, hover and completion, by keyboard. Lines and columns count from 1. */

export interface Completion {
  readonly label: string;
  /** What a screen reader speaks for the entry: label, detail and kind. */
  readonly spoken: string;
}

/**
 * The whole text of the open file as the editor holds it, saved or not. The cursor ends where it was not. It is copied
 * until two copies are the same: a file that has only just opened is given its cursor while the keys are pressed, and
 * then only the line of the cursor is copied.
 */
export async function text(editor: EditorWindow): Promise<string> {
  return attempt(editor, 'read the text of the open file', async () => {
    let before: string | undefined;
    return until('the text to stay as it is', async () => {
      const copied = await copyAll(editor);
      if (copied === before) return copied;
      before = copied;
      return undefined;
    });
  });
}

/** The keys are pressed again where a list took the cursor before they arrived. */
async function copyAll(editor: EditorWindow): Promise<string> {
  const mark = `nothing copied ${Math.random()}`;
  await editor.page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(mark)})`);
  return until('the copied text', async () => {
    await focusText(editor);
    await editor.page.keyboard.press('Control+A');
    await editor.page.keyboard.press('Control+C');
    for (let looks = 0; looks < 20; looks++) {
      const copied = await editor.page.evaluate('navigator.clipboard.readText()');
      if (typeof copied === 'string' && copied !== mark) return copied;
      await pause(50);
    }
    return undefined;
  });
}

/** The number of the first line that holds these words. */
export async function lineWith(editor: EditorWindow, words: string): Promise<number> {
  const held = await text(editor);
  const at = held.split(/\r?\n/).findIndex((line) => line.includes(words));
  if (at < 0) throw new Error(`"${words}" stands in no line of\n${held}`);
  return at + 1;
}

/** Puts the cursor at a place in the open file. */
export async function goTo(editor: EditorWindow, line: number, column: number): Promise<void> {
  await attempt(editor, `go to line ${line}, column ${column}`, async () => {
    await focusText(editor);
    await editor.page.keyboard.press('Control+G');
    const input = editor.page.locator('.quick-input-widget input').first();
    await input.waitFor();
    await input.fill(`:${line}:${column}`);
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    await editor.page.locator(`[id="status.editor.selection"] >> text=/^Ln ${line}, Col ${column}$/`).waitFor();
    await editor.page.locator('.editor-group-container.active .monaco-editor.focused').first().waitFor();
  });
}

/** Puts the cursor before the first place where `words` stand in a line. */
export async function goToWords(editor: EditorWindow, line: number, words: string): Promise<void> {
  const found = (await text(editor)).split(/\r?\n/)[line - 1];
  const column = found?.indexOf(words) ?? -1;
  if (column === -1) {
    throw new Error(`"${words}" does not stand in line ${line}: "${found}"`);
  }
  await goTo(editor, line, column + 1);
}

/**
 * What the hover says at the first place where `words` stand in a line, once it says `expected` among other things: its
 * parts come one after the other. It is closed again.
 */
export async function hoverAt(editor: EditorWindow, line: number, words: string, expected: string): Promise<string> {
  return attempt(editor, `hover over "${words}" in line ${line}`, async () => {
    const said = await openHover(editor, line, words, expected);
    await editor.page.keyboard.press('Escape');
    await hoverBox(editor).waitFor({ state: 'hidden' });
    return said;
  });
}

/** Like `hoverAt`, but leaves the hover open, for a picture. */
export async function openHover(editor: EditorWindow, line: number, words: string, expected: string): Promise<string> {
  await goToWords(editor, line, words);
  const box = hoverBox(editor);
  let said = '';
  return until(
    `a hover that says "${expected}"`,
    async () => {
      // A hover closes by itself when the text or its findings are drawn anew, so it is asked for again.
      if (!(await box.isVisible())) {
        await askForHover(editor);
      }
      said = (await box.allInnerTexts()).join('\n').replaceAll('\u00a0', ' ').trim() || said;
      return said.includes(expected) ? said : undefined;
    },
    { describe: () => said },
  );
}

async function askForHover(editor: EditorWindow): Promise<void> {
  await editor.page.keyboard.press('Control+K');
  await editor.page.keyboard.press('Control+I');
  await hoverBox(editor)
    .waitFor({ timeout: 3_000 })
    .catch(() => undefined);
}

/** Types at a place key by key, as a person does, so that completion may open and brackets may close themselves. */
export async function typeAt(editor: EditorWindow, line: number, column: number, typed: string): Promise<void> {
  await attempt(editor, `type at line ${line}, column ${column}`, async () => {
    await goTo(editor, line, column);
    await editor.page.keyboard.type(typed);
  });
}

/** Replaces the first place where `words` stand in a line by other words, put in at once. */
export async function replaceWords(editor: EditorWindow, line: number, words: string, others: string): Promise<void> {
  await attempt(editor, `replace "${words}" in line ${line}`, async () => {
    await goToWords(editor, line, words);
    for (const _ of words) {
      await editor.page.keyboard.press('Shift+ArrowRight');
    }
    if (others === '') {
      await editor.page.keyboard.press('Delete');
    } else {
      await editor.page.keyboard.insertText(others);
    }
  });
}

export async function undo(editor: EditorWindow): Promise<void> {
  await focusText(editor);
  await editor.page.keyboard.press('Control+Z');
}

/** Saves the open file and waits until the disk has its text. */
export async function save(editor: EditorWindow): Promise<void> {
  await attempt(editor, 'save', async () => {
    const held = await text(editor);
    await editor.page.keyboard.press('Control+S');
    const file = await openPath(editor);
    await until(`${file} to be written`, () => (withoutMark(readFileSync(file, 'utf8')) === held ? true : undefined));
  });
}

/** What completion offers at the cursor, all of it, in its order; the list is left open for `acceptCompletion`. */
export async function completions(editor: EditorWindow): Promise<Completion[]> {
  return attempt(editor, 'list the completions', async () => {
    await focusText(editor);
    const widget = editor.page.locator('.editor-widget.suggest-widget.visible');
    if (!(await widget.isVisible())) {
      await editor.page.keyboard.press('Control+Space');
      await widget.waitFor();
    }
    await until('completions', async () => ((await drawnCompletions(editor)).length > 0 ? true : undefined), {
      describe: async () => (await widget.allInnerTexts()).join('\n'),
    });
    return scrolledCompletions(editor);
  });
}

/** Takes the completion with this label from the open list, by keyboard. */
export async function acceptCompletion(editor: EditorWindow, label: string): Promise<void> {
  await attempt(editor, `take the completion "${label}"`, async () => {
    const focused = editor.page.locator('.suggest-widget .monaco-list-row.focused');
    await until(`"${label}" to be chosen`, async () => {
      const [now] = await focused.evaluateAll(labels);
      if (now === label) {
        return true;
      }
      await editor.page.keyboard.press('ArrowDown');
      return undefined;
    });
    await editor.page.keyboard.press('Enter');
    // Behind some of them the next list comes up at once.
    await until(`"${label}" to be taken`, async () => {
      const isOpen = await editor.page.locator('.suggest-widget.visible').isVisible();
      return isOpen && (await focused.evaluateAll(labels))[0] === label ? undefined : true;
    });
  });
}

export async function closeCompletions(editor: EditorWindow): Promise<void> {
  await editor.page.keyboard.press('Escape');
  await editor.page.locator('.suggest-widget.visible').waitFor({ state: 'hidden' });
}

/** Path on disk of the file that has the cursor. */
async function openPath(editor: EditorWindow): Promise<string> {
  const focused = editor.page.locator('.editor-group-container.active .monaco-editor.focused').first();
  const uri = (await focused.getAttribute('data-uri')) ?? '';
  const [, file] = /^[\w-]+:(?:\/\/[^/]*)?(\/.*)$/.exec(uri) ?? [];
  if (file === undefined) {
    throw new Error(`not a file on disk: "${uri}"`);
  }
  return decodeURIComponent(file);
}

/** The editor keeps a byte-order mark to itself. */
function withoutMark(written: string): string {
  return written.replace(/^\uFEFF/, '');
}

function hoverBox(editor: EditorWindow) {
  return editor.page.locator('.monaco-resizable-hover .monaco-hover:not(.hidden)').first();
}

interface DrawnCompletion extends Completion {
  readonly index: number;
}

async function scrolledCompletions(editor: EditorWindow): Promise<Completion[]> {
  const found = new Map<number, DrawnCompletion>();
  const rows = editor.page.locator('.suggest-widget .tree .monaco-list-row');
  await rows.first().hover();
  await until('the end of the completions', async () => {
    const before = found.size;
    for (const row of await drawnCompletions(editor)) {
      found.set(row.index, row);
    }
    await editor.page.mouse.wheel(0, 100);
    return found.size === before ? true : undefined;
  });
  await editor.page.mouse.wheel(0, -1_000_000);
  return [...found.values()].sort((a, b) => a.index - b.index).map(({ label, spoken }) => ({ label, spoken }));
}

function drawnCompletions(editor: EditorWindow): Promise<DrawnCompletion[]> {
  return editor.page.locator('.suggest-widget .tree .monaco-list-row').evaluateAll((rows: PageElement[]) =>
    rows.map((row) => ({
      index: Number(row.getAttribute('data-index')),
      label: row.querySelector('.label-name')?.textContent ?? '',
      spoken: row.getAttribute('aria-label') ?? '',
    })),
  );
}

function labels(rows: PageElement[]): string[] {
  return rows.map((row) => row.querySelector('.label-name')?.textContent ?? '');
}
