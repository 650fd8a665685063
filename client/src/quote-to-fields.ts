import {
  commands,
  type Disposable,
  Range,
  SnippetString,
  SnippetTextEdit,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { listIn, rangeNumbers, recordIn, textIn, textsIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';

/** Turns the quote at the cursor, or the statement named, into fields whose open places are gone through with the Tab key. */
export function registerQuoteToFields(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.quoteToFields', (uri: unknown, statement: unknown) =>
    quoteToFields(server, uri, statement),
  );
}

async function quoteToFields(server: ServerConnection, given: unknown, statement: unknown): Promise<void> {
  const editor = window.activeTextEditor;
  const uri = textIn(given) === '' ? editor?.document.uri : server.uriOf(textIn(given));
  if (editor === undefined || uri === undefined) return;
  const document = await workspace.openTextDocument(uri);
  const { line, character } = editor.selection.active;
  const params = { uri: server.uriText(uri), statement, position: { line, character } };
  const answer = recordIn(await server.ask('traywright/quoteToFields', params));
  const edits = listIn(answer.insertions).flatMap(snippetEdit);
  if (edits.length === 0) {
    const why = textsIn(answer.left).join('; ');
    void window.showInformationMessage(
      `Traywright: no field was made${why === '' ? '. Put the cursor into a statement with a quote.' : `: ${why}.`}`,
    );
    return;
  }
  if (typeof answer.version === 'number' && answer.version !== document.version) {
    void window.showWarningMessage('Traywright: the text has changed meanwhile, so nothing was put in. Try again.');
    return;
  }
  const edit = new WorkspaceEdit();
  edit.set(uri, edits);
  await workspace.applyEdit(edit);
  const left = textsIn(answer.left);
  const told = [...(left.length === 0 ? [] : [`left for you: ${left.join('; ')}.`]), textIn(answer.caution)];
  void window.showInformationMessage(`Traywright: ${told.join(' ').trim()}`);
}

function snippetEdit(insertion: unknown): SnippetTextEdit[] {
  const { range, snippet } = recordIn(insertion);
  const numbers = rangeNumbers(range);
  if (numbers === undefined || typeof snippet !== 'string') return [];
  const edit = new SnippetTextEdit(new Range(...numbers), new SnippetString(snippet));
  edit.keepWhitespace = true;
  return [edit];
}
