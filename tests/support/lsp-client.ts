import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PassThrough } from 'node:stream';
import { setTimeout as pause } from 'node:timers/promises';
import type {
  ClientCapabilities,
  Diagnostic,
  InitializeResult,
  PublishDiagnosticsParams,
  ServerCapabilities,
} from 'vscode-languageserver/node';
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { IsoDate } from '../../server/src/base/brand.ts';
import type { Disk } from '../../server/src/lsp/disk.ts';
import { nodeDisk } from '../../server/src/lsp/node-disk.ts';
import { serve } from '../../server/src/lsp/server.ts';
import { uriOfPath } from '../../server/src/lsp/uris.ts';
import type { AnyRule } from '../../server/src/rules/rule.ts';
import { testDay } from './examples.ts';

export const pushing: ClientCapabilities = {
  workspace: { workspaceFolders: true },
  textDocument: {
    publishDiagnostics: { relatedInformation: true, dataSupport: true },
    hover: { contentFormat: ['markdown'] },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
  },
};

export const pulling: ClientCapabilities = {
  workspace: { workspaceFolders: true, diagnostics: { refreshSupport: true } },
  textDocument: { diagnostic: { relatedInformation: true, dataSupport: true } as object },
};

export interface ClientOptions {
  readonly folders: readonly string[];
  readonly rules: readonly AnyRule[];
  readonly capabilities?: ClientCapabilities;
  readonly today?: () => IsoDate;
  readonly initializationOptions?: unknown;
  readonly disk?: Disk;
}

/** An editor's end of a connection to a server in this process. */
export class TestClient {
  readonly pushed = new Map<string, PublishDiagnosticsParams>();
  readonly pushes: PublishDiagnosticsParams[] = [];
  readonly messages: string[] = [];
  refreshes = 0;
  /** What the server says that it can do. */
  told: ServerCapabilities | undefined;
  readonly #versions = new Map<string, number>();
  readonly connection;

  private constructor() {
    const up = new PassThrough();
    const down = new PassThrough();
    this.connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.pushed.set(params.uri, params);
      this.pushes.push(params);
    });
    this.connection.onNotification('window/logMessage', ({ message }: { message: string }) => {
      this.messages.push(message);
    });
    this.connection.onRequest('workspace/diagnostic/refresh', () => {
      this.refreshes++;
      return null;
    });
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
    this.serverEnd = { input: up, output: down };
  }
  readonly serverEnd: { input: PassThrough; output: PassThrough };

  static async start(options: ClientOptions): Promise<TestClient> {
    const client = new TestClient();
    const { input, output } = client.serverEnd;
    const connection = createConnection(new StreamMessageReader(input), new StreamMessageWriter(output));
    serve(connection, {
      disk: options.disk ?? nodeDisk,
      rules: options.rules,
      today: options.today ?? (() => testDay),
    });
    const greeted = await client.connection.sendRequest<InitializeResult>('initialize', {
      processId: null,
      rootUri: null,
      capabilities: options.capabilities ?? pushing,
      workspaceFolders: options.folders.map((folder) => ({ uri: uriOfPath(folder), name: path.basename(folder) })),
      initializationOptions: options.initializationOptions,
    });
    client.told = greeted.capabilities;
    await client.connection.sendNotification('initialized', {});
    return client;
  }

  open(uri: string, text: string): Promise<void> {
    this.#versions.set(uri, 1);
    return this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'traywright-rules', version: 1, text },
    });
  }

  replace(uri: string, text: string): Promise<void> {
    const version = (this.#versions.get(uri) ?? 0) + 1;
    this.#versions.set(uri, version);
    return this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text }],
    });
  }

  close(uri: string): Promise<void> {
    return this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }

  onDisk(changes: readonly { uri: string; type: 1 | 2 | 3 }[]): Promise<void> {
    return this.connection.sendNotification('workspace/didChangeWatchedFiles', { changes });
  }

  /** Messages of what is pushed for a file now; empty when nothing is. */
  saidOf(uri: string): readonly string[] {
    return (this.pushed.get(uri)?.diagnostics ?? []).map(firstLine);
  }

  /** Waits until the server has taken everything in: a question about the whole library is answered after that work. */
  async settled(): Promise<void> {
    await this.connection.sendRequest('workspace/symbol', { query: 'none' });
    await pause(5);
  }
}

export function firstLine({ message }: Diagnostic): string {
  return String(message).split('\n')[0] ?? '';
}

/** Waits until `holds`; fails with `what` after two seconds, or as many milliseconds as are given. */
export async function eventually(what: string, holds: () => boolean, within = 2_000): Promise<void> {
  for (const end = Date.now() + within; Date.now() < end; ) {
    if (holds()) return;
    await pause(2);
  }
  throw new Error(`waited in vain: ${what}`);
}

/** A folder of rule files on disk, gone again after `remove`. */
export class TestFolder {
  readonly path: string;

  constructor(files: Readonly<Record<string, string>>) {
    this.path = realpathSync(mkdtempSync(path.join(tmpdir(), 'traywright-')));
    for (const [name, text] of Object.entries(files)) this.write(name, text);
  }

  write(name: string, text: string): void {
    const file = path.join(this.path, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
  }

  delete(name: string): void {
    rmSync(path.join(this.path, name), { recursive: true });
  }

  uri(name: string): string {
    return uriOfPath(path.join(this.path, name));
  }

  remove(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}
