import {
  commands,
  type Disposable,
  type QuickPickItem,
  Range,
  Selection,
  type TextDocument,
  TextEdit,
  type TextEditor,
  TextEditorRevealType,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';
import {
  isSentencesDone,
  isServerSentence,
  type SentenceRange,
  type ServerChoice,
  type ServerSentence,
} from './server-sentences.ts';

/**
 * Goes through the sentences of an instruction one after the other: Enter takes what is proposed, Escape passes a sentence over. Each
 * sentence that is taken is one step that can be undone.
 */
export function registerAllSentences(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.allSentences', (uri: unknown) => allSentences(server, textIn(uri)));
}

async function allSentences(server: ServerConnection, given: string): Promise<void> {
  const uri = given === '' ? window.activeTextEditor?.document.uri : server.uriOf(given);
  if (uri === undefined) return;
  const editor = await window.showTextDocument(await workspace.openTextDocument(uri));
  const { document } = editor;
  let asked: { readonly statement: string; readonly told?: unknown } = { statement: '' };
  // More than any instruction has sentences and questions: a server that never ends must not hold the editor.
  for (let step = 0; step < mostSteps; step++) {
    const answer: unknown = await server.ask('traywright/nextSentence', { uri: server.uriText(uri), ...asked });
    if (isSentencesDone(answer)) void window.showInformationMessage(`Traywright: ${answer.words}`);
    if (!isServerSentence(answer)) return;
    const next = await answered(editor, document, answer);
    if (next === undefined) return;
    asked = next;
  }
}

const mostSteps = 10_000;

/** What is asked next; undefined ends it. */
async function answered(
  editor: TextEditor,
  document: TextDocument,
  sentence: ServerSentence,
): Promise<{ readonly statement: string; readonly told?: unknown } | undefined> {
  const { statement, place, version } = sentence;
  if (place !== null) show(editor, rangeOf(place));
  const choice = await chosen(sentence);
  const isWhole = statement === '';
  if (choice === undefined) return isWhole ? undefined : { statement };
  if (choice.does === 'stop') return undefined;
  if (choice.does === 'ask') return { statement, told: choice.told };
  if (choice.edits.length === 0) return { statement };
  if (version !== null && version !== document.version) return { statement: '' };
  const edit = new WorkspaceEdit();
  edit.set(
    document.uri,
    choice.edits.map(({ range, newText }) => TextEdit.replace(rangeOf(range), newText)),
  );
  await workspace.applyEdit(edit);
  return choice.told === undefined ? { statement } : { statement, told: choice.told };
}

function show(editor: TextEditor, range: Range): void {
  editor.selection = new Selection(range.start, range.end);
  editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
}

function rangeOf({ start, end }: SentenceRange): Range {
  return new Range(start.line, start.character, end.line, end.character);
}

interface ChoiceItem extends QuickPickItem {
  readonly choice: ServerChoice;
}

/** Longer words have a line of their own below the choice. */
const mostBeside = 60;

/** The sentence stands below the first choice, so that words and fields are seen together; what the fields leave out stands below the next. */
async function chosen({ title, quote, asks, choices }: ServerSentence): Promise<ServerChoice | undefined> {
  const items = choices.map((choice, at): ChoiceItem => {
    const { label } = choice;
    const words = at === 0 && quote !== '' ? `“${quote}” ${choice.detail}`.trim() : choice.detail;
    if (words === '') return { label, choice };
    return at === 0 || words.length > mostBeside
      ? { label, detail: words, choice }
      : { label, description: words, choice };
  });
  const taken = await window.showQuickPick(items, {
    title,
    placeHolder: asks,
    ignoreFocusOut: true,
    matchOnDescription: true,
    matchOnDetail: true,
  });
  return taken?.choice;
}
