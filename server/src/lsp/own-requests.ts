import type { Connection } from 'vscode-languageserver';
import { pasteInto } from '../editor/page/paste.ts';
import { quoteToFields } from '../editor/reading/quote-to-fields.ts';
import { leftOutAt, leftOutWords } from '../editor/walk/left-out.ts';
import { caution } from '../editor/words/walk-choice.ts';
import { waitingSentences } from '../editor/work-lenses.ts';
import { asSnippet } from '../editor/writing/offer.ts';
import type { CleanPaste } from '../quantity/prose/clean-paste.ts';
import { cleanPaste } from '../quantity/prose/clean-paste.ts';
import { fileForm } from '../syntax/edits.ts';
import { listsToAddTo, nextOfItem } from './added-items.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { attachNewFiles } from './new-files.ts';
import { fieldIn } from './params.ts';
import { offsetOf, rangeOf } from './places.ts';
import { nextOfSentences } from './sentence-walks.ts';
import type { Session } from './session.ts';
import { addressOf } from './uris.ts';

/** Requests of our own for a client that has more than the protocol's means. All that comes in is looked at before it is used. */
export function attachOwnRequests(
  connection: Connection,
  session: Session,
  places: DocumentPlaces,
  versions: ReadonlyMap<string, number>,
): void {
  connection.onRequest(
    'traywright/cleanPaste',
    session.request((params: unknown) => pasted(params, places)),
  );
  connection.onRequest(
    'traywright/quoteToFields',
    session.request((params: unknown) => fields(params, places, versions)),
  );
  connection.onRequest(
    'traywright/nextSentence',
    session.request((params: unknown) => nextOfSentences(params, places, versions)),
  );
  connection.onRequest(
    'traywright/waitingSentences',
    session.request((params: unknown) => waiting(params, places)),
  );
  connection.onRequest(
    'traywright/listsToAddTo',
    session.request((params: unknown) => listsToAddTo(params, places)),
  );
  connection.onRequest(
    'traywright/addItem',
    session.request((params: unknown) => nextOfItem(params, places, versions)),
  );
  attachNewFiles(connection, session, places);
}

/** Cleaned, and made to fit the place when the client says which. */
async function pasted(params: unknown, places: DocumentPlaces): Promise<CleanPaste | null> {
  const text = fieldIn(params, 'text');
  if (typeof text !== 'string') return null;
  const uri = fieldIn(params, 'uri');
  const record = typeof uri === 'string' ? (await places.text(uri))?.record : undefined;
  const range = fieldIn(params, 'range');
  if (record === undefined || range === undefined) return cleanPaste(text);
  const start = offsetOf(record, placeOf(fieldIn(range, 'start')));
  const end = offsetOf(record, placeOf(fieldIn(range, 'end')));
  return start === undefined || end === undefined ? cleanPaste(text) : pasteInto(record.text, { start, end }, text);
}

/** What waits to be turned into fields, for a client that says so when pages were pasted. */
async function waiting(params: unknown, places: DocumentPlaces): Promise<unknown> {
  const uri = fieldIn(params, 'uri');
  const record = typeof uri === 'string' ? (await places.text(uri))?.record : undefined;
  const found = record === undefined ? undefined : waitingSentences(record, treeOf(record));
  return found === undefined ? null : { words: found.words, pasted: found.pasted };
}

async function fields(
  params: unknown,
  places: DocumentPlaces,
  versions: ReadonlyMap<string, number>,
): Promise<unknown> {
  const uri = fieldIn(params, 'uri');
  const at = typeof uri === 'string' ? await places.document(uri) : undefined;
  const offset = at === undefined ? undefined : statementOffset(at, params);
  const tree = at === undefined ? undefined : treeOf(at.record);
  if (typeof uri !== 'string' || at === undefined || tree === undefined || offset === undefined) return null;
  const found = quoteToFields(at.record, tree, offset);
  if (found === undefined) return null;
  const { lineEnd } = fileForm(at.record.text);
  return {
    version: versions.get(addressOf(uri)) ?? null,
    insertions: found.insertions.map(({ span, pieces }) => ({
      range: rangeOf(at.record, span),
      snippet: asSnippet(pieces, lineEnd),
    })),
    made: found.made,
    left: leftOutWords(leftOutAt(found, tree, offset)),
    caution,
  };
}

/** By the id of the statement, or by a place in it. */
function statementOffset({ record }: DocumentAt, params: unknown): number | undefined {
  const id = fieldIn(params, 'statement');
  const statements = treeOf(record)?.entries.find(({ key }) => key.text === 'statements')?.value;
  const named = statements?.node === 'map' ? statements.entries.find(({ key }) => key.text === id) : undefined;
  return named?.key.span.start ?? offsetOf(record, positionIn(params));
}

function positionIn(params: unknown): { line: number; character: number } {
  return placeOf(fieldIn(params, 'position'));
}

function placeOf(position: unknown): { line: number; character: number } {
  return { line: Number(fieldIn(position, 'line')), character: Number(fieldIn(position, 'character')) };
}
