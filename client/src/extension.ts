/**
 * client/: the VS Code extension: starts the language server and shows what it says. No domain knowledge: nothing here knows a kind, a
 * rule or a unit. No network, no telemetry, nothing run from a workspace, no notification unless something is broken.
 */
import { type ExtensionContext, window } from 'vscode';
import { registerRulePages } from './rule-pages.ts';
import { ServerConnection } from './server-connection.ts';
import { StatusItem } from './status-item.ts';

let server: ServerConnection | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const log = window.createOutputChannel('Traywright', { log: true });
  const status = new StatusItem();
  const started = new ServerConnection(context, log, status);
  server = started;
  context.subscriptions.push(log, status, ...registerRulePages(started), ...started.commands());
  await started.start();
}

export async function deactivate(): Promise<void> {
  await server?.stop();
}
