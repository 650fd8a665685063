import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import type {
  Diagnostic,
  DocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
  WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver/node';
import { createProtocolConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { uriOfPath } from '../../server/src/lsp/uris.ts';
import { root } from './built.ts';
import { pulling } from './lsp-client.ts';

const probe = join(root, 'tests/bench/heap-probe.cjs');

/** A file came (1), changed (2) or went (3). */
export interface DiskEvent {
  readonly path: string;
  readonly type: 1 | 2 | 3;
}

/** Findings as text, so that two servers can be compared. */
export type Said = ReadonlyMap<string, readonly string[]>;

/** The server as a process of its own over one library on disk, asked as VS Code asks. */
export class ServedLibrary {
  readonly child: ChildProcess;
  readonly connection;
  readonly #folder: string;
  readonly #versions = new Map<string, number>();

  private constructor(program: string, folder: string) {
    this.#folder = folder;
    const options = ['--expose-gc', '--require', probe, program, '--stdio'];
    this.child = spawn(process.execPath, options, { stdio: ['pipe', 'pipe', 'pipe', 'pipe'] });
    const { stdin, stdout } = this.child;
    if (stdin === null || stdout === null) throw new Error('the server has no streams');
    // Ended by force it takes what was said to it along.
    stdin.on('error', () => undefined);
    this.connection = createProtocolConnection(new StreamMessageReader(stdout), new StreamMessageWriter(stdin));
    this.connection.onError(() => undefined);
    this.connection.onRequest('workspace/diagnostic/refresh', () => null);
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
  }

  static async start(program: string, folder: string): Promise<ServedLibrary> {
    const served = new ServedLibrary(program, folder);
    await served.connection.sendRequest('initialize', {
      processId: null,
      rootUri: null,
      capabilities: pulling,
      workspaceFolders: [{ uri: uriOfPath(folder), name: 'library' }],
    });
    await served.connection.sendNotification('initialized', {});
    return served;
  }

  uri(path: string): string {
    return uriOfPath(join(this.#folder, path));
  }

  open(path: string, text: string): Promise<void> {
    this.#versions.set(path, 1);
    const textDocument = { uri: this.uri(path), languageId: 'traywright-rules', version: 1, text };
    return this.connection.sendNotification('textDocument/didOpen', { textDocument });
  }

  /** `change` is the whole text, or a range with what takes its place. */
  edit(path: string, change: { readonly text: string; readonly range?: object }): Promise<void> {
    const version = (this.#versions.get(path) ?? 0) + 1;
    this.#versions.set(path, version);
    const textDocument = { uri: this.uri(path), version };
    return this.connection.sendNotification('textDocument/didChange', { textDocument, contentChanges: [change] });
  }

  close(path: string): Promise<void> {
    return this.connection.sendNotification('textDocument/didClose', { textDocument: { uri: this.uri(path) } });
  }

  onDisk(changes: readonly DiskEvent[]): Promise<void> {
    return this.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: changes.map(({ path, type }) => ({ uri: this.uri(path), type })),
    });
  }

  /** The findings of one document; undefined when a newer text was on its way. */
  async pull(path: string): Promise<readonly Diagnostic[] | undefined> {
    try {
      const params = { textDocument: { uri: this.uri(path) } };
      const report: DocumentDiagnosticReport = await this.connection.sendRequest('textDocument/diagnostic', params);
      return report.kind === 'full' ? report.items : [];
    } catch {
      return undefined;
    }
  }

  /** What is said about every file that something is said about, once everything is taken in. */
  async everything(): Promise<Said> {
    await this.connection.sendRequest('traywright/libraryTree', {});
    const told = new Map<string, readonly string[]>();
    const report: WorkspaceDiagnosticReport = await this.connection.sendRequest('workspace/diagnostic', {
      previousResultIds: [],
    });
    for (const item of report.items) told.set(item.uri, saidIn(item));
    return new Map([...told].sort(([a], [b]) => (a < b ? -1 : 1)));
  }

  /** Bytes of live objects. */
  async heap(): Promise<number> {
    const stream = this.child.stdio[3];
    if (stream === null || stream === undefined) throw new Error('the server has no fourth stream');
    const told = once(stream, 'data');
    this.child.kill('SIGUSR2');
    return Number(String((await told)[0]));
  }

  async kill(): Promise<void> {
    if (this.child.signalCode !== null || this.child.exitCode !== null) return;
    const gone = once(this.child, 'exit');
    this.child.kill('SIGKILL');
    await gone;
    this.connection.dispose();
  }
}

function saidIn(item: WorkspaceDocumentDiagnosticReport): readonly string[] {
  return item.kind === 'full'
    ? item.items.map(({ range, code, message }) => `${range.start.line}:${range.start.character} ${code} ${message}`)
    : [];
}
