import path from 'node:path';
import { commands, type Disposable, type ExtensionContext, type LogOutputChannel, window, workspace } from 'vscode';
import {
  CloseAction,
  ErrorAction,
  LanguageClient,
  type LanguageClientOptions,
  State,
  TransportKind,
} from 'vscode-languageclient/node';
import { fieldsCommand } from './quote-to-fields.ts';
import { ruleScheme } from './rule-pages.ts';
import type { StatusItem } from './status-item.ts';
import { isStatus, statusNotification } from './status-item.ts';
import { usesCommand } from './uses.ts';

/** A server that ends more often than this within `crashSpan` is not started again by itself. */
const mostCrashes = 5;
const crashSpan = 180_000;

/** The language server as a process of its own: started, started again when it ends by itself, stopped. */
export class ServerConnection {
  readonly #log: LogOutputChannel;
  readonly #status: StatusItem;
  readonly #client: LanguageClient;
  readonly #crashes: number[] = [];

  constructor(context: ExtensionContext, log: LogOutputChannel, status: StatusItem) {
    this.#log = log;
    this.#status = status;
    const module = context.asAbsolutePath(path.join('dist', 'server.cjs'));
    const run = { module, transport: TransportKind.ipc };
    this.#client = new LanguageClient('traywright', 'Traywright', { run, debug: run }, this.#options());
    this.#client.onNotification(statusNotification, (params: unknown) => {
      if (isStatus(params)) status.show(params);
    });
    this.#client.onDidChangeState(({ newState }) => {
      if (newState !== State.Running) status.showWaiting();
    });
  }

  async start(): Promise<void> {
    try {
      await this.#client.start();
    } catch (reason) {
      this.#log.error(`The checker did not start: ${String(reason)}`);
      void window.showErrorMessage(
        'Traywright could not start its checker. See the output "Traywright" for the reason.',
      );
    }
  }

  async stop(): Promise<void> {
    if (this.#client.needsStop()) await this.#client.stop();
  }

  /** The explanation of a rule as a Markdown page; undefined when there is none, or no server. */
  async explanationOf(rule: string): Promise<string | undefined> {
    const page: unknown = await this.#client.sendRequest('traywright/explainRule', { rule });
    return typeof page === 'string' ? page : undefined;
  }

  /** A request of our own. Undefined when the server can't answer: what was asked for is then simply not offered. */
  async ask(method: string, params: unknown): Promise<unknown> {
    try {
      return await this.#client.sendRequest(method, params);
    } catch (reason) {
      this.#log.warn(`${method}: ${String(reason)}`);
      return undefined;
    }
  }

  commands(): readonly Disposable[] {
    return [
      commands.registerCommand('traywright.restartChecker', async () => {
        this.#crashes.length = 0;
        await this.#client.restart();
      }),
      commands.registerCommand('traywright.showLog', () => this.#log.show()),
    ];
  }

  #options(): LanguageClientOptions {
    return {
      documentSelector: schemesInUse().map((scheme) => ({ scheme, language: 'traywright-rules' })),
      outputChannel: this.#log,
      initializationOptions: {
        ruleLinkScheme: ruleScheme,
        status: true,
        askAgainCommand: 'editor.action.triggerSuggest',
        fieldsCommand,
        usesCommand,
      },
      markdown: { isTrusted: false, supportHtml: false },
      diagnosticPullOptions: { onChange: true, onSave: false, onFocus: true },
      errorHandler: { error: () => ({ action: ErrorAction.Continue }), closed: () => this.#ended() },
    };
  }

  /** Documents are kept by the editor and sent to the new server, so nothing is lost; the person is told once. */
  #ended(): { action: CloseAction; handled: true } {
    const now = Date.now();
    this.#crashes.push(now);
    const recent = this.#crashes.filter((at) => now - at < crashSpan);
    this.#status.showWaiting();
    if (recent.length > mostCrashes) {
      void this.#offerRestart();
      return { action: CloseAction.DoNotRestart, handled: true };
    }
    if (recent.length === 1) {
      void window.showInformationMessage(
        'Traywright: the checker stopped unexpectedly and was started again. Nothing was lost.',
      );
    }
    return { action: CloseAction.Restart, handled: true };
  }

  async #offerRestart(): Promise<void> {
    const again = 'Start again';
    const log = 'Show log';
    const chosen = await window.showErrorMessage(
      'Traywright: the checker keeps stopping. Your files are not affected.',
      again,
      log,
    );
    if (chosen === again) await commands.executeCommand('traywright.restartChecker');
    if (chosen === log) this.#log.show();
  }
}

/** Files, new documents, and whatever the open folders are made of. Not the old sides of comparisons: those would be findings twice. */
function schemesInUse(): readonly string[] {
  return [...new Set(['file', 'untitled', ...(workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme)])];
}
