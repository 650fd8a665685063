import {
  commands,
  type Disposable,
  type QuickPickItem,
  Range,
  Selection,
  type TextDocument,
  TextEdit,
  type TextEditor,
  type TextEditorDecorationType,
  TextEditorRevealType,
  ThemeColor,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import type { FurtherFile } from '../../server/src/panel/sentences.ts';
import { addSaid } from './add-item.ts';
import { textIn } from './answers.ts';
import { inLines, mostInLine } from './choice-rows.ts';
import { type Answers, newFileBeside } from './new-file.ts';
import { SentenceList } from './sentence-list.ts';
import type { ServerConnection } from './server-connection.ts';
import {
  isSentencesDone,
  isServerSentence,
  type SentenceRange,
  type ServerChoice,
  type ServerDone,
  type ServerEdit,
  type ServerPiece,
  type ServerSentence,
} from './server-sentences.ts';

/**
 * Goes through the sentences of an instruction one after the other: Enter takes what is proposed, Escape stops, wherever it is pressed, as it
 * closes all other questions of ours; a button goes one question back. Each sentence that is taken is one step that can be undone.
 */
export function registerAllSentences(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.allSentences', (uri: unknown) => allSentences(server, textIn(uri)));
}

interface Asked {
  readonly statement: string;
  readonly told?: unknown;
}

async function allSentences(server: ServerConnection, given: string): Promise<void> {
  const uri = given === '' ? window.activeTextEditor?.document.uri : server.uriOf(given);
  if (uri === undefined) return;
  const editor = await window.showTextDocument(await workspace.openTextDocument(uri));
  // What was said about sentences that wait would lie over them; it stays in the list of notifications.
  await commands.executeCommand('notifications.hideToasts');
  const mark = window.createTextEditorDecorationType({
    backgroundColor: new ThemeColor('editor.findMatchHighlightBackground'),
  });
  const list = new SentenceList();
  try {
    const end = await walked(server, editor, mark, list);
    list.close();
    editor.setDecorations(mark, []);
    if (end !== undefined) await showEnd(editor, end);
    else stopped(server, given);
  } finally {
    list.close();
    mark.dispose();
  }
}

/** Nothing is lost, and going on is one key away. */
function stopped(server: ServerConnection, given: string): void {
  const goOn = 'Go On';
  void window
    .showInformationMessage('Traywright: stopped. What was taken stays; the sentences left come again.', goOn)
    .then((chosen) => (chosen === goOn ? allSentences(server, given) : undefined));
}

/** More than any instruction has sentences and questions: a server that never ends must not hold the editor. */
const mostSteps = 10_000;

/** Undefined where the person stopped. */
async function walked(
  server: ServerConnection,
  editor: TextEditor,
  mark: TextEditorDecorationType,
  list: SentenceList,
): Promise<ServerDone | undefined> {
  const uri = server.uriText(editor.document.uri);
  let asked: Asked = { statement: '' };
  // The questions about the same sentence that led to this one.
  const above: Asked[] = [];
  for (let step = 0; step < mostSteps; step++) {
    const answer = await server.ask('traywright/nextSentence', { uri, ...asked });
    if (isSentencesDone(answer)) return answer;
    if (!isServerSentence(answer)) return undefined;
    if (answer.place !== null) show(editor, mark, rangeOf(answer.place));
    const choice = await list.ask(answer, above.length === 0 ? 'nothing above' : 'a question above');
    if (choice === undefined || (choice !== 'back' && choice.does === 'stop')) return undefined;
    if (choice === 'back') {
      asked = above.pop() ?? asked;
      continue;
    }
    if (choice.does === 'ask') above.push(asked);
    else above.length = 0;
    asked = await takenUp(server, editor, answer, choice);
    if (list.isClosed && !asksItself(choice)) return undefined;
  }
  return undefined;
}

/** Questions of its own take the place of the list. */
function asksItself({ adds, types, file }: ServerChoice): boolean {
  return adds !== undefined || types !== undefined || file !== undefined;
}

/** What is asked next. */
async function takenUp(
  server: ServerConnection,
  editor: TextEditor,
  sentence: ServerSentence,
  choice: ServerChoice,
): Promise<Asked> {
  const { statement, version } = sentence;
  const { document } = editor;
  if (choice.adds !== undefined)
    return {
      statement,
      told: (await addSaid(server, editor, choice.adds)) ? choice.told : { words: [], next: 'field' },
    };
  if (choice.does === 'ask' && choice.types !== undefined) {
    const text = await window.showInputBox({ prompt: choice.types, value: sentence.quote, ignoreFocusOut: true });
    return { statement, told: { ...choice.told, text: text ?? '' } };
  }
  if (choice.does === 'ask') return { statement, told: choice.told };
  if (choice.edits.length === 0) return { statement };
  if (version !== null && version !== document.version) return { statement: '' };
  await putIn(document, choice.edits);
  if (choice.file !== undefined) await askForFile(server, document, choice.file);
  return choice.told === undefined ? { statement } : { statement, told: choice.told };
}

/** What the head of pasted pages told of their document: when sentences have been made of them it stands in no file until that is made. */
const heads = new Map<string, Answers>();

/** Nobody has to make it now: it is offered again at the end. */
async function askForFile(
  server: ServerConnection,
  { uri }: TextDocument,
  { kind, known }: FurtherFile,
): Promise<void> {
  heads.set(uri.toString(), known);
  await newFileBeside(server, kind, known);
}

async function putIn(document: TextDocument, edits: readonly ServerEdit[]): Promise<void> {
  const edit = new WorkspaceEdit();
  edit.set(
    document.uri,
    edits.map(({ range, newText }) => TextEdit.replace(rangeOf(range), newText)),
  );
  await workspace.applyEdit(edit);
}

/** The whole sentence is marked, and stands below the questions, not under them. */
function show(editor: TextEditor, mark: TextEditorDecorationType, range: Range): void {
  editor.selection = new Selection(range.start, range.start);
  editor.setDecorations(mark, [range]);
  editor.revealRange(range, TextEditorRevealType.InCenter);
}

function rangeOf({ start, end }: SentenceRange): Range {
  return new Range(start.line, start.character, end.line, end.character);
}

interface PieceItem extends QuickPickItem {
  readonly piece?: ServerPiece;
}

/** Stays until a person has read it, with what is still to be done as choices. */
async function showEnd(editor: TextEditor, { counts, words, next, version }: ServerDone): Promise<void> {
  if (counts === '') {
    void window.showInformationMessage(`Traywright: ${words}`);
    return;
  }
  const [label = '', detail = 'Close this list', ...more] = inLines(counts, mostInLine);
  const items: readonly PieceItem[] = [
    { label, detail },
    ...more.map((line) => ({ label: line })),
    ...next.map((piece) => ({ label: piece.label, detail: piece.detail, piece })),
  ];
  const taken = await window.showQuickPick(items, {
    title: 'All sentences are gone through',
    placeHolder: 'What is next? "Turn All Sentences into Fields" shows this list again.',
    ignoreFocusOut: true,
    matchOnDetail: true,
  });
  if (taken?.piece !== undefined) await takeUp(editor, taken.piece, version);
}

async function takeUp(
  { document }: TextEditor,
  { file, place, edits }: ServerPiece,
  version: number | null,
): Promise<void> {
  if (file !== undefined) {
    const head = heads.get(document.uri.toString());
    const isSame = head?.doc?.[0] === file.known.doc?.[0] && head?.rev?.[0] === file.known.rev?.[0];
    await commands.executeCommand('traywright.newFile', file.kind, { ...(isSame && head), ...file.known });
    return;
  }
  if (edits.length > 0 && (version === null || version === document.version)) await putIn(document, edits);
  const last = document.lineAt(document.lineCount - 1).range.end;
  const at = place === null ? last : rangeOf(place).start;
  await window.showTextDocument(document, { selection: new Range(at, at) });
}
