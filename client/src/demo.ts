import { commands, type Disposable, type ExtensionContext, FileType, Uri, window, workspace } from 'vscode';

/** The invented department that comes with the extension: a copy is opened, so that anything may be tried on it. */
export function registerDemo(context: ExtensionContext): readonly Disposable[] {
  const from = Uri.joinPath(context.extensionUri, 'samples', 'lanternfield');
  const tour = `${context.extension.id}#traywright.tour`;
  return [
    commands.registerCommand('traywright.openDemo', () => openDemo(from)),
    commands.registerCommand('traywright.openTour', () =>
      commands.executeCommand('workbench.action.openWalkthrough', tour),
    ),
  ];
}

async function openDemo(from: Uri): Promise<void> {
  const here = workspace.workspaceFolders?.[0]?.uri;
  const [chosen] =
    (await window.showOpenDialog({
      title: 'Where should the copy of the demo department go?',
      openLabel: 'Copy It Here',
      canSelectFiles: false,
      canSelectFolders: true,
      ...(here && { defaultUri: Uri.joinPath(here, '..') }),
    })) ?? [];
  if (chosen === undefined) return;
  const to = await freeName(chosen);
  // Under another name until it is whole, should the window be closed meanwhile.
  const half = to.with({ path: `${to.path}-unfinished` });
  try {
    await copy(from, half);
    await workspace.fs.rename(half, to, { overwrite: false });
  } catch (reason) {
    void window.showErrorMessage(`Traywright: the demo could not be copied to ${to.fsPath}. ${String(reason)}`);
    return;
  }
  await commands.executeCommand('vscode.openFolder', to);
}

/** Nothing that is there already is touched. */
async function freeName(folder: Uri): Promise<Uri> {
  for (let number = 1; ; number++) {
    const uri = Uri.joinPath(folder, number === 1 ? 'lanternfield-demo' : `lanternfield-demo-${number}`);
    if (!(await exists(uri))) return uri;
  }
}

async function exists(uri: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(uri);
    return true;
  } catch {
    return false;
  }
}

/** File by file: the folder of an extension may lie on another computer than the chosen one. */
async function copy(from: Uri, to: Uri): Promise<void> {
  await workspace.fs.createDirectory(to);
  for (const [name, type] of await workspace.fs.readDirectory(from)) {
    const [source, target] = [Uri.joinPath(from, name), Uri.joinPath(to, name)];
    if (type === FileType.Directory) await copy(source, target);
    else if (type === FileType.File) await workspace.fs.writeFile(target, await workspace.fs.readFile(source));
  }
}
