import {
  type CodeLens,
  commands,
  type Disposable,
  Position,
  Selection,
  type TextEditor,
  window,
  workspace,
} from 'vscode';
import { recordIn, textIn } from './answers.ts';
import { usesCommand } from './names.ts';
import type { ServerConnection } from './server-connection.ts';

/** How many lines above files are looked at for the one that leads to where the file is used. */
const mostLenses = 20;

export function registerUses(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.showUses', async (uri: unknown, position: unknown) => {
    const [file, at] = textIn(uri) === '' ? await placeHere() : [uri, position];
    if (textIn(file) !== '') await goTo(server, textIn(file), at);
    await commands.executeCommand('editor.action.goToReferences');
  });
}

/** Nothing, where what the cursor is on is used; else what the line above the file leads to: the file's own name. */
async function placeHere(): Promise<readonly unknown[]> {
  const editor = window.activeTextEditor;
  return editor === undefined || (await isUsed(editor)) ? [] : ((await lensOf(editor))?.command?.arguments ?? []);
}

async function isUsed({ document, selection }: TextEditor): Promise<boolean> {
  const found = await commands.executeCommand<unknown>(
    'vscode.executeReferenceProvider',
    document.uri,
    selection.active,
  );
  return Array.isArray(found) && found.length > 0;
}

async function lensOf({ document }: TextEditor): Promise<CodeLens | undefined> {
  const lenses = await commands.executeCommand<CodeLens[] | undefined>(
    'vscode.executeCodeLensProvider',
    document.uri,
    mostLenses,
  );
  return lenses?.find(({ command }) => command?.command === usesCommand);
}

async function goTo(server: ServerConnection, uri: string, position: unknown): Promise<void> {
  const { line, character } = recordIn(position);
  const at = new Position(Number(line) || 0, Number(character) || 0);
  const editor = await window.showTextDocument(await workspace.openTextDocument(server.uriOf(uri)));
  editor.selection = new Selection(at, at);
}
