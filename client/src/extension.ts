/**
 * client/: the VS Code extension: starts the language server and shows what it says. No domain knowledge: nothing here knows a kind, a
 * rule or a unit. No network, no telemetry, nothing run from a workspace, no notification unless something is broken.
 */
import { type Disposable, type ExtensionContext, window } from 'vscode';
import { registerNewFile } from './new-file.ts';
import { registerPaste } from './paste.ts';
import { registerQuoteToFields } from './quote-to-fields.ts';
import { registerRulePages } from './rule-pages.ts';
import { ServerConnection } from './server-connection.ts';
import { StatusItem } from './status-item.ts';
import { registerUses } from './uses.ts';

let server: ServerConnection | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const log = window.createOutputChannel('Traywright', { log: true });
  const status = new StatusItem();
  const started = new ServerConnection(context, log, status);
  server = started;
  context.subscriptions.push(
    log,
    status,
    ...registerRulePages(started),
    ...started.commands(),
    ...registerWriting(started),
  );
  await started.start();
}

function registerWriting(started: ServerConnection): readonly Disposable[] {
  return [registerQuoteToFields(started), registerNewFile(started), registerUses(), ...registerPaste(started)];
}

export async function deactivate(): Promise<void> {
  await server?.stop();
}
