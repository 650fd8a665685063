import { commands, type Disposable, type ExtensionContext, FileType, Uri, window, workspace } from 'vscode';
import { tourAfterwards } from './tour.ts';
import { type CopySystem, copyWhole } from './whole-copy.ts';

/** The invented department that comes with the extension: a copy is opened, so that anything may be tried on it. */
export function registerDemo(context: ExtensionContext): Disposable {
  const from = Uri.joinPath(context.extensionUri, 'samples', 'lanternfield');
  return commands.registerCommand('traywright.openDemo', (begun: unknown) =>
    openDemo(from, async (to) => {
      if (begun === 'in the tour') await tourAfterwards(context, to);
    }),
  );
}

async function openDemo(from: Uri, beforeOpening: (to: Uri) => Promise<void>): Promise<void> {
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
  const { to, unfinished } = await freeNames(chosen);
  try {
    await copyWhole(editorFiles, { from, to, unfinished, last: 'library.ifu.yaml' });
  } catch (reason) {
    void window.showErrorMessage(`Traywright: the demo could not be copied to ${to.fsPath}. ${String(reason)}`);
    return;
  }
  await beforeOpening(to);
  await commands.executeCommand('vscode.openFolder', to);
}

/** Nothing that is there already is touched. */
async function freeNames(folder: Uri): Promise<{ readonly to: Uri; readonly unfinished: Uri }> {
  for (let number = 1; ; number++) {
    const name = number === 1 ? 'lanternfield-demo' : `lanternfield-demo-${number}`;
    const [to, unfinished] = [Uri.joinPath(folder, name), Uri.joinPath(folder, `${name} (unfinished copy)`)];
    if (!(await exists(to)) && !(await exists(unfinished))) return { to, unfinished };
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

const editorFiles: CopySystem<Uri> = {
  child: (folder, name) => Uri.joinPath(folder, name),
  list: async (folder) =>
    (await workspace.fs.readDirectory(folder)).map(([name, type]) => [
      name,
      type === FileType.Directory ? 'folder' : type === FileType.File ? 'file' : 'other',
    ]),
  makeFolder: async (folder) => workspace.fs.createDirectory(folder),
  copyFile: async (from, to) => workspace.fs.writeFile(to, await workspace.fs.readFile(from)),
  rename: async (from, to) => workspace.fs.rename(from, to, { overwrite: false }),
  remove: async (folder) => workspace.fs.delete(folder, { recursive: true }),
};
