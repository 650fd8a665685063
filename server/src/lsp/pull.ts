import type {
  CancellationToken,
  Connection,
  DiagnosticServerCancellationData,
  DocumentDiagnosticParams,
  DocumentDiagnosticReport,
  ResultProgressReporter,
  WorkspaceDiagnosticParams,
  WorkspaceDiagnosticReport,
  WorkspaceDiagnosticReportPartialResult,
  WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { DocumentDiagnosticReportKind, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Lull } from './lull.ts';
import type { Reports } from './reports.ts';
import { takenBack } from './session.ts';
import { nextTurn, Slices } from './turns.ts';
import { addressOf } from './uris.ts';
import type { Workbench } from './workbench.ts';

type Reporter = ResultProgressReporter<WorkspaceDiagnosticReportPartialResult> | undefined;

/** What there is to tell about a file that was not told before. */
type News = (address: string, slices: Slices) => Promise<WorkspaceDocumentDiagnosticReport | undefined>;

const filesInOnePart = 200;

/**
 * Answers a client that asks for findings. One file: as soon as its newest text is taken in, or "cancelled" when a newer one is on its way.
 * The workspace: what differs from what the client has; then the question is kept open and every change follows in a further part.
 */
export class Pull {
  readonly #connection: Connection;
  readonly #workbench: Workbench;
  readonly #reports: Reports;
  readonly #refreshes: boolean;
  /** What the client was told last about each open document, and of which version. */
  readonly #answered = new Map<string, { readonly resultId: string; readonly version: number | undefined }>();
  readonly #watchers = new Set<WorkspaceWatch>();
  readonly #lookAt = new Set<string>();
  #looking = false;
  /** Version of each open document. */
  readonly versions = new Map<string, number>();

  constructor(connection: Connection, workbench: Workbench, reports: Reports, client: { readonly refresh: boolean }) {
    this.#connection = connection;
    this.#workbench = workbench;
    this.#reports = reports;
    this.#refreshes = client.refresh;
  }

  async document(
    params: DocumentDiagnosticParams,
    token: CancellationToken,
  ): Promise<DocumentDiagnosticReport | ResponseError<DiagnosticServerCancellationData>> {
    const address = addressOf(params.textDocument.uri);
    const asked = this.versions.get(address);
    await Promise.race([this.#readyFor(address), cancellation(token)]);
    // What was asked in the same breath and needs no judgement, such as what may be written here, is answered before.
    await nextTurn();
    if (token.isCancellationRequested) return takenBack();
    const isNewest = (): boolean => this.versions.get(address) === asked;
    await this.#reports.prepare(address, new Slices(), isNewest);
    if (!isNewest()) return overtaken();
    const { resultId, items } = this.#reports.of(address);
    this.#answered.set(address, { resultId, version: asked });
    if (params.previousResultId === resultId) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId };
    return { kind: DocumentDiagnosticReportKind.Full, resultId, items: [...items] };
  }

  /** While a library is read, only a client that will be told to ask again may be answered with what the text shows by itself. */
  #readyFor(address: string): Promise<void> {
    const asksAgain = this.#refreshes && this.#workbench.isOpen(address);
    return asksAgain ? this.#workbench.textTaken(address) : this.#workbench.settled();
  }

  /** Ends when the client takes the question back, or, for a client that takes no parts, with the first news. */
  async workspace(
    params: WorkspaceDiagnosticParams,
    token: CancellationToken,
    reporter: Reporter,
  ): Promise<WorkspaceDiagnosticReport> {
    const watch = new WorkspaceWatch(params, token, reporter, this.#workbench.lull);
    this.#watchers.add(watch);
    token.onCancellationRequested(() => watch.end());
    try {
      await Promise.race([this.#workbench.settled(), cancellation(token)]);
      watch.waitFor([...watch.known.keys(), ...this.#workbench.addresses()]);
      return await watch.run((address, slices) => this.#news(address, watch, slices));
    } finally {
      this.#watchers.delete(watch);
    }
  }

  touched(addresses: ReadonlySet<string>): void {
    for (const watch of this.#watchers) watch.waitFor(addresses);
    if (this.#refreshes) void this.#lookAtOpen(addresses);
  }

  /** A closed document counts as a file like the others again: its last answer is repeated among those of the workspace. */
  closed(address: string): void {
    this.#answered.delete(address);
    this.versions.delete(address);
    for (const watch of this.#watchers) watch.known.set(address, 'closed');
  }

  /** At shutdown: no question stays open. */
  end(): void {
    for (const watch of this.#watchers) watch.end();
  }

  /** Asks the client to ask again when open documents have other findings than it was told, once for many changes. */
  async #lookAtOpen(addresses: ReadonlySet<string>): Promise<void> {
    for (const address of addresses) if (this.#workbench.isOpen(address)) this.#lookAt.add(address);
    if (this.#lookAt.size === 0 || this.#looking) return;
    this.#looking = true;
    await this.#workbench.lull.come();
    this.#looking = false;
    const concerned = [...this.#lookAt].some((address) => this.#isConcerned(address));
    this.#lookAt.clear();
    if (concerned) this.#connection.languages.diagnostics.refresh().catch(() => undefined);
  }

  /** By another file's change. Of a document that was edited itself, the client asks without being told. */
  #isConcerned(address: string): boolean {
    const told = this.#answered.get(address);
    if (told === undefined || told.version !== this.versions.get(address) || !this.#workbench.isOpen(address))
      return false;
    return this.#reports.of(address).resultId !== told.resultId;
  }

  async #news(
    address: string,
    watch: WorkspaceWatch,
    slices: Slices,
  ): Promise<WorkspaceDocumentDiagnosticReport | undefined> {
    await this.#reports.prepare(address, slices);
    const { resultId, items } = this.#reports.of(address);
    const known = watch.known.get(address);
    if (known === resultId || (known === undefined && items.length === 0)) return undefined;
    watch.known.set(address, resultId);
    const version = this.versions.get(address) ?? null;
    return {
      kind: DocumentDiagnosticReportKind.Full,
      uri: this.#reports.uriOf(address),
      version,
      resultId,
      items: [...items],
    };
  }
}

/** One open question about the whole workspace. */
class WorkspaceWatch {
  /** Address to what the client was told about it. */
  readonly known: Map<string, string>;
  readonly #reporter: Reporter;
  readonly #token: CancellationToken;
  readonly #lull: Lull;
  readonly #waiting = new Set<string>();
  #wake: () => void = () => undefined;
  #ended = false;

  constructor(params: WorkspaceDiagnosticParams, token: CancellationToken, reporter: Reporter, lull: Lull) {
    this.#lull = lull;
    this.known = new Map(params.previousResultIds.map(({ uri, value }) => [addressOf(uri), value]));
    this.#token = token;
    this.#reporter = reporter;
  }

  waitFor(addresses: Iterable<string>): void {
    for (const address of addresses) this.#waiting.add(address);
    this.#wake();
  }

  end(): void {
    this.#ended = true;
    this.#wake();
  }

  async run(news: News): Promise<WorkspaceDiagnosticReport> {
    while (!this.#ended && !this.#token.isCancellationRequested) {
      const items = await this.#nextPart(news);
      if (items.length > 0 && this.#reporter === undefined) return { items };
      if (items.length > 0) this.#reporter?.report({ items });
      if (this.#waiting.size === 0) await this.#sleep();
    }
    return { items: [] };
  }

  async #nextPart(news: News): Promise<WorkspaceDocumentDiagnosticReport[]> {
    const items: WorkspaceDocumentDiagnosticReport[] = [];
    const slices = new Slices(() => this.#lull.come());
    await this.#lull.come();
    for (const address of this.#waiting) {
      if (this.#reporter !== undefined && items.length >= filesInOnePart) break;
      this.#waiting.delete(address);
      const item = await news(address, slices);
      if (item !== undefined) items.push(item);
      await slices.pause();
    }
    return items;
  }

  #sleep(): Promise<void> {
    if (this.#ended) return Promise.resolve();
    return new Promise((resolve) => {
      this.#wake = resolve;
    });
  }
}

function cancellation(token: CancellationToken): Promise<void> {
  return new Promise((resolve) => token.onCancellationRequested(() => resolve()));
}

function overtaken(): ResponseError<DiagnosticServerCancellationData> {
  return new ResponseError(LSPErrorCodes.ServerCancelled, 'a newer text is on its way', { retriggerRequest: true });
}
