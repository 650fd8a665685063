import {
  commands,
  type Disposable,
  Position,
  Range,
  Selection,
  type TextDocument,
  TextEdit,
  type TextEditor,
  type Uri,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { recordIn, textIn } from './answers.ts';
import { KeptAnswers } from './kept-answers.ts';
import { ask } from './questions.ts';
import type { ServerConnection } from './server-connection.ts';
import {
  isAnswerProblem,
  isServerLists,
  isServerMade,
  isServerQuestion,
  type ServerList,
  type ServerMade,
} from './server-questions.ts';

/**
 * Adds to a list of the file, such as a further cycle or step: asks part by part, puts the whole in at once. Which list is asked when the command
 * does not say it.
 */
export function registerAddItem(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.addItem', (uri: unknown, list: unknown, position: unknown) =>
    addItem(server, textIn(uri), textIn(list), position),
  );
}

interface Place {
  readonly uri: string;
  readonly position: { readonly line: number; readonly character: number } | undefined;
}

async function addItem(server: ServerConnection, given: string, list: string, position: unknown): Promise<void> {
  const uri = given === '' ? window.activeTextEditor?.document.uri : server.uriOf(given);
  if (uri === undefined) return;
  const editor = await window.showTextDocument(await workspace.openTextDocument(uri));
  const place = { uri: server.uriText(uri), position: placeFor(editor, given, position) };
  const path = list === '' ? await chosenList(server, place) : list;
  if (path !== undefined) await addTo(server, editor, { place, list: path, known: {} });
}

/** Which list an item goes into, and what is known of it before anything is asked. */
interface Wanted {
  readonly place: Place;
  readonly list: string;
  readonly known: Readonly<Record<string, string>>;
}

/** An item that a sentence speaks of, at the end of its list. Whether one was put in. */
export function addSaid(
  server: ServerConnection,
  editor: TextEditor,
  { list, known }: Pick<Wanted, 'list' | 'known'>,
): Promise<boolean> {
  return addTo(server, editor, {
    place: { uri: server.uriText(editor.document.uri), position: undefined },
    list,
    known,
  });
}

async function addTo(server: ServerConnection, editor: TextEditor, wanted: Wanted): Promise<boolean> {
  const made = await answered(server, wanted, async () => {
    await addTo(server, await window.showTextDocument(editor.document), wanted);
  });
  if (made === undefined) return false;
  if (made.words !== '') void window.showInformationMessage(`Traywright: ${made.words}`);
  if (made.version !== null && made.version !== editor.document.version) {
    void window.showWarningMessage('Traywright: the text has changed meanwhile, so nothing was put in. Try again.');
    return false;
  }
  if (made.edits.length > 0) await putIn(editor, editor.document.uri, made);
  return made.edits.length > 0;
}

/** A command that names a list without a place adds at its end. */
function placeFor({ selection }: TextEditor, given: string, position: unknown): Place['position'] {
  const { line, character } = given === '' ? selection.active : recordIn(position);
  return typeof line === 'number' && typeof character === 'number' ? { line, character } : undefined;
}

async function chosenList(server: ServerConnection, place: Place): Promise<string | undefined> {
  const lists: unknown = await server.ask('traywright/listsToAddTo', place);
  if (!isServerLists(lists) || lists.length === 0) {
    void window.showInformationMessage('Traywright: there is no list in this file to add something to.');
    return undefined;
  }
  const items = lists.map((list) => itemFor(list));
  const chosen = await window.showQuickPick(items, {
    title: 'Add a Cycle, Step, Part or Other Item',
    placeHolder: 'What do you want to add?',
    matchOnDescription: true,
    matchOnDetail: true,
    ignoreFocusOut: true,
  });
  return chosen?.path;
}

function itemFor({ path, title, about, where, here }: ServerList) {
  return { label: title, description: here ? `here: ${where}` : where, detail: about, path };
}

/** More than anything has parts: a server that never ends must not hold the editor. */
const mostSteps = 1_000;

type Answers = readonly (readonly string[])[];

const kept = new KeptAnswers<Answers>();

async function answered(
  server: ServerConnection,
  { place, list, known }: Wanted,
  again: () => Promise<void>,
): Promise<ServerMade | undefined> {
  const key = `${place.uri} ${list}`;
  const before = await kept.before(key, [], ({ length }) => length);
  if (before === undefined) return undefined;
  const answers = [...before];
  const stepAfter = (given: Answers): Promise<unknown> =>
    server.ask('traywright/addItem', { ...place, list, known, answers: given });
  for (let step = 0; step < mostSteps; step++) {
    const next = await stepAfter(answers);
    if (isServerMade(next)) return next;
    // The file is another one by now, so that what was answered before fits no more.
    if (isAnswerProblem(next) && answers.length > 0) {
      answers.length = 0;
      continue;
    }
    if (!isServerQuestion(next)) return undefined;
    const answer = await ask({
      ...next,
      title: next.of === undefined ? next.title : `${next.title} (${answers.length + 1} of ${next.of})`,
      choices: next.choices.map(({ label, detail }) => ({ label, description: detail })),
      back: answers.length > 0,
      check: async (text) => {
        const looked = await stepAfter([...answers, [text]]);
        return isAnswerProblem(looked) ? looked.words : undefined;
      },
    });
    if (answer === undefined) {
      kept.keep(key, answers, answers.length, again);
      return undefined;
    }
    if (answer === 'back') answers.pop();
    else answers.push(answer.map((label) => next.choices.find((one) => one.label === label)?.gives ?? label));
  }
  return undefined;
}

/** One step that can be undone. What was put in is shown. */
async function putIn(editor: TextEditor, uri: Uri, { edits }: ServerMade): Promise<void> {
  const { document } = editor;
  const edit = new WorkspaceEdit();
  const all = edits.map(({ range: { start, end }, newText }) =>
    TextEdit.replace(new Range(start.line, start.character, end.line, end.character), newText),
  );
  edit.set(uri, all);
  await workspace.applyEdit(edit);
  const [first] = all;
  if (first === undefined) return;
  const place = firstWordFrom(document, first);
  editor.selection = new Selection(place, place);
  editor.revealRange(new Range(place, place));
}

/** An item that comes in behind a line end begins on the line below it. */
function firstWordFrom(document: TextDocument, { range, newText }: TextEdit): Position {
  const line = range.start.line + (/^\r?\n/.test(newText) ? 1 : 0);
  const text = document.lineAt(Math.min(line, document.lineCount - 1));
  const column =
    range.start.character > 0 && line === range.start.line
      ? range.start.character
      : text.firstNonWhitespaceCharacterIndex;
  return new Position(text.lineNumber, column);
}
