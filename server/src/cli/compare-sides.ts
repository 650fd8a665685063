import type { IsoDate } from '../base/brand.ts';
import { filesAtRevision } from '../host/git.ts';
import { findLibraries } from '../host/library-search.ts';
import { filesIn, lookAtPath, type Named } from '../host/loose-files.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { Library } from '../library/library.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import type { Extent } from '../revision/libraries.ts';
import { libraryOf, recordsOf } from '../revision/sides.ts';
import type { Arguments } from './arguments.ts';
import { labelOf } from './library-report.ts';

/** The two sides that a command line names, read. */
export interface Sides {
  readonly before: readonly FileRecord[];
  readonly after: readonly FileRecord[];
  readonly extent: Extent;
  /** The department in the state before; none where two loose files or folders are compared. */
  readonly library?: Library;
  readonly labels: { readonly old: string; readonly now: string; readonly department: string };
}

export type SidesOrWhy = Sides | { readonly why: string };

/** Two paths; or, with `--from`, two recorded states of one library (the second is the disk as it is now, unless `--to` names one). */
export function sidesOf(given: Arguments, cwd: string, today: IsoDate): SidesOrWhy {
  const [from, to] = [given.values.get('from'), given.values.get('to')];
  if (from === undefined && to !== undefined)
    return { why: '--to needs --from: name both states, or --from alone to compare with the files as they are now.' };
  if (from !== undefined) return recordedSides(given, cwd, from, to, today);
  const [old, now, more] = given.operands;
  if (old === undefined || now === undefined || more !== undefined)
    return { why: 'name two files or folders, the old one first; or --from and a recorded state.' };
  return pathSides(old, now, given, cwd, today);
}

function recordedSides(
  given: Arguments,
  cwd: string,
  from: string,
  to: string | undefined,
  today: IsoDate,
): SidesOrWhy {
  if (given.operands.length > 1) return { why: 'with --from, name one library at most.' };
  const root = libraryRoot(given.operands[0] ?? given.values.get('library') ?? '.', cwd);
  if (root === undefined) return { why: 'there is no library here: a folder with a file "library.ifu.yaml".' };
  const old = filesAtRevision(root, from);
  if ('why' in old) return old;
  const now = to === undefined ? { files: filesOnDisk(root) } : filesAtRevision(root, to);
  if ('why' in now) return now;
  const before = recordsOf(old.files, today);
  const library = libraryOf(before);
  const name = labelOf(root, cwd);
  const labels = {
    old: `${name} at ${from}`,
    now: to === undefined ? `${name} as it is now` : `${name} at ${to}`,
    department: derivedFor(`${name} at ${from}`),
  };
  return { before, after: recordsOf(now.files, today), extent: 'whole', library, labels };
}

function derivedFor(name: string): string {
  return `Effects are derived for ${name}.`;
}

function libraryRoot(path: string, cwd: string): string | undefined {
  const { libraries } = findLibraries([path], cwd);
  return libraries.length === 1 ? libraries[0]?.root : undefined;
}

function filesOnDisk(root: string): readonly LoadedFile[] {
  const named = lookAtPath(root, root);
  return named.is === 'library' || named.is === 'folder' ? filesIn(named.root, named.listing) : [];
}

function pathSides(old: string, now: string, given: Arguments, cwd: string, today: IsoDate): SidesOrWhy {
  const [first, second] = [lookAtPath(old, cwd), lookAtPath(now, cwd)];
  if (first.is === 'nothing') return first;
  if (second.is === 'nothing') return second;
  if ((first.is === 'file') !== (second.is === 'file'))
    return { why: 'name two files or two folders, not one of each.' };
  const before = recordsOf(filesNamed(first), today);
  const after = recordsOf(filesNamed(second), today);
  const root = departmentRoot(first, old, given, cwd);
  if (root === 'missing') return { why: `there is no library at "${given.values.get('library') ?? ''}".` };
  const library =
    root === undefined
      ? undefined
      : libraryOf(first.is === 'library' && first.root === root ? before : recordsOf(filesOnDisk(root), today));
  const extent = first.is === 'file' ? 'pair' : first.is === 'library' && second.is === 'library' ? 'whole' : 'part';
  const department =
    root === undefined
      ? 'No library lies around the old side, so no effects were derived; --library names one.'
      : derivedFor(labelOf(root, cwd));
  return { before, after, extent, ...(library && { library }), labels: { old, now, department } };
}

function filesNamed(named: Exclude<Named, { readonly is: 'nothing' }>): readonly LoadedFile[] {
  return named.is === 'file' ? named.files : filesIn(named.root, named.listing);
}

/** The library that `--library` names; else the old side itself, or the one around it. */
function departmentRoot(named: Named, path: string, given: Arguments, cwd: string): string | undefined | 'missing' {
  const asked = given.values.get('library');
  if (asked !== undefined) return libraryRoot(asked, cwd) ?? 'missing';
  return named.is === 'library' ? named.root : libraryRoot(path, cwd);
}
