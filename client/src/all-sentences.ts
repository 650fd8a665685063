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
import { addSaid } from './add-item.ts';
import { textIn } from './answers.ts';
import { type ChoiceItem, firstRows, inLines, laterRows, mostInLine, passingOver } from './choice-rows.ts';
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
 * Goes through the sentences of an instruction one after the other: Enter takes what is proposed; Escape goes one question back, and at the
 * sentence itself stops. Each sentence that is taken is one step that can be undone.
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
  try {
    const end = await walked(server, editor, mark);
    editor.setDecorations(mark, []);
    if (end !== undefined) await showEnd(editor, end);
    else window.setStatusBarMessage(`Stopped. "Turn All Sentences into Fields" goes on with what is open.`, shownFor);
  } finally {
    mark.dispose();
  }
}

const shownFor = 15_000;

/** More than any instruction has sentences and questions: a server that never ends must not hold the editor. */
const mostSteps = 10_000;

/** Undefined where the person stopped. */
async function walked(
  server: ServerConnection,
  editor: TextEditor,
  mark: TextEditorDecorationType,
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
    const choice = await chosen(answer, above.length);
    if (choice?.does === 'stop') return undefined;
    if (choice?.does === 'ask') above.push(asked);
    const next = choice === undefined ? above.pop() : await takenUp(server, editor, answer, choice);
    if (next === undefined) return undefined;
    if (choice !== undefined && choice.does !== 'ask') above.length = 0;
    asked = next;
  }
  return undefined;
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
  return choice.told === undefined ? { statement } : { statement, told: choice.told };
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

async function chosen(
  { title, quote, asks, choices }: ServerSentence,
  depth: number,
): Promise<ServerChoice | undefined> {
  const items = choices.flatMap((choice, at) =>
    at === 0 ? firstRows(choice, quote) : laterRows(choice, depth > 0 ? 'Escape goes back' : 'as Escape does'),
  );
  const pick = window.createQuickPick<ChoiceItem>();
  pick.items = items;
  pick.title = title;
  pick.placeholder = asks;
  pick.ignoreFocusOut = true;
  pick.matchOnDescription = true;
  pick.matchOnDetail = true;
  const passing = passingOver(pick, items);
  const taken = await new Promise<ServerChoice | undefined>((resolve) => {
    pick.onDidAccept(() => {
      resolve(pick.activeItems[0]?.choice);
      pick.hide();
    });
    pick.onDidHide(() => resolve(undefined));
    pick.show();
  });
  passing.dispose();
  pick.dispose();
  return taken;
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
    await commands.executeCommand('traywright.newFile', file.kind, file.known);
    return;
  }
  if (edits.length > 0 && (version === null || version === document.version)) await putIn(document, edits);
  const last = document.lineAt(document.lineCount - 1).range.end;
  const at = place === null ? last : rangeOf(place).start;
  await window.showTextDocument(document, { selection: new Range(at, at) });
}
