/**
 * Floor: the smallest language server that parses and validates the open document on each change, at once and with nothing else to look
 * at, and offers the fields that the schema knows. Usage: floor-server --stdio
 */
import type { CompletionItem, Diagnostic } from 'vscode-languageserver/node';
import { createConnection, TextDocumentSyncKind, TextDocuments } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Document } from 'yaml';
import { isMap, isNode, parseDocument } from 'yaml';
import type { Kind } from '../../server/src/schema/kinds.ts';
import { isKind } from '../../server/src/schema/kinds.ts';
import { schemas } from '../../server/src/schema/schemas.generated.ts';
import { validators } from '../../server/src/schema/validators.generated.js';

const connection = createConnection();
const documents = new TextDocuments(TextDocument);

connection.onInitialize(() => ({
  capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental, completionProvider: {} },
}));
documents.onDidChangeContent(({ document }) => {
  const { uri, version } = document;
  void connection.sendDiagnostics({ uri, version, diagnostics: faultsOf(document) });
});
connection.onCompletion(({ textDocument, position }) => {
  const document = documents.get(textDocument.uri);
  return document === undefined ? [] : offersAt(document, document.offsetAt(position));
});
documents.listen(connection);
connection.listen();

function faultsOf(document: TextDocument): Diagnostic[] {
  const parsed = parseDocument(document.getText());
  const faults = parsed.errors.map(({ message, pos: [start, end] }) => faultAt(document, message, start, end));
  const kind = kindOf(parsed);
  const validate = kind === undefined ? undefined : validators[kind];
  if (validate === undefined || validate(parsed.toJS())) return faults;
  for (const { instancePath, message } of validate.errors ?? []) {
    const node = parsed.getIn(instancePath.split('/').slice(1), true);
    const [start, end] = (isNode(node) ? node.range : undefined) ?? [0, 0];
    faults.push(faultAt(document, message ?? 'is refused', start, end));
  }
  return faults;
}

function faultAt(document: TextDocument, message: string, start: number, end: number): Diagnostic {
  return { message, range: { start: document.positionAt(start), end: document.positionAt(end) } };
}

function kindOf(parsed: Document): Kind | undefined {
  const kind = parsed.get('kind');
  return typeof kind === 'string' && isKind(kind) ? kind : undefined;
}

/** The fields of the innermost map around the place. */
function offersAt(document: TextDocument, offset: number): CompletionItem[] {
  const parsed = parseDocument(document.getText());
  const kind = kindOf(parsed);
  let shape = kind === undefined ? undefined : fieldsOf(schemas.get(kind));
  for (let node: unknown = parsed.contents; isMap(node); ) {
    const around = node.items.find(({ value }) => isNode(value) && isAround(value.range, offset));
    const inner = around === undefined ? undefined : fieldsOf(shape?.[String(around.key)]);
    if (inner === undefined) break;
    shape = inner;
    node = around?.value;
  }
  return Object.keys(shape ?? {}).map((label) => ({ label }));
}

function isAround(range: readonly [number, number, number] | null | undefined, offset: number): boolean {
  return range !== null && range !== undefined && range[0] <= offset && offset <= range[2];
}

function fieldsOf(schema: unknown): Readonly<Record<string, unknown>> | undefined {
  if (typeof schema !== 'object' || schema === null || !('properties' in schema)) return undefined;
  return schema.properties as Readonly<Record<string, unknown>>;
}
