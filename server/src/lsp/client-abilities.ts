import type { InitializeParams } from 'vscode-languageserver';
import { MarkupKind } from 'vscode-languageserver';

/** What the client at the other end can do, read once from its greeting. */
export interface ClientAbilities {
  /** `pull`: the client asks for findings. `push`: they are sent to it. Never both, or each would be shown twice. */
  readonly delivery: 'pull' | 'push';
  readonly refresh: boolean;
  readonly relatedInformation: boolean;
  readonly diagnosticData: boolean;
  /** Scheme under which the client opens a rule's explanation, without a network; undefined when it can't. */
  readonly ruleLinkScheme: string | undefined;
  readonly markdownHover: boolean;
  readonly definitionLinks: boolean;
  readonly outlineTree: boolean;
  readonly progress: boolean;
  readonly watchesFiles: boolean;
  readonly folderChanges: boolean;
  /** The client asks what must change with files that are about to be moved. */
  readonly fileMoves: boolean;
  /** The client shows how many files and findings there are. */
  readonly status: boolean;
  readonly refreshesLenses: boolean;
  readonly refreshesHints: boolean;
  readonly snippets: boolean;
  readonly markdownCompletion: boolean;
  /** A few words are shown beside each entry, not only beside the one in focus. */
  readonly completionWords: boolean;
  /** The client's own command that offers completions again, when it has one. */
  readonly asksAgain: string | undefined;
  /** Edits carry the version of the text they are meant for. */
  readonly versionedEdits: boolean;
  readonly resolvesActions: boolean;
  /** Actions that can't be done now are shown with the reason. */
  readonly disabledActions: boolean;
  /** The client turns quotes into fields with places to fill, by a command of its own. */
  readonly fieldsCommand: string | undefined;
  /** The client goes through all sentences of a file by a command of its own. */
  readonly sentencesCommand: string | undefined;
  /** The client adds to a list by questions, by a command of its own. */
  readonly addCommand: string | undefined;
  /** The client shows the places that name something by a command of its own. */
  readonly usesCommand: string | undefined;
}

export function abilitiesOf({ capabilities, initializationOptions }: InitializeParams): ClientAbilities {
  const { textDocument, workspace, window } = capabilities;
  const options = asRecord(initializationOptions);
  const pulls = textDocument?.diagnostic !== undefined;
  const diagnostics = pulls ? textDocument?.diagnostic : textDocument?.publishDiagnostics;
  const scheme = options.ruleLinkScheme;
  return {
    delivery: pulls ? 'pull' : 'push',
    refresh: workspace?.diagnostics?.refreshSupport === true,
    relatedInformation: diagnostics?.relatedInformation === true,
    diagnosticData: diagnostics?.dataSupport === true,
    ruleLinkScheme: typeof scheme === 'string' && /^[a-z][a-z0-9+.-]{0,40}$/.test(scheme) ? scheme : undefined,
    markdownHover: textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) === true,
    definitionLinks: textDocument?.definition?.linkSupport === true,
    outlineTree: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    progress: window?.workDoneProgress === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    folderChanges: workspace?.workspaceFolders === true,
    fileMoves: workspace?.fileOperations?.willRename === true,
    status: options.status === true,
    refreshesLenses: workspace?.codeLens?.refreshSupport === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    snippets: textDocument?.completion?.completionItem?.snippetSupport === true,
    markdownCompletion:
      textDocument?.completion?.completionItem?.documentationFormat?.includes(MarkupKind.Markdown) === true,
    completionWords: textDocument?.completion?.completionItem?.labelDetailsSupport === true,
    asksAgain: commandIn(options.askAgainCommand),
    versionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    resolvesActions: textDocument?.codeAction?.resolveSupport?.properties.includes('edit') === true,
    disabledActions: textDocument?.codeAction?.disabledSupport === true,
    fieldsCommand: commandIn(options.fieldsCommand),
    sentencesCommand: commandIn(options.sentencesCommand),
    addCommand: commandIn(options.addCommand),
    usesCommand: commandIn(options.usesCommand),
  };
}

function commandIn(value: unknown): string | undefined {
  return typeof value === 'string' && /^[A-Za-z][A-Za-z0-9.-]{0,80}$/.test(value) ? value : undefined;
}

function asRecord(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}
