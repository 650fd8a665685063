// A folder that lies on no disk, for the test of VS Code as a page without a server: its files are fetched once and then kept in memory.
const vscode = require('vscode');

exports.activate = async (context) => {
  const answer = await fetch(vscode.Uri.joinPath(context.extensionUri, '../../folder.json').toString(true));
  const files = new Map(
    Object.entries(await answer.json()).map(([path, text]) => [path, new TextEncoder().encode(text)]),
  );
  const changed = new vscode.EventEmitter();
  const isFolder = (path) => [...files.keys()].some((file) => file.startsWith(path === '/' ? path : `${path}/`));
  const provider = {
    onDidChangeFile: changed.event,
    watch: () => new vscode.Disposable(() => undefined),
    stat: ({ path }) => {
      const file = files.get(path);
      if (file !== undefined)
        return { type: vscode.FileType.File, ctime: 0, mtime: file.stamp ?? 1, size: file.length };
      if (isFolder(path)) return { type: vscode.FileType.Directory, ctime: 0, mtime: 1, size: 0 };
      throw vscode.FileSystemError.FileNotFound(path);
    },
    readDirectory: ({ path }) => {
      const entries = new Map();
      const start = path === '/' ? path : `${path}/`;
      for (const file of files.keys()) {
        if (!file.startsWith(start)) continue;
        const [name, ...below] = file.slice(start.length).split('/');
        entries.set(name, below.length > 0 ? vscode.FileType.Directory : vscode.FileType.File);
      }
      return [...entries];
    },
    readFile: ({ path }) => {
      const file = files.get(path);
      if (file === undefined) throw vscode.FileSystemError.FileNotFound(path);
      return file;
    },
    writeFile: (uri, content) => {
      const isNew = !files.has(uri.path);
      files.set(uri.path, Object.assign(new Uint8Array(content), { stamp: Date.now() }));
      changed.fire([{ type: isNew ? vscode.FileChangeType.Created : vscode.FileChangeType.Changed, uri }]);
    },
    createDirectory: () => undefined,
    delete: (uri) => {
      for (const file of [...files.keys()])
        if (file === uri.path || file.startsWith(`${uri.path}/`)) files.delete(file);
      changed.fire([{ type: vscode.FileChangeType.Deleted, uri }]);
    },
    rename: () => {
      throw vscode.FileSystemError.NoPermissions('not in this test');
    },
  };
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider('virtual', provider, { isCaseSensitive: true }),
  );
};
