import { type FSWatcher, watch } from 'node:fs';

/** Changes that come within this many milliseconds are one change: an editor that saves writes several times. */
const settling = 100;

/**
 * Calls `then` after something below the folders (absolute) has changed and come to rest. The system tells of changes; nothing is asked again
 * and again. Resolves when the person ends the program (Ctrl-C); `why` when a folder can't be watched.
 */
export function watchFolders(folders: readonly string[], then: () => void): Promise<{ readonly why?: string }> {
  return new Promise((resolve) => {
    const watchers: FSWatcher[] = [];
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const end = (result: { why?: string }): void => {
      clearTimeout(waiting);
      for (const watcher of watchers) watcher.close();
      process.off('SIGINT', interrupted);
      process.off('SIGTERM', interrupted);
      resolve(result);
    };
    const interrupted = (): void => end({});
    const changed = (): void => {
      clearTimeout(waiting);
      waiting = setTimeout(then, settling);
    };
    process.on('SIGINT', interrupted);
    process.on('SIGTERM', interrupted);
    try {
      for (const folder of folders)
        watchers.push(watch(folder, { recursive: true }, changed).on('error', () => changed()));
    } catch {
      end({ why: 'this system tells of no changes in the folder, so it cannot be watched' });
    }
  });
}
