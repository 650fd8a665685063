import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { FileId } from '../base/brand.ts';
import type { Edit } from '../base/problem.ts';
import { withoutFilledMarks } from '../editor/writing/to-do.ts';
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

/** What waited to be written and is written by these edits waits no longer. */
export function textEditsOf(record: FileRecord, edits: readonly Edit[]): TextEdit[] {
  return withoutFilledMarks(record.text, edits).map(({ span, text }) => ({
    range: rangeOf(record, span),
    newText: text,
  }));
}

/** The edits of one file in the editor's form, under the editor's URI of it. */
export interface FileEdits {
  readonly uri: string;
  readonly edits: TextEdit[];
}

export function fileEditsOf(record: FileRecord, uri: string, edits: readonly Edit[]): FileEdits {
  return { uri, edits: textEditsOf(record, edits) };
}

/** Edits of several files of one library as one. */
export function workspaceEdit(
  at: DocumentAt,
  edits: ReadonlyMap<FileId, readonly Edit[]>,
  form: EditForm,
): WorkspaceEdit {
  const files: FileEdits[] = [];
  for (const [file, own] of edits) {
    const record = at.home.engine.library.record(file);
    if (record !== undefined) files.push(fileEditsOf(record, form.places.uriOf(at, file), own));
  }
  return workspaceEditOf(files, form);
}

/** With versions where the editor takes them, so that a text that has moved on refuses them. */
export function workspaceEditOf(files: readonly FileEdits[], { abilities, versions }: EditForm): WorkspaceEdit {
  if (!abilities.versionedEdits) return { changes: Object.fromEntries(files.map(({ uri, edits }) => [uri, edits])) };
  return {
    documentChanges: files.map(({ uri, edits }) => ({
      textDocument: { uri, version: versions.get(addressOf(uri)) ?? null },
      edits,
    })),
  };
}
