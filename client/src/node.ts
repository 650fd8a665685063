import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { begin, end } from './extension.ts';

/** The extension where it runs beside the files: the server is a process of its own. */
export async function activate(context: ExtensionContext): Promise<void> {
  const module = Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
  const run = { module, transport: TransportKind.ipc };
  await begin(context, {
    client: (options) => new LanguageClient('traywright', 'Traywright', { run, debug: run }, options),
  });
}

export async function deactivate(): Promise<void> {
  await end();
}
