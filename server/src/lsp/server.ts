/**
 * lsp/: the protocol: what an editor asks and is told, when things are checked, offsets to lines and characters. The only importer of
 * `vscode-*` in the server. It must not know rules, YAML or the trade: it asks the layers below and passes their words on unchanged.
 */
import type {
  Connection,
  InitializeError,
  InitializeParams,
  InitializeResult,
  ResponseError,
  ServerCapabilities,
} from 'vscode-languageserver';
import { TextDocumentSyncKind, TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { catalogueOf } from '../check/catalogue.ts';
import { explanationPage } from '../report/explanation-page.ts';
import { Beside } from './beside.ts';
import type { ClientAbilities } from './client-abilities.ts';
import { abilitiesOf } from './client-abilities.ts';
import { DocumentPlaces } from './document-places.ts';
import { watchedMoves } from './file-moves.ts';
import type { Outside } from './libraries.ts';
import { Lookups } from './lookups.ts';
import { Pull } from './pull.ts';
import { Push } from './push.ts';
import { ReadingProgress } from './reading-progress.ts';
import { Reports } from './reports.ts';
import { Session } from './session.ts';
import { StatusReporter } from './status.ts';
import { addressOf } from './uris.ts';
import { attachViews } from './views.ts';
import { changesOf, watchRuleFiles } from './watching.ts';
import { Workbench } from './workbench.ts';
import { attachReading, attachWriting, writingCapabilities } from './writing.ts';

/** Request of our own: the explanation of a rule (`{rule}`) as a Markdown page, or null when there is no such rule. */
export const explainRequest = 'traywright/explainRule';

/**
 * Serves one client over `connection`, whatever carries it. Returns at once what is open, for whoever feeds the disk; the work is done as
 * messages come in.
 */
export function serve(connection: Connection, outside: Outside): Workbench {
  const workbench = new Workbench(outside);
  const session = new Session(workbench.lull);
  workbench.onFailure = (reason) =>
    connection.console.error(
      `Traywright: ${reason instanceof Error ? (reason.stack ?? reason.message) : String(reason)}`,
    );
  connection.onInitialize((params): InitializeResult | ResponseError<InitializeError> => {
    const refused = session.start();
    if (refused !== undefined) return refused;
    const abilities = abilitiesOf(params);
    for (const uri of foldersOf(params)) workbench.folders.add(uri);
    attach(connection, session, workbench, abilities, outside);
    return { capabilities: capabilitiesFor(abilities), serverInfo: { name: 'Traywright' } };
  });
  connection.onRequest((method) => session.unknown(method));
  connection.onShutdown(session.request(() => session.end()));
  connection.listen();
  return workbench;
}

function foldersOf({ workspaceFolders, rootUri }: InitializeParams): readonly string[] {
  if (Array.isArray(workspaceFolders)) return workspaceFolders.map(({ uri }) => uri);
  return typeof rootUri === 'string' ? [rootUri] : [];
}

function capabilitiesFor(abilities: ClientAbilities): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    definitionProvider: true,
    documentSymbolProvider: true,
    ...writingCapabilities(abilities),
    workspace: {
      workspaceFolders: { supported: true, changeNotifications: true },
      ...(abilities.fileMoves && { fileOperations: { willRename: watchedMoves } }),
    },
    ...(abilities.delivery === 'pull' && {
      diagnosticProvider: { identifier: 'traywright', interFileDependencies: true, workspaceDiagnostics: true },
    }),
  };
}

function attach(
  connection: Connection,
  session: Session,
  workbench: Workbench,
  abilities: ClientAbilities,
  outside: Outside,
): void {
  const reports = new Reports(workbench, abilities);
  const delivery =
    abilities.delivery === 'pull'
      ? new Pull(connection, workbench, reports, abilities)
      : new Push(connection, workbench, reports);
  const status = abilities.status ? new StatusReporter(connection, workbench, reports) : undefined;
  const beside = new Beside(connection, abilities);
  const places = new DocumentPlaces(workbench, reports);
  const views = attachViews(connection, session, reports, places, outside.disk);
  workbench.onTouched = (addresses) => {
    delivery.touched(addresses);
    beside.touched(addresses);
    status?.touched(addresses);
    views.touched();
  };
  if (delivery instanceof Pull) {
    connection.languages.diagnostics.on(session.request((params, token) => delivery.document(params, token)));
    connection.languages.diagnostics.onWorkspace(
      session.standingRequest((params, token, _progress, reporter) => delivery.workspace(params, token, reporter)),
    );
  }
  connection.onInitialized(
    session.notification(() => {
      if (abilities.watchesFiles) watchRuleFiles(connection);
      if (abilities.progress) workbench.libraries.progress = new ReadingProgress(connection).step;
      if (abilities.folderChanges) followFolders(connection, session, workbench);
      workbench.rescan();
    }),
  );
  connection.onDidChangeWatchedFiles(session.notification(({ changes }) => workbench.diskChanged(changesOf(changes))));
  attachDocuments(connection, session, workbench, reports, delivery);
  attachLookups(connection, session, places, abilities, outside);
  const parts = { places, abilities, rules: outside.rules, versions: delivery.versions, disk: outside.disk };
  attachWriting(connection, session, parts);
  attachReading(connection, session, parts);
}

function followFolders(connection: Connection, session: Session, workbench: Workbench): void {
  connection.workspace.onDidChangeWorkspaceFolders(
    session.notification(({ added, removed }) => {
      for (const { uri } of removed) workbench.folders.remove(uri);
      for (const { uri } of added) workbench.folders.add(uri);
      workbench.rescan();
    }),
  );
}

function attachDocuments(
  connection: Connection,
  session: Session,
  workbench: Workbench,
  reports: Reports,
  delivery: Pull | Push,
): void {
  const documents = new TextDocuments(TextDocument);
  documents.onDidChangeContent(
    session.notification(({ document }) => {
      const address = addressOf(document.uri);
      reports.spellings.set(address, document.uri);
      delivery.versions.set(address, document.version);
      workbench.edit(document.uri, document.getText());
    }),
  );
  documents.onDidClose(
    session.notification(({ document }) => {
      delivery.closed(addressOf(document.uri));
      workbench.close(document.uri);
    }),
  );
  documents.listen(connection);
}

function attachLookups(
  connection: Connection,
  session: Session,
  places: DocumentPlaces,
  abilities: ClientAbilities,
  { rules }: Outside,
): void {
  const lookups = new Lookups(places, abilities);
  connection.onHover(session.request((params) => lookups.hover(params)));
  connection.onDefinition(session.request((params) => lookups.definition(params)));
  connection.onDocumentSymbol(
    session.shownRequest(
      ({ textDocument }) => lookups.symbols(textDocument.uri),
      (params) => places.taken(params),
    ),
  );
  connection.onRequest(
    explainRequest,
    session.request((params: unknown) => {
      const wanted = typeof params === 'object' && params !== null && 'rule' in params ? params.rule : undefined;
      const entry = catalogueOf(rules).find(({ id }) => id === wanted);
      return entry === undefined ? null : explanationPage(entry);
    }),
  );
}
