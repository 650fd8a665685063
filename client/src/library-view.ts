import {
  commands,
  type Disposable,
  EventEmitter,
  ThemeIcon,
  type TreeDataProvider,
  TreeItem,
  TreeItemCollapsibleState,
  type TreeView,
  window,
} from 'vscode';
import { listIn, recordIn, textIn, textsIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';
import { statusNotification } from './status-item.ts';
import { counted } from './words.ts';

/** How long after a check the tree is filled again, in milliseconds: it need not follow every keystroke. */
const rest = 800;

/** The library by stage of work, in a view of its own. */
export function registerLibraryView(server: ServerConnection): readonly Disposable[] {
  const library = new LibraryTree(server);
  const view = window.createTreeView('traywright.library', { treeDataProvider: library, showCollapseAll: true });
  library.view = view;
  return [
    view,
    server.on(statusNotification, () => library.refreshSoon()),
    view.onDidChangeVisibility(({ visible }) => visible && library.refreshSoon()),
    commands.registerCommand('traywright.refreshLibrary', () => library.refresh()),
  ];
}

interface Entry {
  readonly item: TreeItem;
  children?(): Promise<readonly Entry[]>;
}

class LibraryTree implements TreeDataProvider<Entry> {
  readonly #server: ServerConnection;
  readonly #changed = new EventEmitter<undefined>();
  readonly onDidChangeTreeData = this.#changed.event;
  view: TreeView<Entry> | undefined;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(server: ServerConnection) {
    this.#server = server;
  }

  refreshSoon(): void {
    if (this.#waiting !== undefined || this.view?.visible !== true) return;
    this.#waiting = setTimeout(() => this.refresh(), rest);
  }

  refresh(): void {
    clearTimeout(this.#waiting);
    this.#waiting = undefined;
    this.#changed.fire(undefined);
  }

  getTreeItem({ item }: Entry): TreeItem {
    return item;
  }

  async getChildren(entry?: Entry): Promise<Entry[]> {
    if (entry !== undefined) return [...((await entry.children?.()) ?? [])];
    const libraries = listIn(await this.#server.ask('traywright/libraryTree', {})).map(recordIn);
    await commands.executeCommand('setContext', 'traywright.noLibrary', libraries.length === 0);
    const [only] = libraries;
    if (only !== undefined && libraries.length === 1) return [...this.#stages(only)];
    return libraries.map((library) => this.#libraryEntry(library));
  }

  #libraryEntry(library: Given): Entry {
    const item = new TreeItem(textIn(library.name), TreeItemCollapsibleState.Expanded);
    item.id = textIn(library.root);
    item.iconPath = new ThemeIcon('library');
    return { item, children: async () => this.#stages(library) };
  }

  #stages(library: Given): readonly Entry[] {
    const stages = listIn(library.stages).map(recordIn);
    return [coverageEntry(library), ...stages.map((stage) => this.#stageEntry(textIn(library.root), stage))];
  }

  #stageEntry(root: string, stage: Given): Entry {
    const item = new TreeItem(textIn(stage.title), TreeItemCollapsibleState.Collapsed);
    item.id = `${root} ${textIn(stage.id)}`;
    const late = Number(stage.overdue);
    const words = [
      counted(Number(stage.files), 'file'),
      ...(Number(stage.withFindings) > 0 ? [`${Number(stage.withFindings)} with findings`] : []),
      ...(late > 0 ? [`${counted(late, 'review')} late`] : []),
    ];
    item.description = words.join(' · ');
    item.tooltip = `${words.join(', ')}. ${countWords(recordIn(stage.counts))}`;
    item.accessibilityInformation = { label: `${textIn(stage.title)}: ${words.join(', ')}` };
    return { item, children: () => this.#files(root, textIn(stage.id)) };
  }

  async #files(root: string, stage: string): Promise<readonly Entry[]> {
    const files = await this.#server.ask('traywright/libraryTree', { root, stage });
    return listIn(files).map((file) => this.#fileEntry(recordIn(file)));
  }

  #fileEntry(file: Given): Entry {
    const uri = this.#server.uriOf(textIn(file.uri));
    const item = new TreeItem(textIn(file.label), TreeItemCollapsibleState.None);
    const counts = recordIn(file.counts);
    const words = [...countedFindings(counts), ...(file.overdue === true ? ['review late'] : [])];
    item.id = uri.toString();
    item.resourceUri = uri;
    item.iconPath = new ThemeIcon(Number(counts.error) > 0 ? 'error' : words.length > 0 ? 'warning' : 'file');
    item.description = words.join(' · ');
    item.tooltip = `${textIn(file.detail)}\n${textIn(file.path)}\n${countWords(counts)}`;
    item.accessibilityInformation = { label: [textIn(file.label), textIn(file.detail), ...words].join(', ') };
    item.command = { command: 'vscode.open', title: 'Open', arguments: [uri] };
    return { item };
  }
}

type Given = Readonly<Record<string, unknown>>;

/** "No finding" means little for a library that holds few of its devices. */
function coverageEntry(library: Given): Entry {
  const coverage = recordIn(library.coverage);
  const missing = textsIn(coverage.missing);
  const unread = textsIn(coverage.unreadable);
  const gaps = missing.length + unread.length > 0;
  const state = gaps ? TreeItemCollapsibleState.Collapsed : TreeItemCollapsibleState.None;
  const words = `${Number(coverage.encoded)} of ${Number(coverage.named)} device families in sets`;
  const item = new TreeItem('Encoded', state);
  item.id = `${textIn(library.root)} coverage`;
  item.description = words;
  item.tooltip = 'No finding means little for devices that nobody has encoded.';
  item.accessibilityInformation = { label: `Encoded: ${words}` };
  const gap = (id: string, why: string): Entry => {
    const one = new TreeItem(id, TreeItemCollapsibleState.None);
    one.description = why;
    one.iconPath = new ThemeIcon('circle-slash');
    one.accessibilityInformation = { label: `${id}: ${why}` };
    return { item: one };
  };
  const children = async (): Promise<readonly Entry[]> => [
    ...missing.map((id) => gap(id, 'named in a set, no file')),
    ...unread.map((id) => gap(id, 'the file cannot be read')),
  ];
  return { item, children };
}

function countedFindings(counts: Given): readonly string[] {
  const words = [
    [Number(counts.error), 'error'],
    [Number(counts.warning), 'warning'],
  ] as const;
  const advice = Number(counts.advice);
  return [
    ...words.flatMap(([count, word]) => (count > 0 ? [counted(count, word)] : [])),
    ...(advice > 0 ? [`${advice} advice`] : []),
  ];
}

function countWords(counts: Given): string {
  const words = countedFindings(counts);
  return words.length === 0 ? 'No findings.' : `${words.join(', ')}.`;
}
