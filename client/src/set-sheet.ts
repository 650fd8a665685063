import {
  commands,
  type Disposable,
  type ExtensionContext,
  Range,
  Selection,
  type Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import { type FromPage, isFromPage, type Sheet, type ToPage } from '../page/sheet.ts';
import { listIn, recordIn, textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';
import { isServerSheet, type ServerSheet } from './server-sheet.ts';
import { mediaFolder, sheetPage } from './sheet-page.ts';

const viewType = 'traywright.setSheet';

/** The set sheet: one panel beside the text. */
export function registerSetSheet(context: ExtensionContext, server: ServerConnection): readonly Disposable[] {
  const sheet = new SetSheetPanel(context.extensionUri, server);
  return [
    commands.registerCommand('traywright.openSetSheet', (set: unknown) => sheet.open(set)),
    server.on('traywright/setSheetChanged', (params) => sheet.changed(recordIn(params).sheet)),
    server.onRunning(() => void sheet.ask()),
    window.onDidChangeActiveTextEditor((editor) => sheet.follow(editor?.document.uri, editor?.document.languageId)),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: async (panel: WebviewPanel, state: unknown) => sheet.restore(panel, state),
    }),
  ];
}

/** Whose sheet it is: a file, or a set by its id until the server has said in which file it is. */
type Wanted = { readonly uri: string } | { readonly set: string };

class SetSheetPanel {
  readonly #extension: Uri;
  readonly #server: ServerConnection;
  #panel: WebviewPanel | undefined;
  #wanted: Wanted | undefined;
  #keys: readonly string[] = [];
  #sheet: ServerSheet | undefined;
  /** Counts the sheets that were sent, so that an answer to an older one is passed over. */
  #number = 0;
  #asked = 0;

  constructor(extension: Uri, server: ServerConnection) {
    this.#extension = extension;
    this.#server = server;
  }

  /** Of the set with this id, else of the set in the active editor, else of one that is chosen from a list. */
  async open(set: unknown): Promise<void> {
    const wanted = textIn(set) === '' ? await this.#wantedHere() : { set: textIn(set) };
    if (wanted === undefined) return;
    this.#wanted = wanted;
    this.#keys = [];
    if (this.#panel === undefined) {
      this.#take(
        window.createWebviewPanel(
          viewType,
          'Set sheet',
          { viewColumn: ViewColumn.Beside },
          {
            enableScripts: true,
            localResourceRoots: [mediaFolder(this.#extension)],
          },
        ),
      );
    } else this.#panel.reveal(undefined, false);
    await this.ask();
  }

  /** After a restart of the window: the same set as before, with nothing imagined. */
  async restore(panel: WebviewPanel, state: unknown): Promise<void> {
    const { set } = recordIn(state);
    this.#panel?.dispose();
    panel.webview.options = { enableScripts: true, localResourceRoots: [mediaFolder(this.#extension)] };
    if (textIn(set) !== '') this.#wanted = { set: textIn(set) };
    this.#take(panel);
    await this.ask();
  }

  async ask(): Promise<void> {
    if (this.#panel === undefined || this.#wanted === undefined) return;
    const asked = ++this.#asked;
    const answer = await this.#server.ask('traywright/setSheet', { ...this.#wanted, keys: this.#keys });
    if (asked === this.#asked && answer !== undefined) this.changed(answer);
  }

  changed(given: unknown): void {
    this.#sheet = isServerSheet(given) ? given : undefined;
    if (this.#sheet !== undefined) this.#wanted = { uri: this.#sheet.uri };
    this.#show();
  }

  /** Another set in the active editor takes the panel over; any other file leaves it alone. */
  async follow(uri: Uri | undefined, language: string | undefined): Promise<void> {
    if (this.#panel === undefined || uri === undefined || language !== 'traywright-rules') return;
    if (workspace.getConfiguration('traywright').get('setSheet.follow') !== true) return;
    const text = this.#server.uriText(uri);
    if (this.#sheet?.uri === text) return;
    const asked = ++this.#asked;
    const answer = await this.#server.ask('traywright/setSheet', { uri: text, keys: [] });
    if (asked !== this.#asked || !isServerSheet(answer)) return;
    this.#keys = [];
    this.changed(answer);
  }

  #take(panel: WebviewPanel): void {
    this.#panel = panel;
    panel.webview.onDidReceiveMessage((message: unknown) => {
      if (isFromPage(message)) void this.#heard(message);
    });
    panel.onDidDispose(() => {
      if (this.#panel !== panel) return;
      this.#panel = undefined;
      this.#sheet = undefined;
      void this.#server.tell('traywright/setSheetClosed', {});
    });
    panel.webview.html = sheetPage(panel.webview, this.#extension);
  }

  #show(): void {
    if (this.#panel === undefined) return;
    const sheet = this.#sheet;
    this.#panel.title = sheet === undefined ? 'Set sheet' : `Sheet: ${sheet.set}`;
    if (sheet === undefined)
      this.#say({ is: 'nothing', text: 'There is no readable set here. Open the file of a set.' });
    else this.#say({ is: 'sheet', number: ++this.#number, sheet: this.#forPage(sheet) });
  }

  #say(message: ToPage): void {
    void this.#panel?.webview.postMessage(message);
  }

  /** The page is told how a place is called, not where it lies on the disk. */
  #forPage({ uri: _uri, places, ...rest }: ServerSheet): Sheet {
    const words = places.map((place) =>
      place === null
        ? ''
        : `${workspace.asRelativePath(this.#server.uriOf(place.uri))}, line ${place.range.start.line + 1}`,
    );
    return { ...rest, places: words };
  }

  async #heard(message: FromPage): Promise<void> {
    if (message.is === 'ready') return this.#show();
    if (message.number !== this.#number) return;
    if (message.is === 'go') return this.#go(message.place);
    const offered = new Set(this.#sheet?.choices.flatMap(({ options }) => options.map(({ key }) => key)));
    this.#keys = message.keys.filter((key) => offered.has(key));
    await this.ask();
  }

  /** Only places that the server named for this sheet can be opened. */
  async #go(index: number): Promise<void> {
    const place = this.#sheet?.places[index];
    if (place === undefined || place === null) return;
    const { start, end } = place.range;
    const range = new Range(start.line, start.character, end.line, end.character);
    const beside = this.#panel?.viewColumn === ViewColumn.One ? ViewColumn.Beside : ViewColumn.One;
    const editor = await window.showTextDocument(this.#server.uriOf(place.uri), { viewColumn: beside });
    editor.selection = new Selection(range.start, range.end);
    editor.revealRange(range);
  }

  async #wantedHere(): Promise<Wanted | undefined> {
    const { document } = window.activeTextEditor ?? {};
    if (document?.languageId === 'traywright-rules') {
      const uri = this.#server.uriText(document.uri);
      const here = await this.#server.ask('traywright/setSheet', { uri, keys: [] });
      if (isServerSheet(here)) return { uri };
    }
    return this.#chosen();
  }

  async #chosen(): Promise<Wanted | undefined> {
    const sets = listIn(await this.#server.ask('traywright/sets', {})).map(recordIn);
    const items = sets.map(({ id, name, uri }) => ({ label: textIn(id), description: textIn(name), uri: textIn(uri) }));
    const chosen = await window.showQuickPick(items, {
      title: 'Set Sheet',
      placeHolder: items.length === 0 ? 'There is no set in the open folders.' : 'Of which set?',
      matchOnDescription: true,
    });
    return chosen === undefined ? undefined : { uri: chosen.uri };
  }
}
