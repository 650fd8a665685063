import type { FileId } from '../base/brand.ts';
import { Engine } from '../check/engine.ts';
import { filesSince } from '../host/git-changes.ts';
import { documentsChangedSince } from '../host/git-documents.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { keptPathsIn } from '../library/kept-paths.ts';
import { fileIdOf, libraryFileName } from '../library/listed-files.ts';
import { recordOf } from '../library/loaded-file.ts';
import { allRules } from '../rules/all.generated.ts';

/**
 * The files that differ from what was recorded at `revision`, and those whose findings may differ because of them. Found by taking the
 * library from its state then to its state now, a file at a time, and asking the engine which files each step touches. A document that the
 * library keeps counts too: files that cite it are touched when it changes.
 */
export function changedFiles(
  found: FoundLibrary,
  now: Engine,
  revision: string,
): { readonly files: ReadonlySet<FileId> } | { readonly why: string } {
  const before = filesSince(found.root, revision);
  if ('why' in before) return before;
  const engine = new Engine({ rules: allRules, today: now.view().today });
  for (const loaded of before.files) engine.put(recordOf(loaded));
  for (const file of engine.library.files()) engine.findings(file);
  // The library's own file has a say in everything: settings, the day, folders left out.
  if (differs(fileIdOf(libraryFileName), engine, now)) return { files: new Set(now.library.files()) };
  const touched = new Set<FileId>();
  for (const file of new Set([...engine.library.files(), ...now.library.files()])) {
    if (!differs(file, engine, now)) continue;
    const record = now.library.record(file);
    touched.add(file);
    for (const other of record === undefined ? engine.delete(file) : engine.put(record)) touched.add(other);
  }
  const documents = keptPathsIn(now.view()).filter((path) => now.library.keptFile(path) !== undefined);
  const changed = documentsChangedSince(found.root, before.commit, documents);
  if ('why' in changed) return changed;
  // Whose findings depend on the document is known by who asked for it, found or not.
  for (const path of changed) for (const file of engine.keep(path, now.library.keptFile(path))) touched.add(file);
  return { files: touched };
}

/** By their lines: git may turn line ends on the way to the disk. A file that can't be read now is always worth a word. */
function differs(file: FileId, before: Engine, now: Engine): boolean {
  const [old, record] = [before.library.record(file), now.library.record(file)];
  if (old === undefined || record === undefined || record.text === '') return true;
  return old.text.replaceAll('\r\n', '\n') !== record.text.replaceAll('\r\n', '\n');
}
