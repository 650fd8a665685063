import type { CodeAction, Diagnostic } from 'vscode-languageserver';
import { CodeActionKind } from 'vscode-languageserver';
import { printable } from '../base/printable.ts';
import type { Span } from '../base/span.ts';
import { fixesOfLostFile, lostFileAt } from '../editor/naming/found-files.ts';
import type { Disk } from './disk.ts';
import type { DocumentAt } from './document-places.ts';
import { rangeOf } from './places.ts';
import type { EditForm } from './workspace-edit.ts';
import { workspaceEdit } from './workspace-edit.ts';

/** Where the file of a document is not where it says: files of the library that it may be. The disk is looked at only when asked here. */
export function foundFileActions(
  at: DocumentAt,
  asked: Span,
  shown: readonly Diagnostic[],
  parts: EditForm & { readonly disk: Disk },
): readonly CodeAction[] {
  const { engine, library } = at.home;
  const { disk } = parts;
  const lost = lostFileAt(at.record, asked, engine.library);
  if (lost === undefined || library === undefined || disk.pdfs === undefined) return [];
  const pdfs = {
    paths: disk.pdfs(library.root),
    digests: (paths: readonly string[]) => disk.digests?.(library.root, paths) ?? new Map<string, string>(),
  };
  const { start } = rangeOf(at.record, lost.at.at.span);
  const diagnostics = shown.filter(
    ({ range }) => range.start.line === start.line && range.start.character === start.character,
  );
  const fixes = fixesOfLostFile(lost, at.record, pdfs, engine.view());
  return fixes.map(({ title, edits }) => ({
    title: printable(title),
    kind: CodeActionKind.QuickFix,
    ...(diagnostics.length > 0 && { diagnostics }),
    ...(fixes.length === 1 && { isPreferred: true }),
    edit: workspaceEdit(at, new Map([[at.home.file, edits]]), parts),
  }));
}
