import { glimpseOf, libraryFileName, openingProblem, ruleFilesOf } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { decodeBytes } from '../syntax/decode.ts';
import type { Disk, FileOnDisk, LibraryOnDisk } from './disk.ts';
import type { DiskChange } from './libraries.ts';
import { fieldIn } from './params.ts';
import { addressOf, isWithin, pathOfUri } from './uris.ts';

/** Four megabytes as the client sends them: longer ones are refused unread. */
const longestBase64 = 5_400_000;
const mostFiles = 50_000;

type Held = { readonly bytes: Uint8Array } | { readonly refused: 'too-large' | 'unreadable' | 'not-ordinary' };

/** A disk for a server that has none (in a browser): it holds what the client has sent of the open folders, and nothing else. */
export class MemoryDisk implements Disk {
  readonly #files = new Map<string, Held>();

  /** Takes in what a client sends: `{files: [{uri, base64} | {uri, refused} | {uri, gone: true}]}`. Answers which files changed, and how. */
  take(params: unknown): readonly { readonly uri: string; readonly how: DiskChange['how'] }[] {
    const sent = fieldIn(params, 'files');
    if (!Array.isArray(sent)) return [];
    return sent.flatMap((one: unknown) => this.#takeOne(one) ?? []);
  }

  realFolder(folder: string): string {
    return folder;
  }

  librariesFor(path: string): readonly LibraryOnDisk[] {
    const roots = this.#roots();
    const below = path.endsWith('.ifu.yaml') ? [] : roots.filter((root) => isWithin(path, root));
    const around = roots.filter((root) => root !== path && isWithin(root, path));
    return (below.length > 0 ? below : around).flatMap((root) => this.list(root) ?? []);
  }

  list(root: string): LibraryOnDisk | undefined {
    if (!this.#files.has(`${root}/${libraryFileName}`)) return undefined;
    const ruleFiles = [...this.#files.keys()]
      .filter((path) => path.startsWith(`${root}/`))
      .map((path) => path.slice(root.length + 1));
    return { root, files: ruleFilesOf({ ruleFiles, refused: [], unreadableFolders: [] }) };
  }

  load(root: string, { file, path, problems }: FileOnDisk): LoadedFile {
    const held = this.#files.get(`${root}/${path}`);
    if (problems.some(({ rule }) => rule === 'library-inside-library')) return { file, text: undefined, problems };
    if (held === undefined) return { file, text: undefined, problems: [...problems, openingProblem('gone')] };
    if ('refused' in held) return { file, text: undefined, problems: [...problems, openingProblem(held.refused)] };
    const decoded = decodeBytes(held.bytes);
    if ('text' in decoded) return { file, text: decoded.text, problems };
    return { file, text: undefined, problems: [...problems, decoded.problem], glimpse: glimpseOf(held.bytes) };
  }

  /** Folders with a library file that lie in no other such folder, the outermost first. */
  #roots(): readonly string[] {
    const holders = [...this.#files.keys()]
      .filter((path) => path.endsWith(`/${libraryFileName}`))
      .map((path) => path.slice(0, -libraryFileName.length - 1))
      .sort((a, b) => a.length - b.length);
    const roots: string[] = [];
    for (const holder of holders) if (!roots.some((root) => isWithin(root, holder))) roots.push(holder);
    return roots;
  }

  #takeOne(sent: unknown): { uri: string; how: DiskChange['how'] } | undefined {
    const uri = fieldIn(sent, 'uri');
    const path = typeof uri === 'string' ? pathOfUri(uri) : undefined;
    if (typeof uri !== 'string' || path?.endsWith('.ifu.yaml') !== true) return undefined;
    if (fieldIn(sent, 'gone') === true) {
      return this.#files.delete(path) ? { uri: addressOf(uri), how: 'came-or-went' } : undefined;
    }
    const isNew = !this.#files.has(path);
    if (isNew && this.#files.size >= mostFiles) return undefined;
    this.#files.set(path, heldIn(sent));
    return { uri: addressOf(uri), how: isNew ? 'came-or-went' : 'written' };
  }
}

function heldIn(sent: unknown): Held {
  const base64 = fieldIn(sent, 'base64');
  const refused = fieldIn(sent, 'refused');
  if (typeof base64 !== 'string')
    return { refused: refused === 'too-large' || refused === 'not-ordinary' ? refused : 'unreadable' };
  if (base64.length > longestBase64) return { refused: 'too-large' };
  try {
    return { bytes: Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)) };
  } catch {
    return { refused: 'unreadable' };
  }
}
