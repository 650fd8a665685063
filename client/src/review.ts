import {
  commands,
  type Disposable,
  type ExtensionContext,
  type QuickPickItem,
  Range,
  Selection,
  Uri,
  ViewColumn,
  type WebviewPanel,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { type FromReviewPage, isFromReviewPage, type ToReviewPage } from '../page/review.ts';
import { recordIn, textIn } from './answers.ts';
import { GivenDecisions } from './given-decisions.ts';
import { ruleFiles } from './rule-files.ts';
import type { ServerConnection } from './server-connection.ts';
import {
  isRecordFiles,
  isServerReview,
  type RecordFile,
  type ReviewPlace,
  type ServerReview,
} from './server-review.ts';
import { mediaFolder, reviewPage } from './sheet-page.ts';

/** Scheme of the old texts: nothing checks them, and nobody can write into them. */
const earlierScheme = 'traywright-earlier';

/** The review of a revision: one panel beside the editor's own comparison of the two texts. */
export function registerReview(context: ExtensionContext, server: ServerConnection): readonly Disposable[] {
  const review = new ReviewPanel(context, server);
  return [
    commands.registerCommand('traywright.compareWithLastAccepted', async (from: unknown) => {
      const file = fileFrom(from) ?? (await askFile());
      if (file !== undefined) await review.open(file === 'all' ? undefined : file);
    }),
    commands.registerCommand('traywright.reviewLibrary', () => review.open(undefined)),
    workspace.registerTextDocumentContentProvider(earlierScheme, {
      provideTextDocumentContent: (uri) => review.earlierText(uri),
    }),
    server.on('traywright/reviewChanged', (answer) => review.changed(answer)),
    server.onRunning(() => void review.lookAgain()),
    workspace.onDidSaveTextDocument(({ languageId }) => {
      if (languageId === 'traywright-rules') void review.lookAgain();
    }),
  ];
}

/** A file of a menu, or of the source-control view; else the one in the active editor. */
function fileFrom(from: unknown): Uri | undefined {
  if (from instanceof Uri) return from;
  const { resourceUri } = recordIn(from);
  if (resourceUri instanceof Uri) return resourceUri;
  const document = window.activeTextEditor?.document;
  return document?.languageId === 'traywright-rules' && document.uri.scheme !== earlierScheme
    ? document.uri
    : undefined;
}

/** No rule file is open: which is meant is asked, so that nobody takes the review of everything for that of one file. */
async function askFile(): Promise<Uri | 'all' | undefined> {
  const all = { label: 'All files of the library', description: 'every change since the last recorded state' };
  const files = (await ruleFiles()).map((uri) => ({ label: workspace.asRelativePath(uri), uri }));
  const items: readonly (QuickPickItem & { readonly uri?: Uri })[] = [all, ...files];
  const chosen = await window.showQuickPick(items, {
    title: 'Compare with Last Accepted',
    placeHolder: 'No rule file is open. Which one is to be compared?',
    ignoreFocusOut: true,
  });
  return chosen === undefined ? undefined : (chosen.uri ?? 'all');
}

class ReviewPanel {
  readonly #extension: Uri;
  readonly #server: ServerConnection;
  readonly #given: GivenDecisions;
  #panel: WebviewPanel | undefined;
  #wanted: Readonly<Record<string, unknown>> = {};
  #review: ServerReview | undefined;
  #why = '';
  #asked = 0;
  #taken = 0;
  /** Counts what was sent to the page, so that an answer to an older review is passed over. */
  #shown = 0;

  constructor(context: ExtensionContext, server: ServerConnection) {
    this.#extension = context.extensionUri;
    this.#server = server;
    this.#given = new GivenDecisions(context.workspaceState);
  }

  /** Of one file, or of the whole library. */
  async open(file: Uri | undefined): Promise<void> {
    this.#wanted = file === undefined ? {} : { uri: this.#server.uriText(file) };
    this.#forget();
    await this.#ask();
    if (this.#review === undefined) {
      this.#show();
      void window.showInformationMessage(`Traywright: ${this.#why}`);
      return;
    }
    const [only, more] = this.#review.files;
    if (only !== undefined && more === undefined) await this.#showTexts(only.entity, undefined);
    if (this.#panel === undefined) this.#make();
    else this.#panel.reveal(undefined, false);
    this.#show();
  }

  /** The earlier state is read again too: another may have been accepted. */
  async lookAgain(): Promise<void> {
    if (this.#panel === undefined) return;
    await this.#ask();
    this.#show();
  }

  /** Somebody typed. */
  changed(answer: unknown): void {
    this.#take(answer);
    this.#show();
  }

  async earlierText({ path, query }: Uri): Promise<string> {
    return textIn(await this.#server.ask('traywright/reviewOldText', { number: Number(query), file: path.slice(1) }));
  }

  /** An answer to another question, or an older one than was taken already, is passed over. */
  async #ask(): Promise<void> {
    const [asked, wanted] = [++this.#asked, this.#wanted];
    const answer = await this.#server.ask('traywright/review', wanted);
    if (wanted !== this.#wanted || asked < this.#taken) return;
    this.#taken = asked;
    this.#take(answer);
  }

  #forget(): void {
    this.#review = undefined;
  }

  /** What can't be compared just now, because a text is half typed, leaves on show what was compared before, and says so. */
  #take(answer: unknown): void {
    if (isServerReview(answer)) {
      this.#review = answer;
      this.#why = '';
      return;
    }
    const why = textIn(recordIn(answer).why);
    this.#why = why === '' ? 'the two states could not be compared. See the output "Traywright".' : why;
  }

  #make(): void {
    const panel = window.createWebviewPanel(
      'traywright.review',
      'What changed',
      { viewColumn: ViewColumn.Beside },
      { enableScripts: true, localResourceRoots: [mediaFolder(this.#extension)] },
    );
    this.#panel = panel;
    panel.webview.onDidReceiveMessage((message: unknown) => {
      if (isFromReviewPage(message)) void this.#heard(message);
    });
    panel.onDidDispose(() => {
      if (this.#panel !== panel) return;
      this.#panel = undefined;
      void this.#server.tell('traywright/reviewClosed', {});
    });
    panel.webview.html = reviewPage(panel.webview, this.#extension);
  }

  #show(): void {
    if (this.#panel === undefined) return;
    const review = this.#review;
    this.#panel.title = review === undefined ? 'What changed' : `What changed: ${review.about}`;
    if (review === undefined) {
      this.#say({ is: 'nothing', text: this.#why });
      return;
    }
    const { about, sheet } = review;
    const given = sheet.changes.map(({ fingerprint }) => this.#given.of(fingerprint));
    this.#say({ is: 'review', number: ++this.#shown, about, review: sheet, given, waits: this.#why });
  }

  #say(message: ToReviewPage): void {
    void this.#panel?.webview.postMessage(message);
  }

  async #heard(message: FromReviewPage): Promise<void> {
    if (message.is === 'ready') return this.#show();
    const review = this.#review;
    if (review === undefined || message.number !== this.#shown) return;
    switch (message.is) {
      case 'go':
        return this.#go(review.places[message.place] ?? undefined);
      case 'again':
        return this.lookAgain();
      case 'write':
        return this.#write(review);
      case 'give': {
        const change = review.sheet.changes[message.change];
        if (change !== undefined) await this.#given.give(change.fingerprint, message.given);
      }
    }
  }

  /** Only places that the server named for this review can be opened. */
  async #go(place: ReviewPlace | undefined): Promise<void> {
    if (place !== undefined) await this.#showTexts(place.entity, place);
  }

  /** Old beside new, as the editor compares texts; where there is only one of them, that one. */
  async #showTexts(entity: string, place: ReviewPlace | undefined): Promise<void> {
    const review = this.#review;
    const file = review?.files.find((one) => one.entity === entity);
    if (review === undefined || file === undefined) return;
    const old =
      file.old === null
        ? undefined
        : Uri.from({ scheme: earlierScheme, path: `/${file.old}`, query: String(review.number) });
    const now = file.now === null ? undefined : this.#server.uriOf(file.now);
    const numbers = place?.range;
    const selection =
      numbers === undefined
        ? undefined
        : new Range(numbers.start.line, numbers.start.character, numbers.end.line, numbers.end.character);
    const at = { viewColumn: ViewColumn.One, preview: true, ...(selection && { selection }) };
    const only = place?.side === 'old' ? (old ?? now) : (now ?? old);
    if (old === undefined || now === undefined) {
      if (only !== undefined) await window.showTextDocument(only, at);
      return;
    }
    const name = file.old?.split('/').at(-1) ?? '';
    const title = `${name} (${review.sheet.old} ↔ ${review.sheet.now})`;
    await commands.executeCommand(
      'vscode.diff',
      old,
      now,
      title,
      place?.side === 'old' ? { ...at, selection: undefined } : at,
    );
    if (place?.side === 'old' && selection !== undefined) showIn(old, selection);
  }

  async #write({ sheet }: ServerReview): Promise<void> {
    const decisions = this.#given.among(sheet.changes.map(({ fingerprint }) => fingerprint));
    const answer = await this.#server.ask('traywright/reviewRecord', { ...this.#wanted, decisions });
    if (isRecordFiles(answer)) return this.#create(answer.files);
    const why = textIn(recordIn(answer).why);
    void window.showInformationMessage(
      `Traywright: ${why === '' ? 'the record could not be written. See the output "Traywright".' : why}`,
    );
    await this.lookAgain();
  }

  /** All new files as one edit, so that one undo takes them back; a file that exists is never written over. */
  async #create(files: readonly RecordFile[]): Promise<void> {
    const edit = new WorkspaceEdit();
    for (const { uri, text } of files)
      edit.createFile(this.#server.uriOf(uri), { overwrite: false, contents: new TextEncoder().encode(text) });
    const [first] = files;
    if (first === undefined) return;
    if (!(await workspace.applyEdit(edit))) {
      void window.showInformationMessage('Traywright: the record could not be written, so nothing was changed.');
      return;
    }
    const editor = await window.showTextDocument(this.#server.uriOf(first.uri), { viewColumn: ViewColumn.One });
    const at = editor.document.positionAt(Math.max(0, editor.document.getText().indexOf('\nreviewer:') + 1));
    editor.selection = new Selection(at, at);
    editor.revealRange(new Range(at, at));
  }
}

/** In the old half of the comparison that was just opened. */
function showIn(uri: Uri, range: Range): void {
  const editor = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
  if (editor === undefined) return;
  editor.selection = new Selection(range.start, range.end);
  editor.revealRange(range);
}
