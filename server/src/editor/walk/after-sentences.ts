import type { Edit } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { LibraryView } from '../../library/view.ts';
import type { FurtherPiece } from '../../panel/sentences.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { sentencesOf } from '../reading/open-sentences.ts';
import { toDoLine } from '../writing/to-do.ts';

/** A further piece with where to go for it, and what is written there first. */
export interface Piece extends FurtherPiece {
  readonly at: Span | undefined;
  readonly edits: readonly Edit[];
}

/**
 * What an instruction still needs when all its sentences have been gone through: those left open, what the kind demands and nobody has written,
 * the file of the document, and who encoded it.
 */
export function afterSentences(record: FileRecord, tree: MapTree, view: LibraryView): readonly Piece[] {
  return [...leftOpen(tree), ...toWrite(record, tree), ...documentFiles(tree, view), ...whoEncoded(record, tree)];
}

function leftOpen(tree: MapTree): readonly Piece[] {
  const [first] = sentencesOf(tree).filter(({ state }) => state === 'open');
  if (first === undefined) return [];
  const at = { start: first.offset, end: first.offset };
  return [{ label: `Go to the first sentence left open: ${first.id}`, detail: `“${first.quote}”`, at, edits: [] }];
}

function toWrite({ kind }: FileRecord, tree: MapTree): readonly Piece[] {
  const fields = kind === undefined ? undefined : shapeOf(kind).fields;
  return tree.entries.flatMap(({ key, value }) => {
    const field = fields?.get(key.text);
    if (value.node !== 'empty' || field === undefined) return [];
    const at = { start: key.span.end, end: key.span.end };
    return [{ label: `Still to write: ${field.title || key.text}`, detail: field.description, at, edits: [] }];
  });
}

/** Each document that a source names and that no file of the library describes. */
function documentFiles(tree: MapTree, view: LibraryView): readonly Piece[] {
  const sources = valueUnder(tree, 'sources');
  const named = sources?.node === 'list' ? sources.items.filter((item) => item.node === 'map') : [];
  const maker = textOf(valueUnder(tree, 'maker'));
  return named.flatMap((source) => {
    const [doc, rev] = [textOf(valueUnder(source, 'doc')), textOf(valueUnder(source, 'rev'))];
    if (doc === '' || isDescribed(doc, rev, view)) return [];
    const pages = lastPage(tree, doc);
    const known = Object.fromEntries(
      Object.entries({ doc, rev, maker, pages }).flatMap(([key, text]) => (text === '' ? [] : [[key, [text]]])),
    );
    const label = `Make the file of the document ${doc}${rev === '' ? '' : `, revision ${rev}`} …`;
    return [
      {
        label,
        detail: 'none in the library describes it yet',
        file: { kind: 'document', known },
        at: undefined,
        edits: [],
      },
    ];
  });
}

/** A file of the library is about this revision of the document. */
export function isDescribed(doc: string, rev: string, view: LibraryView): boolean {
  return view.all('document').some((one) => one.doc?.text === doc && (one.rev?.text ?? '') === rev);
}

/** The last page that a statement of the document stands on. */
function lastPage(tree: MapTree, doc: string): string {
  const statements = valueUnder(tree, 'statements');
  const all = statements?.node === 'map' ? statements.entries.map(({ value }) => value) : [];
  const pages = all.flatMap((one) =>
    one.node === 'map' && textOf(valueUnder(one, 'doc')) === doc ? [Number(textOf(valueUnder(one, 'page')))] : [],
  );
  const last = Math.max(0, ...pages.filter((page) => Number.isInteger(page)));
  return last === 0 ? '' : String(last);
}

function textOf(tree: Tree | undefined): string {
  return tree?.node === 'scalar' ? tree.text : '';
}

function whoEncoded({ text, kind }: FileRecord, tree: MapTree): readonly Piece[] {
  const field = kind === undefined ? undefined : shapeOf(kind).fields.get('review');
  if (field === undefined || valueUnder(tree, 'review') !== undefined) return [];
  const { lineEnd } = fileForm(text);
  const begin = text === '' || text.endsWith('\n') ? '' : lineEnd;
  const edit = {
    span: { start: text.length, end: text.length },
    text: `${begin}${toDoLine('review', field.description)}`,
  };
  return [{ label: 'Say who encoded it', detail: field.description, at: undefined, edits: [edit] }];
}
