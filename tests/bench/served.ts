import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import type {
  CompletionItem,
  CompletionList,
  Diagnostic,
  DocumentDiagnosticReport,
  InitializeParams,
  PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import {
  CancellationTokenSource,
  createProtocolConnection,
  LSPErrorCodes,
  ResponseError,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { uriOfPath } from '../../server/src/lsp/uris.ts';
import type { Key } from './typist.ts';

/** What VS Code says of itself, as far as it matters for how much the server does. */
const capabilities: InitializeParams['capabilities'] = {
  workspace: {
    workspaceFolders: true,
    diagnostics: { refreshSupport: true },
    codeLens: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
    workspaceEdit: { documentChanges: true },
  },
  textDocument: {
    diagnostic: { relatedDocumentSupport: true },
    completion: {
      completionItem: { snippetSupport: true, documentationFormat: ['markdown'], labelDetailsSupport: true },
    },
  },
  window: { workDoneProgress: true },
};

/** What a client says that never asks for findings, such as Neovim in its older forms: they are sent to it. */
function withoutAsking({ workspace, textDocument, ...rest }: typeof capabilities): typeof capabilities {
  const { diagnostics: _refreshes, ...ofWorkspace } = workspace ?? {};
  const { diagnostic: _pulls, ...ofText } = textDocument ?? {};
  return { ...rest, workspace: ofWorkspace, textDocument: { ...ofText, publishDiagnostics: { versionSupport: true } } };
}

/** Whether the client asks for findings, where the server can be asked, or waits until they are sent. */
export type Manner = 'asks' | 'waits';

/** Registrations, progress, wishes to be asked again: all taken. */
const wishes = [
  'client/registerCapability',
  'window/workDoneProgress/create',
  'workspace/diagnostic/refresh',
  'workspace/codeLens/refresh',
  'workspace/inlayHint/refresh',
];

/** What VS Code shows beside a text besides findings. */
const questions = [
  'textDocument/semanticTokens/full',
  'textDocument/codeLens',
  'textDocument/inlayHint',
  'textDocument/documentSymbol',
  'textDocument/foldingRange',
  'textDocument/documentLink',
];

/** A server as a process of its own with one document open, spoken to as VS Code speaks: what it can be asked for is asked for. */
export class Served {
  readonly #child: ChildProcess;
  readonly #connection;
  readonly #uri: string;
  #text = '';
  #version = 0;
  #pulls = false;
  /** Findings that are as they were are not sent again: the answer to a question behind them says that there are no others. */
  #asksBehind = false;
  /** Called with each set of findings that the server sends unasked. */
  #published: (params: PublishDiagnosticsParams) => void = () => undefined;
  /** Called when the server says how much it has checked. */
  #counted: () => void = () => undefined;
  #wishedToBeAsked: () => void = () => undefined;
  /** Of the questions about the last text: those that are still open are taken back with the next key. */
  #besides: CancellationTokenSource | undefined;

  private constructor(program: string, document: string, probe: string | undefined) {
    const options = [...(probe === undefined ? [] : ['--require', probe]), program, '--stdio'];
    this.#child = spawn(process.execPath, options, { stdio: ['pipe', 'pipe', 'inherit', 'pipe'] });
    const { stdin, stdout } = this.#child;
    if (stdin === null || stdout === null) throw new Error('the server has no streams');
    this.#connection = createProtocolConnection(new StreamMessageReader(stdout), new StreamMessageWriter(stdin));
    this.#uri = uriOfPath(document);
    this.#connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) =>
      this.#published(params),
    );
    this.#connection.onNotification('traywright/status', () => this.#counted());
    for (const method of wishes) this.#connection.onRequest(method, () => this.#granted(method));
    this.#connection.listen();
  }

  /** Starts the program and greets it. `folder` is the library that is open, `document` the absolute path of the file that will be. */
  static async start(
    program: string,
    folder: string,
    document: string,
    probe?: string,
    manner: Manner = 'asks',
  ): Promise<Served> {
    const served = new Served(program, document, probe);
    served.#asksBehind = manner === 'waits';
    const greeting = await served.#connection.sendRequest<{ capabilities: { diagnosticProvider?: unknown } }>(
      'initialize',
      {
        processId: null,
        rootUri: null,
        capabilities: manner === 'asks' ? capabilities : withoutAsking(capabilities),
        workspaceFolders: [{ uri: uriOfPath(folder), name: 'library' }],
        initializationOptions: { status: true, ruleLinkScheme: 'traywright-rule' },
      },
    );
    served.#pulls = greeting.capabilities.diagnosticProvider !== undefined;
    await served.#connection.sendNotification('initialized', {});
    return served;
  }

  /** Opens the document. Resolves with its findings. */
  open(text: string): Promise<readonly Diagnostic[]> {
    this.#text = text;
    this.#version = 1;
    const textDocument = { uri: this.#uri, languageId: 'traywright-rules', version: 1, text };
    return this.#findingsAfter(() => this.#connection.sendNotification('textDocument/didOpen', { textDocument }));
  }

  /** Asks about all files, as VS Code does from the beginning. Resolves when the server has counted them for the first time. */
  watchAll(): Promise<void> {
    const counted = new Promise<void>((resolve) => {
      this.#counted = resolve;
    });
    const params = { previousResultIds: [], partialResultToken: 'all' };
    if (this.#pulls) this.#connection.sendRequest('workspace/diagnostic', params).catch(() => undefined);
    return counted;
  }

  /** Asks again whenever the server wishes it. Resolves when rules have found something. */
  async findingsOfRules(): Promise<readonly Diagnostic[]> {
    for (;;) {
      const findings = await this.#pull();
      if (findings.length > 0) return findings;
      await new Promise<void>((resolve) => {
        this.#wishedToBeAsked = resolve;
      });
    }
  }

  /** Sends one change. Resolves when the findings of just this version are there. */
  type(key: Key): Promise<readonly Diagnostic[]> {
    return this.#findingsAfter(() => this.#change(key));
  }

  /** Sends one change and asks what may be written at its end; the findings are asked for as well. */
  async typeAndAsk(key: Key): Promise<readonly CompletionItem[]> {
    await this.#change(key);
    if (this.#pulls) void this.#pull().catch(() => undefined);
    const position = this.#position(key.from + key.typed.length);
    const answer = await this.#connection.sendRequest<CompletionItem[] | CompletionList | null>(
      'textDocument/completion',
      { textDocument: { uri: this.#uri }, position },
    );
    return Array.isArray(answer) ? answer : (answer?.items ?? []);
  }

  /** Sends one change and asks for all that stands around the text as well, before the findings. Resolves when these are there. */
  typeAmongQuestions(key: Key): Promise<readonly Diagnostic[]> {
    this.#besides?.cancel();
    const besides = new CancellationTokenSource();
    this.#besides = besides;
    return this.#findingsAfter(async () => {
      await this.#change(key);
      const textDocument = { uri: this.#uri };
      const range = { start: { line: 0, character: 0 }, end: { line: this.#text.split('\n').length, character: 0 } };
      for (const question of this.#pulls ? questions : [])
        this.#connection.sendRequest(question, { textDocument, range }, besides.token).catch(() => undefined);
    });
  }

  /** Ends the program as an editor does. Resolves with what it used, where a probe was loaded. */
  async end(): Promise<string> {
    const pieces: Buffer[] = [];
    this.#child.stdio[3]?.on('data', (chunk: Buffer) => pieces.push(chunk));
    const closed = once(this.#child, 'close');
    await this.#connection.sendRequest('shutdown');
    await this.#connection.sendNotification('exit');
    await closed;
    this.#connection.dispose();
    return Buffer.concat(pieces).toString();
  }

  #granted(method: string): null {
    if (method === 'workspace/diagnostic/refresh') this.#wishedToBeAsked();
    return null;
  }

  async #findingsAfter(change: () => Promise<void>): Promise<readonly Diagnostic[]> {
    if (this.#pulls) {
      await change();
      return this.#pull();
    }
    const findings = new Promise<readonly Diagnostic[]>((resolve) => {
      this.#published = ({ version, diagnostics }) => {
        if (version === this.#version) resolve(diagnostics);
      };
    });
    await change();
    return this.#asksBehind ? Promise.race([findings, this.#nothingNew()]) : findings;
  }

  /** The server sends what it found in a text before it answers what needs all of that text. */
  async #nothingNew(): Promise<readonly Diagnostic[]> {
    const params = { textDocument: { uri: this.#uri }, position: { line: 0, character: 0 } };
    await this.#connection.sendRequest('textDocument/hover', params);
    return [];
  }

  async #pull(): Promise<readonly Diagnostic[]> {
    try {
      const params = { textDocument: { uri: this.#uri }, identifier: 'traywright' };
      const report = await this.#connection.sendRequest<DocumentDiagnosticReport>('textDocument/diagnostic', params);
      return report.kind === 'full' ? report.items : [];
    } catch (reason) {
      if (reason instanceof ResponseError && reason.code === LSPErrorCodes.ServerCancelled) return this.#pull();
      throw reason;
    }
  }

  async #change({ from, removed, typed }: Key): Promise<void> {
    const range = { start: this.#position(from), end: this.#position(from + removed) };
    this.#text = this.#text.slice(0, from) + typed + this.#text.slice(from + removed);
    this.#version++;
    const textDocument = { uri: this.#uri, version: this.#version };
    const contentChanges = [{ range, text: typed }];
    await this.#connection.sendNotification('textDocument/didChange', { textDocument, contentChanges });
  }

  #position(offset: number): { line: number; character: number } {
    const before = this.#text.slice(0, offset);
    return { line: before.split('\n').length - 1, character: offset - (before.lastIndexOf('\n') + 1) };
  }
}
