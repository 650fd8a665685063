import {
  commands,
  type Disposable,
  type TextDocumentChangeEvent,
  TextDocumentChangeReason,
  window,
  workspace,
} from 'vscode';
import { recordIn, textIn } from './answers.ts';
import { sentencesCommand } from './names.ts';
import type { ServerConnection } from './server-connection.ts';

/** Fewer lines are typed or taken over, not pasted from an instruction. */
const fewestLines = 3;

const moment = 300;

/** When pages of an instruction were pasted, says once for each file what comes next. The line above the sentences stays and says the same. */
export function registerWaitingSentences(server: ServerConnection): Disposable {
  const told = new Set<string>();
  return workspace.onDidChangeTextDocument(async (event) => {
    const { document } = event;
    const uri = document.uri.toString();
    if (document.languageId !== 'traywright-rules' || told.has(uri) || !isPasted(event)) return;
    // The same change goes to the server by another listener, which may be called after this one.
    await new Promise((resolve) => setTimeout(resolve, moment));
    const given = server.uriText(document.uri);
    const { words, pasted } = recordIn(await server.ask('traywright/waitingSentences', { uri: given }));
    if (pasted !== true || told.has(uri)) return;
    told.add(uri);
    const go = 'Turn Them into Fields';
    const chosen = await window.showInformationMessage(`Traywright: ${textIn(words)} to become fields.`, go);
    if (chosen === go) await commands.executeCommand(sentencesCommand, given);
  });
}

function isPasted({ contentChanges, reason }: TextDocumentChangeEvent): boolean {
  const isAgain = reason === TextDocumentChangeReason.Undo || reason === TextDocumentChangeReason.Redo;
  return !isAgain && contentChanges.some(({ text }) => text.split('\n').length > fewestLines);
}
