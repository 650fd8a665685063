import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { FileId } from '../base/brand.ts';
import type { Edit } from '../base/problem.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { ClientAbilities } from './client-abilities.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { rangeOf } from './places.ts';
import { addressOf } from './uris.ts';

/** What edits need to become the editor's: where files are, and which version of a text they are meant for. */
export interface EditForm {
  readonly places: DocumentPlaces;
  readonly abilities: ClientAbilities;
  readonly versions: ReadonlyMap<string, number>;
}

export function textEditsOf(record: FileRecord, edits: readonly Edit[]): TextEdit[] {
  return edits.map(({ span, text }) => ({ range: rangeOf(record, span), newText: text }));
}

/** Edits of several files as one. With versions where the editor takes them, so that a text that has moved on refuses them. */
export function workspaceEdit(
  at: DocumentAt,
  edits: ReadonlyMap<FileId, readonly Edit[]>,
  { places, abilities, versions }: EditForm,
): WorkspaceEdit {
  const files: { uri: string; edits: TextEdit[] }[] = [];
  for (const [file, own] of edits) {
    const record = at.home.engine.library.record(file);
    if (record !== undefined) files.push({ uri: places.uriOf(at, file), edits: textEditsOf(record, own) });
  }
  if (!abilities.versionedEdits) return { changes: Object.fromEntries(files.map(({ uri, edits: own }) => [uri, own])) };
  return {
    documentChanges: files.map(({ uri, edits: own }) => ({
      textDocument: { uri, version: versions.get(addressOf(uri)) ?? null },
      edits: own,
    })),
  };
}
