import { loadFile } from '../host/library-files.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { realFolder } from '../host/real-folder.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { ruleFilesOf } from '../library/listed-files.ts';
import type { Disk, FileOnDisk, LibraryOnDisk } from './disk.ts';

/** The computer's own disk. */
export const nodeDisk: Disk = {
  realFolder: (folder) => {
    const real = realFolder(folder);
    return real === undefined ? undefined : slashed(real);
  },
  librariesFor: (path) => findLibraries([path], '/').libraries.map(onDisk),
  list: (root) => {
    const found = findLibraries([root], '/').libraries.find((library) => slashed(library.root) === root);
    return found === undefined ? undefined : onDisk(found);
  },
  load: (root, file) => loadFile(root, asListed(file)),
};

function onDisk({ root, listing }: FoundLibrary): LibraryOnDisk {
  return { root: slashed(root), files: ruleFilesOf(listing) };
}

function asListed(file: FileOnDisk): ListedFile {
  return { opens: 'yes', ...file };
}

function slashed(path: string): string {
  return path.replaceAll('\\', '/').replace(/^([A-Z]):/, (_, drive: string) => `${drive.toLowerCase()}:`);
}
