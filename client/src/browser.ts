import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { fromServer, toServer } from './browser-uris.ts';
import { begin, end } from './extension.ts';
import { sendFolders } from './send-folders.ts';

/** A worker as the browser gives it; the types here are those of Node. */
interface BrowserWorker {
  postMessage(message: unknown): void;
}
declare const Worker: new (address: string) => BrowserWorker;

/** The extension in an editor that runs in a browser: the server is a worker without a disk, so the files of the folders are sent to it. */
export async function activate(context: ExtensionContext): Promise<void> {
  const worker = new Worker(Uri.joinPath(context.extensionUri, 'dist', 'server-worker.js').toString(true));
  await begin(context, {
    client: (options) =>
      new LanguageClient(
        'traywright',
        'Traywright',
        worker as unknown as ConstructorParameters<typeof LanguageClient>[2],
        { ...options, uriConverters: { code2Protocol: toServer, protocol2Code: fromServer } },
      ),
    beside: sendFolders,
  });
}

export async function deactivate(): Promise<void> {
  await end();
}
