import { commands, type Disposable, Uri, WorkspaceEdit, window, workspace } from 'vscode';
import { recordIn, textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';

/** Makes the open folder a library: its file `library.ifu.yaml`, and nothing else. */
export function registerStartLibrary(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.startLibrary', () => startLibrary(server));
}

async function startLibrary(server: ServerConnection): Promise<void> {
  const folder = workspace.workspaceFolders?.[0]?.uri;
  if (folder === undefined) {
    await commands.executeCommand('vscode.openFolder');
    return;
  }
  const name = await window.showInputBox({
    title: 'Start a Library',
    prompt: 'Name of the department, as people know it.',
    placeHolder: 'Such as Lakeside Hospital, sterile processing',
    ignoreFocusOut: true,
  });
  if (name === undefined) return;
  const answers = { id: [idFrom(name)], name: [name === '' ? 'Our department' : name] };
  const made = recordIn(await server.ask('traywright/newFile', { kind: 'library', answers }));
  const uri = Uri.joinPath(folder, 'library.ifu.yaml');
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, contents: new TextEncoder().encode(textIn(made.text)) });
  if (textIn(made.text) !== '' && (await workspace.applyEdit(edit))) await window.showTextDocument(uri);
  else void window.showErrorMessage('Traywright: the file library.ifu.yaml was not made. There may be one already.');
}

function idFrom(name: string): string {
  const plain = name
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 50);
  return plain === '' ? 'our-library' : plain;
}
