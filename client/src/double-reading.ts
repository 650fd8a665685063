import { commands, type Disposable, type QuickPickItem, Range, Selection, ViewColumn, window, workspace } from 'vscode';
import { listIn, rangeNumbers, recordIn, textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';

/** A second reader encodes the same quotes without seeing the first reading; then the two are compared field by field. */
export function registerDoubleReading(server: ServerConnection): readonly Disposable[] {
  return [
    commands.registerCommand('traywright.beginSecondReading', () => begin(server)),
    commands.registerCommand('traywright.compareReadings', () => compare(server)),
  ];
}

/** The copy is a document without a name: it lies in no library, so that it is no second file of the same id. */
async function begin(server: ServerConnection): Promise<void> {
  const document = window.activeTextEditor?.document;
  const copy =
    document?.languageId === 'traywright-rules'
      ? textIn(await server.ask('traywright/blindCopy', { uri: server.uriText(document.uri) }))
      : '';
  if (copy === '') {
    void window.showInformationMessage(
      'Traywright: open a file with quoted statements first. A second reading starts from its quotes.',
    );
    return;
  }
  const made = await workspace.openTextDocument({ language: 'traywright-rules', content: copy });
  const editor = await window.showTextDocument(made, ViewColumn.Active);
  const end = made.lineAt(made.lineCount - 1).range.end;
  editor.selection = new Selection(end, end);
  editor.revealRange(new Range(end, end));
}

interface Row extends QuickPickItem {
  readonly given: Readonly<Record<string, unknown>>;
}

async function compare(server: ServerConnection): Promise<void> {
  const document = window.activeTextEditor?.document;
  const uri = document?.languageId === 'traywright-rules' ? server.uriText(document.uri) : '';
  const answer = recordIn(await server.ask('traywright/compareReadings', { uri }));
  const rows = listIn(answer.rows).map(recordIn);
  if (document === undefined || typeof answer.first !== 'string') {
    void window.showInformationMessage(
      'Traywright: go into the second reading first. The library must hold a file of the same kind and id.',
    );
    return;
  }
  const differing = rows.filter(({ verdict }) => verdict !== 'same');
  if (differing.length === 0) {
    void window.showInformationMessage(
      `Traywright: both readings agree in all ${rows.length} fields. Two readers can share a mistake: the maker’s document is the instruction. Name the second reader under "review" in the first file.`,
    );
    return;
  }
  const chosen = await window.showQuickPick(differing.map(rowItem), {
    title: `Two readings: ${differing.length} of ${rows.length} fields differ`,
    placeHolder: 'Choose a field to see both places. The document decides, not either reader.',
    matchOnDescription: true,
    matchOnDetail: true,
  });
  if (chosen !== undefined) await showBoth(server, answer.first, uri, chosen.given);
}

function rowItem(given: Readonly<Record<string, unknown>>): Row {
  const words = (value: unknown): string => (textIn(value) === '' ? 'nothing' : textIn(value));
  return { label: textIn(given.path), detail: `first: ${words(given.first)} · second: ${words(given.second)}`, given };
}

async function showBoth(
  server: ServerConnection,
  first: string,
  second: string,
  row: Readonly<Record<string, unknown>>,
): Promise<void> {
  await reveal(server, second, row.secondAt, ViewColumn.One);
  await reveal(server, first, row.firstAt, ViewColumn.Two);
}

async function reveal(server: ServerConnection, uri: string, at: unknown, viewColumn: ViewColumn): Promise<void> {
  const editor = await window.showTextDocument(server.uriOf(uri), { viewColumn, preview: false });
  const numbers = rangeNumbers(at);
  if (numbers === undefined) return;
  const range = new Range(...numbers);
  editor.selection = new Selection(range.start, range.end);
  editor.revealRange(range);
}
