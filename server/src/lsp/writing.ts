import type {
  Connection,
  DocumentOnTypeFormattingParams,
  ServerCapabilities,
  TextDocumentIdentifier,
  TextEdit,
} from 'vscode-languageserver';
import { catalogueOf } from '../check/catalogue.ts';
import type { NamedRule } from '../editor/completion/completion-ids.ts';
import { layoutEdits } from '../editor/writing/layout-edits.ts';
import { afterNewLine } from '../editor/writing/new-line.ts';
import { filledMarkAbove } from '../editor/writing/to-do.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { ClientAbilities } from './client-abilities.ts';
import { actionKinds, codeActions, resolveAction } from './code-actions.ts';
import { completionList, completionTriggers } from './completion.ts';
import type { Disk } from './disk.ts';
import type { DocumentPlaces } from './document-places.ts';
import { editForMoves } from './file-moves.ts';
import { Naming } from './naming.ts';
import { attachOwnRequests } from './own-requests.ts';
import { Reading, tokenModifiers, tokenTypes } from './reading.ts';
import type { Session } from './session.ts';
import { textEditsOf } from './workspace-edit.ts';

/** What the answers that help writing and reading need. */
export interface WritingParts {
  readonly places: DocumentPlaces;
  readonly abilities: ClientAbilities;
  readonly rules: readonly AnyRule[];
  /** The version of each open document that the editor sent last, by address. */
  readonly versions: ReadonlyMap<string, number>;
  readonly disk: Disk;
}

export function writingCapabilities({ resolvesActions }: ClientAbilities): ServerCapabilities {
  return {
    completionProvider: { triggerCharacters: [...completionTriggers] },
    codeActionProvider: { codeActionKinds: [...actionKinds], resolveProvider: resolvesActions },
    renameProvider: { prepareProvider: true },
    referencesProvider: true,
    callHierarchyProvider: true,
    workspaceSymbolProvider: true,
    foldingRangeProvider: true,
    selectionRangeProvider: true,
    inlayHintProvider: true,
    codeLensProvider: {},
    documentLinkProvider: {},
    documentFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
    semanticTokensProvider: {
      legend: { tokenTypes: [...tokenTypes], tokenModifiers: [...tokenModifiers] },
      full: true,
    },
  };
}

/** Answers that help writing: completion, fixes, renaming, layout. */
export function attachWriting(connection: Connection, session: Session, parts: WritingParts): void {
  const { places, abilities, rules } = parts;
  const named = namedRules(rules);
  const naming = new Naming(parts);
  connection.onCompletion(session.request((params) => completionList(params, places, named(), abilities)));
  connection.onCodeAction(session.request((params) => codeActions(params, parts)));
  connection.onCodeActionResolve(session.request((action) => resolveAction(action, parts)));
  connection.onReferences(session.request((params) => naming.references(params)));
  connection.onPrepareRename(session.request((params) => naming.prepareRename(params)));
  connection.onRenameRequest(session.request((params) => naming.rename(params)));
  connection.workspace.onWillRenameFiles(session.request((params) => editForMoves(params, parts)));
  connection.languages.callHierarchy.onPrepare(session.request((params) => naming.prepareCalls(params)));
  connection.languages.callHierarchy.onIncomingCalls(session.request(({ item }) => naming.incoming(item)));
  connection.languages.callHierarchy.onOutgoingCalls(session.request(({ item }) => naming.outgoing(item)));
  connection.onDocumentFormatting(session.request(({ textDocument }) => tidied(textDocument.uri, places)));
  connection.onDocumentOnTypeFormatting(session.request((params) => typed(params, places)));
  attachOwnRequests(connection, session, places, parts.versions);
}

/** Answers that help reading. */
export function attachReading(connection: Connection, session: Session, { places, abilities }: WritingParts): void {
  const reading = new Reading(places, abilities);
  const taken = (params: { readonly textDocument: TextDocumentIdentifier }) => places.taken(params);
  connection.onFoldingRanges(session.shownRequest(({ textDocument }) => reading.folds(textDocument.uri), taken));
  connection.onSelectionRanges(session.request((params) => reading.selections(params)));
  connection.languages.semanticTokens.on(
    session.shownRequest(({ textDocument }) => reading.tokens(textDocument.uri), taken),
  );
  connection.languages.inlayHint.on(session.besideRequest((params) => reading.hints(params)));
  connection.onCodeLens(session.besideRequest(({ textDocument }) => reading.lenses(textDocument.uri)));
  connection.onDocumentLinks(session.besideRequest(({ textDocument }) => reading.links(textDocument.uri)));
  connection.onWorkspaceSymbol(session.request(({ query }) => reading.librarySymbols(query)));
}

async function tidied(uri: string, places: DocumentPlaces): Promise<TextEdit[] | null> {
  const record = (await places.text(uri))?.record;
  return record === undefined ? null : textEditsOf(record, layoutEdits(record.text));
}

async function typed(params: DocumentOnTypeFormattingParams, places: DocumentPlaces): Promise<TextEdit[] | null> {
  const at = await places.placeInText(params);
  if (at === undefined) return null;
  const { text } = at.record;
  return textEditsOf(at.record, [...afterNewLine(text, at.offset), ...filledMarkAbove(text, at.offset)]);
}

/** Names of all findings with their reasons, made when first asked for. */
function namedRules(rules: readonly AnyRule[]): () => readonly NamedRule[] {
  let made: readonly NamedRule[] | undefined;
  return () => {
    made ??= catalogueOf(rules).map(({ id, why }) => ({ id, why }));
    return made;
  };
}
