import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { attempt, type EditorWindow } from './harness.ts';
import { until } from './wait.ts';

/**
 * Reads the Problems panel by its own "copy": all rows are chosen and copied by keyboard. The panel draws only the rows in
 * sight, so that reading what is drawn would miss the rest.
 */

export interface Problem {
  /** Path below the opened folder, with forward slashes. */
  readonly file: string;
  /** Lines and columns as the editor counts them, from 1. */
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly severity: 'error' | 'warning' | 'info' | 'hint';
  readonly message: string;
  readonly code: string;
  readonly source: string;
  readonly related: readonly RelatedPlace[];
}

export interface RelatedPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

/** A row as the panel copies it. */
interface CopiedMarker extends CopiedPlace {
  readonly severity: number;
  readonly code?: string | { readonly value: string };
  readonly source?: string;
  readonly relatedInformation?: readonly CopiedPlace[];
}

interface CopiedPlace {
  readonly resource: string | { readonly path: string };
  readonly message: string;
  readonly startLineNumber: number;
  readonly startColumn: number;
  readonly endLineNumber: number;
  readonly endColumn: number;
}

/** What the Problems panel lists now, in its order of files. The panel has the cursor afterwards. */
export async function problems(editor: EditorWindow): Promise<Problem[]> {
  return attempt(editor, 'read the Problems panel', async () => {
    await showProblems(editor);
    const copied = await copyAllRows(editor);
    return copied.map((marker) => problemOf(editor, marker));
  });
}

/** Reads the Problems panel until what it lists fits, and gives that. `what` says what was waited for. */
export async function problemsWhen(
  editor: EditorWindow,
  what: string,
  satisfied: (listed: Problem[]) => boolean,
): Promise<Problem[]> {
  return attempt(editor, `see in the Problems panel ${what}`, async () => {
    let listed: Problem[] = [];
    return until(
      what,
      async () => {
        listed = await problems(editor);
        return satisfied(listed) ? listed : undefined;
      },
      { describe: () => JSON.stringify(listed, undefined, 1) },
    );
  });
}

/** Brings the Problems panel to the front; the cursor may be in it afterwards. */
export async function showProblems(editor: EditorWindow): Promise<void> {
  const panel = editor.page.locator('.markers-panel-container');
  if (!(await panel.isVisible())) {
    await editor.page.keyboard.press('Control+Shift+M');
    await panel.waitFor();
  }
}

async function copyAllRows(editor: EditorWindow): Promise<CopiedMarker[]> {
  const { page } = editor;
  const rows = page.locator('.markers-panel-container .monaco-list-row');
  const nothing = 'nothing was copied';
  await page.evaluate(`navigator.clipboard.writeText('${nothing}')`);
  return until('the copied rows of the Problems panel', async () => {
    if ((await rows.count()) === 0) {
      return [];
    }
    await page.locator('.markers-panel-container .monaco-list').focus();
    // The first row is a file; chosen from there, all rows are chosen. A copy starts from a problem: the row below it.
    for (const key of ['Home', 'Control+A', 'ArrowDown', 'Control+C']) {
      await page.keyboard.press(key);
    }
    const copied = await page.evaluate('navigator.clipboard.readText()');
    // Let go of from the file's row, since letting go of from a problem's row would open its file.
    for (const key of ['Home', 'Escape', 'Escape']) {
      await page.keyboard.press(key);
    }
    // Nothing but the file's row was chosen when the panel was being drawn anew: an empty copy, and another try.
    return typeof copied === 'string' && copied.startsWith('[') ? (JSON.parse(copied) as CopiedMarker[]) : undefined;
  });
}

function problemOf(editor: EditorWindow, marker: CopiedMarker): Problem {
  const { code } = marker;
  return {
    ...placeOf(editor, marker),
    endLine: marker.endLineNumber,
    endColumn: marker.endColumn,
    severity: severityOf(marker.severity),
    code: typeof code === 'object' ? code.value : (code ?? ''),
    source: marker.source ?? '',
    related: (marker.relatedInformation ?? []).map((place) => placeOf(editor, place)),
  };
}

function placeOf(editor: EditorWindow, place: CopiedPlace): RelatedPlace {
  const file = typeof place.resource === 'string' ? place.resource : place.resource.path;
  return {
    file: path.relative(editor.folder, file.startsWith('file:') ? fileURLToPath(file) : file),
    line: place.startLineNumber,
    column: place.startColumn,
    message: place.message,
  };
}

/** VS Code's own numbers. */
function severityOf(severity: number): Problem['severity'] {
  switch (severity) {
    case 8:
      return 'error';
    case 4:
      return 'warning';
    case 2:
      return 'info';
    default:
      return 'hint';
  }
}
