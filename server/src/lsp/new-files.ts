import type { Connection } from 'vscode-languageserver';
import type { Answers } from '../editor/items/new-file.ts';
import {
  answerFault,
  folderFor,
  lineToWrite,
  newFileQuestions,
  newFileText,
  proposedId,
} from '../editor/items/new-file.ts';
import { pageHead } from '../editor/page/page-head.ts';
import { cleanPaste } from '../quantity/prose/clean-paste.ts';
import type { Kind } from '../schema/kinds.ts';
import { isKind, kinds } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { DocumentPlaces } from './document-places.ts';
import { fieldIn } from './params.ts';
import type { Session } from './session.ts';
import { addressOf } from './uris.ts';

/** Requests of a client that asks for a new rule file question by question. */
export function attachNewFiles(connection: Connection, session: Session, places: DocumentPlaces): void {
  connection.onRequest(
    'traywright/kinds',
    session.request(() => kinds.map(kindWords)),
  );
  connection.onRequest(
    'traywright/newFileQuestions',
    session.request((params: unknown) => questions(params, places)),
  );
  connection.onRequest(
    'traywright/newFileFault',
    session.request((params: unknown) => fault(params)),
  );
  connection.onRequest(
    'traywright/newFile',
    session.request((params: unknown) => newFile(params, places)),
  );
  connection.onRequest(
    'traywright/copiedPages',
    session.request((params: unknown) => copiedPages(params)),
  );
}

function kindWords(kind: Kind): { kind: Kind; title: string; about: string } {
  const { title, description } = shapeOf(kind);
  return { kind, title, about: description };
}

/** `near` is one of the files of the library, so that ids that exist can be offered; a first file has none yet. */
async function questions(params: unknown, places: DocumentPlaces): Promise<unknown> {
  const kind = fieldIn(params, 'kind');
  if (typeof kind !== 'string' || !isKind(kind)) return null;
  const view = await viewNear(params, places);
  if (view === undefined) return null;
  return { questions: newFileQuestions(kind, view, toldIn(params)), folder: folderFor(kind, view) };
}

function toldIn(params: unknown): readonly string[] {
  const told = fieldIn(params, 'told');
  return Array.isArray(told) ? told.filter((one) => typeof one === 'string') : [];
}

/** What is wrong with the answer to one question. */
function fault(params: unknown): unknown {
  const [kind, key, text] = ['kind', 'key', 'text'].map((name) => fieldIn(params, name));
  if (typeof kind !== 'string' || !isKind(kind) || typeof key !== 'string' || typeof text !== 'string') return null;
  const words = answerFault(kind, key, text);
  return words === undefined ? null : { words };
}

const mostLetters = 1_000_000;

/** Text that was copied from an instruction, and what its head says; null where it is no such text. */
function copiedPages(params: unknown): unknown {
  const text = pagesIn(fieldIn(params, 'text'));
  return text === '' ? null : { text, ...pageHead(text) };
}

const fewestLines = 5;

function pagesIn(value: unknown): string {
  if (typeof value !== 'string' || value.length > mostLetters) return '';
  const text = cleanPaste(value).text.replaceAll('\r\n', '\n').trim();
  return text.split('\n').filter((line) => line.trim() !== '').length < fewestLines ? '' : text;
}

async function newFile(params: unknown, places: DocumentPlaces): Promise<unknown> {
  const kind = fieldIn(params, 'kind');
  if (typeof kind !== 'string' || !isKind(kind)) return null;
  const answers = answersIn(fieldIn(params, 'answers'));
  const id = answers.id?.[0] ?? '';
  const proposed = proposedId(kind, answers);
  if (id === '') return { proposed };
  const view = await viewNear(params, places);
  const taken = view?.exists(kind, id) === true;
  const text = newFileText(kind, id, answers, pagesIn(fieldIn(params, 'pages')));
  return { proposed, taken, text, begin: lineToWrite(text) ?? null };
}

async function viewNear(params: unknown, places: DocumentPlaces): ReturnType<typeof viewOf> {
  return viewOf(fieldIn(params, 'near'), places);
}

async function viewOf(near: unknown, { workbench }: DocumentPlaces) {
  await workbench.settled();
  const home = typeof near === 'string' ? workbench.homeOf(addressOf(near)) : undefined;
  if (home !== undefined) return home.engine.view();
  for (const library of workbench.libraries.all()) return library.engine.view();
  return undefined;
}

function answersIn(given: unknown): Answers {
  const answers: Record<string, readonly string[]> = Object.create(null);
  if (typeof given !== 'object' || given === null) return answers;
  for (const [key, value] of Object.entries(given)) {
    if (Array.isArray(value)) answers[key] = value.filter((one) => typeof one === 'string').slice(0, 200);
  }
  return answers;
}
