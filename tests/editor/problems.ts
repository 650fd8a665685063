import { attempt, type Editor } from './harness.ts';
import { until } from './wait.ts';
import type { PageElement } from './window.ts';

/** Reads the Problems panel: every row, also those that the panel draws only when one scrolls to them. */

export interface Problem {
  /** Path below the opened folder, with forward slashes. */
  readonly file: string;
  /** Line and column as the editor counts them, from 1. */
  readonly line: number;
  readonly column: number;
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
  /** The code that stands in brackets behind the message; empty when there is none. */
  readonly code: string;
  readonly source: string;
  readonly related: readonly RelatedPlace[];
}

export interface RelatedPlace {
  /** Name of the file without its folder: the panel shows no more. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

interface Row {
  readonly index: number;
  readonly level: number;
  readonly bottom: number;
  readonly label: string;
  readonly code: string;
}

/** What the Problems panel lists now, in its order. */
export async function problems(editor: Editor): Promise<Problem[]> {
  return attempt(editor, 'read the Problems panel', async () => {
    await showProblems(editor);
    return fromRows(await allRows(editor));
  });
}

/** Reads the Problems panel until what it lists fits, and gives that. `what` says what was waited for. */
export async function problemsWhen(
  editor: Editor,
  what: string,
  fits: (listed: Problem[]) => boolean,
): Promise<Problem[]> {
  return attempt(editor, `see in the Problems panel ${what}`, async () => {
    let listed: Problem[] = [];
    return until(
      what,
      async () => {
        listed = await problems(editor);
        return fits(listed) ? listed : undefined;
      },
      { describe: () => JSON.stringify(listed, undefined, 2) },
    );
  });
}

/** Brings the Problems panel to the front; the cursor may be in it afterwards. */
export async function showProblems(editor: Editor): Promise<void> {
  const panel = editor.page.locator('.markers-panel-container');
  if (!(await panel.isVisible())) {
    await editor.page.keyboard.press('Control+Shift+M');
    await panel.waitFor();
  }
}

async function allRows(editor: Editor): Promise<Row[]> {
  const list = editor.page.locator('.markers-panel-container .monaco-list');
  if ((await list.count()) === 0 || !(await list.isVisible())) {
    return [];
  }
  await list.hover({ position: { x: 5, y: 5 } });
  await scroll(editor, -1_000_000);
  const found = new Map<number, Row>();
  await until('the end of the Problems panel', async () => {
    const before = found.size;
    for (const row of await drawnRows(editor)) {
      found.set(row.index, row);
    }
    const end = await contentHeight(editor);
    const reached = Math.max(0, ...[...found.values()].map((row) => row.bottom));
    if (reached >= end) {
      return true;
    }
    if (found.size > before) {
      await scroll(editor, 100);
    }
    return undefined;
  });
  return [...found.values()].sort((a, b) => a.index - b.index);
}

async function scroll(editor: Editor, by: number): Promise<void> {
  await editor.page.mouse.wheel(0, by);
}

function drawnRows(editor: Editor): Promise<Row[]> {
  return editor.page.locator('.markers-panel-container .monaco-list-row').evaluateAll((rows: PageElement[]) =>
    rows.map((row) => ({
      index: Number(row.getAttribute('data-index')),
      level: Number(row.getAttribute('aria-level')),
      bottom: Number.parseFloat(row.style.top) + Number.parseFloat(row.style.height),
      label: row.getAttribute('aria-label') ?? '',
      code: row.querySelector('.marker-code')?.textContent ?? '',
    })),
  );
}

async function contentHeight(editor: Editor): Promise<number> {
  const heights = await editor.page
    .locator('.markers-panel-container .monaco-list-rows')
    .evaluateAll((contents: PageElement[]) => contents.map((content) => Number.parseFloat(content.style.height)));
  return heights[0] ?? 0;
}

function fromRows(rows: readonly Row[]): Problem[] {
  const listed: (Problem & { related: RelatedPlace[] })[] = [];
  let file = '';
  for (const row of rows) {
    if (row.level === 1) {
      file = fileOf(row.label);
    } else if (row.level === 2) {
      listed.push(problemOf(file, row));
    } else {
      listed.at(-1)?.related.push(relatedOf(row.label));
    }
  }
  return listed;
}

function fileOf(label: string): string {
  const [, name, folder] = /problems? in file (.+) of folder (.*)$/su.exec(label) ?? [];
  if (name === undefined || folder === undefined) {
    throw new Error(`not a file of the Problems panel: "${label}"`);
  }
  return folder === '.' || folder === '' ? name : `${folder}/${name}`;
}

function problemOf(file: string, row: Row): Problem & { related: RelatedPlace[] } {
  const place = /^(\w+): (.*) at line (\d+) and character (\d+)\.(.*)$/su.exec(row.label);
  const [, severity = '', message = '', line, column, rest = ''] = place ?? [];
  if (place === null) {
    throw new Error(`not a problem of the Problems panel: "${row.label}"`);
  }
  return {
    file,
    line: Number(line),
    column: Number(column),
    severity: severityOf(severity),
    message,
    code: row.code,
    source: / generated by (.*)$/su.exec(rest)?.[1] ?? '',
    related: [],
  };
}

function severityOf(word: string): Problem['severity'] {
  if (word === 'Error') {
    return 'error';
  }
  return word === 'Warning' ? 'warning' : 'info';
}

function relatedOf(label: string): RelatedPlace {
  const [, message, line, column, file] = /^(.*) at line (\d+) and character (\d+) in (.*)$/su.exec(label) ?? [];
  if (message === undefined || file === undefined) {
    throw new Error(`not a related place of the Problems panel: "${label}"`);
  }
  return { file, line: Number(line), column: Number(column), message };
}
