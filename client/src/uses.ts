import { commands, type Disposable, Position, Selection, window, workspace } from 'vscode';
import { recordIn, textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';

export function registerUses(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.showUses', async (uri: unknown, position: unknown) => {
    if (textIn(uri) !== '') {
      const { line, character } = recordIn(position);
      const at = new Position(Number(line) || 0, Number(character) || 0);
      const editor = await window.showTextDocument(await workspace.openTextDocument(server.uriOf(textIn(uri))));
      editor.selection = new Selection(at, at);
    }
    await commands.executeCommand('editor.action.goToReferences');
  });
}
