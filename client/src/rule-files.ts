import { FileType, Uri, workspace } from 'vscode';

const passedOver: ReadonlySet<string> = new Set(['node_modules', '.git']);

/** A folder that holds more is no library, and going through it would never end. */
const mostFolders = 20_000;

/**
 * The rule files of the open folders, by going through them. VS Code's own search is not asked: for a folder that lies on no disk it waits, without
 * end, for somebody who can search there. Links are not followed.
 */
export async function ruleFiles(): Promise<readonly Uri[]> {
  const found: Uri[] = [];
  const folders = (workspace.workspaceFolders ?? []).map(({ uri }) => uri);
  for (let next = 0; next < folders.length && next < mostFolders; next++) {
    const here = folders[next];
    if (here === undefined) break;
    for (const [name, type] of await entriesOf(here)) {
      if (type === FileType.Directory && !passedOver.has(name)) folders.push(Uri.joinPath(here, name));
      if (type === FileType.File && name.endsWith('.ifu.yaml')) found.push(Uri.joinPath(here, name));
    }
  }
  return found;
}

/** Of a folder that can't be read: nothing. */
async function entriesOf(folder: Uri): Promise<readonly [string, FileType][]> {
  try {
    return await workspace.fs.readDirectory(folder);
  } catch {
    return [];
  }
}
