import type { FileOperationRegistrationOptions, WorkspaceEdit } from 'vscode-languageserver';
import type { Move } from '../editor/naming/moved-files.ts';
import { editsForMoves } from '../editor/naming/moved-files.ts';
import type { OpenLibrary } from './open-library.ts';
import { fieldIn } from './params.ts';
import { isWithin } from './uris.ts';
import type { EditForm, FileEdits } from './workspace-edit.ts';
import { fileEditsOf, workspaceEditOf } from './workspace-edit.ts';

/** Any file or folder: a document's PDF, a rule file, and what holds them. */
export const watchedMoves: FileOperationRegistrationOptions = { filters: [{ pattern: { glob: '**' } }] };

const mostMoves = 10_000;

/** What must change in rule files when files or folders get another place, as one edit of the files as they lie now; null for nothing. */
export async function editForMoves(params: unknown, form: EditForm): Promise<WorkspaceEdit | null> {
  const { workbench } = form.places;
  const given = fieldIn(params, 'files');
  if (!Array.isArray(given)) return null;
  await workbench.settled();
  const moves = given.slice(0, mostMoves).flatMap((one: unknown) => {
    const [oldUri, newUri] = [fieldIn(one, 'oldUri'), fieldIn(one, 'newUri')];
    const from = typeof oldUri === 'string' ? workbench.folders.realPathOf(oldUri) : undefined;
    const to = typeof newUri === 'string' ? workbench.folders.realPathOf(newUri) : undefined;
    return from === undefined ? [] : [{ from, to }];
  });
  const edits: FileEdits[] = [];
  for (const library of workbench.libraries.all()) {
    for (const [file, own] of editsForMoves(movesIn(library, moves), library.engine.library)) {
      const record = library.engine.library.record(file);
      const uri = form.places.uriIn(library, file);
      if (record !== undefined) edits.push(fileEditsOf(record, uri, own));
    }
  }
  return edits.length === 0 ? null : workspaceEditOf(edits, form);
}

/** Of a library that is moved as a whole nothing changes. */
function movesIn(library: OpenLibrary, moves: readonly { from: string; to: string | undefined }[]): readonly Move[] {
  const below = (path: string | undefined): string | undefined =>
    path !== undefined && path !== library.root && isWithin(library.root, path)
      ? path.slice(library.root.length).replace(/^\//, '')
      : undefined;
  return moves.flatMap((move) => {
    const from = below(move.from);
    if (from === undefined) return [];
    const to = below(move.to);
    // A disk may spell a letter with its accent apart; the library knows its rule files by one spelling.
    return [...new Set([from, from.normalize('NFC')])].map((spelled) => ({ from: spelled, to }));
  });
}
