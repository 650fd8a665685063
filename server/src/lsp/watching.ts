import type { Connection, FileEvent } from 'vscode-languageserver';
import { DidChangeWatchedFilesNotification, FileChangeType, WatchKind } from 'vscode-languageserver';
import type { DiskChange } from './libraries.ts';

/**
 * Asks the client to tell of changes on disk: of rule files everything; of any other name that it came or went, since a folder takes its
 * files along without a word about each.
 */
export function watchRuleFiles(connection: Connection): void {
  const watchers = [
    { globPattern: '**/*.ifu.yaml' },
    { globPattern: '**/*.{pdf,PDF}' },
    { globPattern: '**', kind: WatchKind.Create | WatchKind.Delete },
  ];
  connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }).catch(() => undefined);
}

/** What the client tells, in our words. */
export function changesOf(events: readonly FileEvent[]): { readonly uri: string; readonly how: DiskChange['how'] }[] {
  const changes: { uri: string; how: DiskChange['how'] }[] = [];
  for (const { uri, type } of events) {
    if (typeof uri !== 'string') continue;
    if (type === FileChangeType.Changed) changes.push({ uri, how: 'written' });
    else if (type === FileChangeType.Created && !uri.endsWith('.ifu.yaml')) changes.push({ uri, how: 'other-came' });
    else changes.push({ uri, how: 'came-or-went' });
  }
  return changes;
}
