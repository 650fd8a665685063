import type { Connection, FileEvent } from 'vscode-languageserver';
import { DidChangeWatchedFilesNotification, FileChangeType, WatchKind } from 'vscode-languageserver';
import type { DiskChange } from './libraries.ts';

/**
 * Asks the client to tell of changes on disk: of rule files everything; of any other name only that it is gone, since a folder that goes
 * takes its files along without a word about each.
 */
export function watchRuleFiles(connection: Connection): void {
  const watchers = [{ globPattern: '**/*.ifu.yaml' }, { globPattern: '**', kind: WatchKind.Delete }];
  connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }).catch(() => undefined);
}

/** What the client tells, in our words. Anything that is neither a rule file nor gone is left out. */
export function changesOf(events: readonly FileEvent[]): { readonly uri: string; readonly how: DiskChange['how'] }[] {
  const changes: { uri: string; how: DiskChange['how'] }[] = [];
  for (const { uri, type } of events) {
    if (typeof uri !== 'string') continue;
    if (type === FileChangeType.Changed) changes.push({ uri, how: 'written' });
    else changes.push({ uri, how: 'came-or-went' });
  }
  return changes;
}
