import { commands, type Disposable, type LogOutputChannel, Uri, window, workspace } from 'vscode';
import {
  type BaseLanguageClient,
  CloseAction,
  ErrorAction,
  type LanguageClientOptions,
  State,
} from 'vscode-languageclient';
import { asKeptLink } from './kept-files.ts';
import { addCommand, fieldsCommand, ruleScheme, sentencesCommand, usesCommand } from './names.ts';
import type { StatusItem } from './status-item.ts';
import { isStatus, statusNotification } from './status-item.ts';

/** A server that ends more often than this within `crashSpan` is not started again by itself. */
const mostCrashes = 5;
const crashSpan = 180_000;

/** How the server is reached: as a process of its own, or as a worker in a browser. */
export interface Launch {
  client(options: LanguageClientOptions): BaseLanguageClient;
  /** What else the client has to do while the server runs. */
  beside?(server: ServerConnection): readonly Disposable[];
}

/** The language server: started, started again when it ends by itself, stopped. */
export class ServerConnection {
  readonly #log: LogOutputChannel;
  readonly #status: StatusItem;
  readonly #client: BaseLanguageClient;
  readonly #crashes: number[] = [];
  readonly #listeners = new Map<string, Set<(params: unknown) => void>>();

  constructor(launch: Launch, log: LogOutputChannel, status: StatusItem) {
    this.#log = log;
    this.#status = status;
    this.#client = launch.client(this.#options());
    this.on(statusNotification, (params) => {
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

  /** Told what the server says without being asked, beside whoever else listens: the client itself keeps one listener a method. */
  on(method: string, take: (params: unknown) => void): Disposable {
    const known = this.#listeners.get(method);
    const listeners = known ?? new Set<(params: unknown) => void>();
    listeners.add(take);
    if (known === undefined) {
      this.#listeners.set(method, listeners);
      this.#client.onNotification(method, (params: unknown) => {
        for (const listener of listeners) listener(params);
      });
    }
    return { dispose: () => void listeners.delete(take) };
  }

  /** Says something to the server that it does not answer. */
  async tell(method: string, params: unknown): Promise<void> {
    if (this.#client.isRunning()) await this.#client.sendNotification(method, params);
  }

  /** Called each time when the server has begun to run. */
  onRunning(then: () => void): Disposable {
    return this.#client.onDidChangeState(({ newState }) => {
      if (newState === State.Running) then();
    });
  }

  /** A file as the server knows it, and back. In a browser the two differ. */
  uriText(uri: Uri): string {
    return this.#client.code2ProtocolConverter.asUri(uri);
  }

  uriOf(text: string): Uri {
    return this.#client.protocol2CodeConverter.asUri(text) ?? Uri.parse(text);
  }

  commands(): readonly Disposable[] {
    return [
      commands.registerCommand('traywright.restartChecker', async () => {
        this.#crashes.length = 0;
        await this.stop();
        await this.start();
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
        sentencesCommand,
        usesCommand,
        addCommand,
      },
      markdown: { isTrusted: false, supportHtml: false },
      diagnosticPullOptions: { onChange: true, onSave: false, onFocus: true },
      middleware: {
        provideDocumentLinks: async (document, token, next) => (await next(document, token))?.map(asKeptLink),
      },
      errorHandler: { error: () => ({ action: ErrorAction.Continue, handled: true }), closed: () => this.#ended() },
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
