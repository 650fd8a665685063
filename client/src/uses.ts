import { commands, type Disposable, Position, Selection, Uri, window, workspace } from 'vscode';
import { recordIn, textIn } from './answers.ts';

/** The name under which the line above a file leads to the places that name it. */
export const usesCommand = 'traywright.showUses';

export function registerUses(): Disposable {
  return commands.registerCommand('traywright.showUses', async (uri: unknown, position: unknown) => {
    if (textIn(uri) !== '') {
      const { line, character } = recordIn(position);
      const at = new Position(Number(line) || 0, Number(character) || 0);
      const editor = await window.showTextDocument(await workspace.openTextDocument(Uri.parse(textIn(uri))));
      editor.selection = new Selection(at, at);
    }
    await commands.executeCommand('editor.action.goToReferences');
  });
}
