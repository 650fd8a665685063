import { type FSWatcher, readdirSync, watch } from 'node:fs';
import { join } from 'node:path';

/** Changes that come within this many milliseconds are one change: an editor that saves writes several times. */
const settling = 100;

/** Changes that do not end are looked at after this many milliseconds all the same. */
const longestWait = 1_000;

/**
 * Calls `begun` once everything is watched, and `then` soon after it and after anything below the folders (absolute) has changed and come to rest. The
 * system tells of changes; nothing is asked again and again. Resolves when the person ends the program (Ctrl-C); `why` when a folder can't be watched.
 */
export function watchFolders(
  folders: readonly string[],
  then: () => void,
  begun: () => void,
): Promise<{ readonly why?: string }> {
  return new Promise((resolve) => {
    const burst = new Burst(() => {
      // First, so that what is written into a new folder from now on is told, and what was written before is read.
      watched.renew();
      then();
    });
    const watched = new WatchedFolders(folders, () => burst.add());
    const end = (result: { why?: string }): void => {
      burst.end();
      watched.end();
      process.off('SIGINT', interrupted);
      process.off('SIGTERM', interrupted);
      resolve(result);
    };
    const interrupted = (): void => end({});
    process.on('SIGINT', interrupted);
    process.on('SIGTERM', interrupted);
    try {
      watched.renew();
      begun();
      // What changed after it was read and before it was watched is not lost.
      burst.add();
    } catch {
      end({ why: 'this system tells of no changes in the folder, so it cannot be watched' });
    }
  });
}

/** Where the system itself tells of everything below a folder. Elsewhere each folder is watched: Node's stand-in misses files that are replaced. */
const tellsOfAllBelow = process.platform === 'darwin' || process.platform === 'win32';

class WatchedFolders {
  readonly #roots: readonly string[];
  readonly #changed: () => void;
  readonly #watchers = new Map<string, FSWatcher>();

  constructor(roots: readonly string[], changed: () => void) {
    this.#roots = roots;
    this.#changed = changed;
  }

  /** Takes new folders in and lets go of those that are gone. */
  renew(): void {
    const folders = new Set(tellsOfAllBelow ? this.#roots : this.#roots.flatMap(foldersFrom));
    for (const [folder, watcher] of this.#watchers) {
      if (folders.has(folder)) continue;
      watcher.close();
      this.#watchers.delete(folder);
    }
    for (const folder of folders) if (!this.#watchers.has(folder)) this.#watchers.set(folder, this.#watch(folder));
  }

  end(): void {
    for (const watcher of this.#watchers.values()) watcher.close();
    this.#watchers.clear();
  }

  #watch(folder: string): FSWatcher {
    const watcher = watch(folder, { recursive: tellsOfAllBelow }, (_, name) => {
      if (name === null || concerns(name)) this.#changed();
    });
    return watcher.on('error', () => this.#changed());
  }
}

const passedOver: ReadonlySet<string> = new Set(['.git', 'node_modules']);

function concerns(path: string): boolean {
  const parts = path.split(/[\\/]/);
  return !parts.some((part) => passedOver.has(part)) && parts.at(-1)?.endsWith('.tmp') !== true;
}

/** The folder and all below it; no link is followed. One that is gone meanwhile has none. */
function foldersFrom(root: string): readonly string[] {
  const folders: string[] = [root];
  for (const folder of folders) {
    try {
      for (const entry of readdirSync(folder, { withFileTypes: true }))
        if (entry.isDirectory() && !passedOver.has(entry.name)) folders.push(join(folder, entry.name));
    } catch {
      // Gone or closed to us: the check itself says so.
    }
  }
  return folders;
}

/** Many changes close together are one. */
class Burst {
  readonly #over: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #since = 0;

  constructor(over: () => void) {
    this.#over = over;
  }

  add(): void {
    if (this.#timer === undefined) this.#since = performance.now();
    else if (performance.now() - this.#since > longestWait) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      this.#over();
    }, settling);
  }

  end(): void {
    clearTimeout(this.#timer);
  }
}
