import type { FileId } from '../base/brand.ts';
import { Engine } from '../check/engine.ts';
import { filesSince } from '../host/git-changes.ts';
import { documentsChangedSince } from '../host/git-documents.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { keptPathsIn } from '../library/kept-paths.ts';
import { fileIdOf, libraryFileName } from '../library/listed-files.ts';
import { recordOf } from '../library/loaded-file.ts';
import type { Cause } from '../report/model.ts';
import { allRules } from '../rules/all.generated.ts';

/**
 * The files that differ from what was recorded at `revision`, and those whose findings may differ because of them. Found by taking the
 * library from its state then to its state now, a file at a time, and asking the engine which files each step touches. A document that the
 * library keeps counts too: files that cite it are touched when it changes. With each file the first step that touched it, its own before
 * others.
 */
export function changedFiles(
  found: FoundLibrary,
  now: Engine,
  revision: string,
): { readonly files: ReadonlyMap<FileId, Cause> } | { readonly why: string } {
  const before = filesSince(found.root, revision);
  if ('why' in before) return before;
  const engine = new Engine({ rules: allRules, today: now.view().today });
  for (const loaded of before.files) engine.put(recordOf(loaded));
  engine.judgeAll(engine.library.files());
  // The library's own file has a say in everything: settings, the day, folders left out.
  const settings = fileIdOf(libraryFileName);
  if (differs(settings, engine, now)) {
    const cause: Cause = { file: settings, change: changeOf(settings, engine, now) };
    return { files: new Map([...now.library.files()].map((file) => [file, cause])) };
  }
  const own = new Map<FileId, Cause>();
  const others = new Map<FileId, Cause>();
  for (const file of new Set([...engine.library.files(), ...now.library.files()])) {
    if (!differs(file, engine, now)) continue;
    const record = now.library.record(file);
    const cause: Cause = { file, change: changeOf(file, engine, now) };
    own.set(file, cause);
    addTo(others, record === undefined ? engine.delete(file) : engine.put(record), cause);
  }
  const documents = keptPathsIn(now.view()).filter((path) => now.library.keptFile(path) !== undefined);
  const changed = documentsChangedSince(found.root, before.commit, documents);
  if ('why' in changed) return changed;
  // Whose findings depend on the document is known by who asked for it, found or not.
  for (const path of changed)
    addTo(others, engine.keep(path, now.library.keptFile(path)), { file: path, change: 'changed' });
  return { files: new Map([...others, ...own]) };
}

function addTo(causes: Map<FileId, Cause>, files: readonly FileId[], cause: Cause): void {
  for (const file of files) if (!causes.has(file)) causes.set(file, cause);
}

function changeOf(file: FileId, before: Engine, now: Engine): Cause['change'] {
  if (now.library.record(file) === undefined) return 'gone';
  return before.library.record(file) === undefined ? 'new' : 'changed';
}

/** By their lines: git may turn line ends on the way to the disk. A file that can't be read now is always worth a word. */
function differs(file: FileId, before: Engine, now: Engine): boolean {
  const [old, record] = [before.library.record(file), now.library.record(file)];
  if (old === undefined || record === undefined || record.text === '') return true;
  return old.text.replaceAll('\r\n', '\n') !== record.text.replaceAll('\r\n', '\n');
}
