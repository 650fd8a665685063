import { type Disposable, FileType, type Uri, workspace } from 'vscode';
import { ruleFiles } from './rule-files.ts';
import type { ServerConnection } from './server-connection.ts';

/** As large as the server takes; larger ones are named, not sent. */
const largest = 4_000_000;

/** Files sent in one message. */
const together = 50;

const pattern = '**/*.ifu.yaml';

/** Sends the rule files of the open folders to a server that has no disk, and each of them again when it changes. */
export function sendFolders(server: ServerConnection): readonly Disposable[] {
  const watcher = workspace.createFileSystemWatcher(pattern);
  const send = (uri: Uri): void => void sendFiles(server, [uri]);
  const sendAll = (): void => void ruleFiles().then((uris) => sendFiles(server, uris));
  return [
    watcher,
    watcher.onDidCreate(send),
    watcher.onDidChange(send),
    watcher.onDidDelete((uri) => void server.tell('traywright/files', { files: [goneFile(server, uri)] })),
    workspace.onDidChangeWorkspaceFolders(sendAll),
    server.onRunning(sendAll),
  ];
}

async function sendFiles(server: ServerConnection, uris: readonly Uri[]): Promise<void> {
  for (let from = 0; from < uris.length; from += together) {
    const files = await Promise.all(uris.slice(from, from + together).map((uri) => fileToSend(server, uri)));
    await server.tell('traywright/files', { files });
  }
}

function goneFile(server: ServerConnection, uri: Uri): unknown {
  return { uri: server.uriText(uri), gone: true };
}

async function fileToSend(server: ServerConnection, uri: Uri): Promise<unknown> {
  const named = { uri: server.uriText(uri) };
  try {
    const { type, size } = await workspace.fs.stat(uri);
    if (type !== FileType.File) return { ...named, refused: 'not-ordinary' };
    if (size > largest) return { ...named, refused: 'too-large' };
    return { ...named, base64: base64Of(await workspace.fs.readFile(uri)) };
  } catch {
    return { ...named, refused: 'unreadable' };
  }
}

/** In pieces: a call takes only so many arguments. */
function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += 8_192) {
    text += String.fromCharCode(...bytes.subarray(from, from + 8_192));
  }
  return btoa(text);
}
