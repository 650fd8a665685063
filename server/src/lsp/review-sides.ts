import type { IsoDate } from '../base/brand.ts';
import { fileId } from '../base/brand.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { Library } from '../library/library.ts';
import { recordOf } from '../library/loaded-file.ts';
import { acceptedBy } from '../revision/accepted.ts';
import type { Extent } from '../revision/libraries.ts';
import { libraryOf, recordsOf } from '../revision/sides.ts';
import type { History } from './disk.ts';
import type { OpenLibrary } from './open-library.ts';
import { isWithin } from './uris.ts';

/** Two states to review. */
export interface ReviewSides {
  readonly before: readonly FileRecord[];
  readonly after: readonly FileRecord[];
  readonly extent: Extent;
  readonly library: OpenLibrary;
  /** For which effects are derived: the library in the state before. */
  readonly department: Library;
  readonly old: string;
  readonly now: string;
  /** Absolute path of the folder in which the new side's files lie. */
  readonly folder: string;
  /** The one file that the review is about; without it, all of them. */
  readonly asked?: FileRecord;
}

export type ReviewSidesOrWhy = ReviewSides | { readonly why: string };

/** How far back a file's own history is looked through for a state that somebody accepted. */
const mostStates = 60;

/** The library as it is in the editor against what was recorded of it: of one file the state accepted last, else the state recorded last. */
export function recordedSides(
  library: OpenLibrary,
  record: FileRecord | undefined,
  history: History | undefined,
  today: IsoDate,
): ReviewSidesOrWhy {
  if (history === undefined) return { why: 'Earlier states of a library can’t be read here.' };
  const accepted = record === undefined ? undefined : lastAccepted(library, record, history);
  const old = history.filesAt(library.root, accepted?.name ?? 'last');
  if ('why' in old) return { why: plainWhy(old.why) };
  const before = recordsOf(old.files, today);
  return {
    before,
    department: libraryOf(before),
    after: recordsNow(library),
    extent: 'whole',
    library,
    old: accepted?.words ?? lastWords(library, history),
    now: 'as it is now',
    folder: library.root,
    ...(record && { asked: record }),
  };
}

/** The same earlier state against the library as it is by now. */
export function sidesByNow(sides: ReviewSides): ReviewSides {
  const { library, asked } = sides;
  const again = asked === undefined ? undefined : (library.engine.library.record(asked.file) ?? asked);
  return { ...sides, after: recordsNow(library), ...(again && { asked: again }) };
}

function plainWhy(why: string): string {
  return /"HEAD"/.test(why)
    ? 'Nothing of this library was recorded yet, so there is no earlier state to compare with.'
    : why;
}

function recordsNow({ engine }: OpenLibrary): readonly FileRecord[] {
  return engine.library.files().flatMap((file) => engine.library.record(file) ?? []);
}

/** The newest recorded state of the file whose content a complete sign-off took over. */
function lastAccepted(
  library: OpenLibrary,
  { file }: FileRecord,
  history: History,
): { readonly name: string; readonly words: string } | undefined {
  const records = library.engine.view().all('sign-off');
  if (records.length === 0) return undefined;
  const states = history.statesOf(library.root, [file], mostStates);
  if ('why' in states) return undefined;
  for (const { name, day } of states) {
    const text = history.textAt(library.root, name, file);
    const entity = text === undefined ? undefined : recordOf({ file, text, problems: [] }).entity;
    const by = entity === undefined ? undefined : acceptedBy(entity, records);
    if (by !== undefined) return { name, words: `as accepted with ${by} (recorded ${day})` };
  }
  return undefined;
}

function lastWords(library: OpenLibrary, history: History): string {
  const states = history.statesOf(library.root, ['.'], 1);
  const day = 'why' in states ? undefined : states[0]?.day;
  return day === undefined ? 'as last recorded' : `as last recorded (${day})`;
}

/** A new revision that lies beside the library, in a folder of its own: it holds only what it changes. */
export function besideSides(
  library: OpenLibrary,
  folder: string,
  files: readonly FileRecord[],
  asked: FileRecord,
): ReviewSides {
  return {
    before: recordsNow(library),
    department: library.engine.library,
    after: files,
    extent: 'part',
    library,
    old: 'as the library has it',
    now: `as in the folder "${folder.slice(folder.lastIndexOf('/') + 1)}"`,
    folder,
    asked,
  };
}

/** The folders around a path that may hold a whole revision, the widest first: within an open folder, and around no library. */
export function foldersAround(path: string, open: readonly string[], roots: readonly string[]): readonly string[] {
  const folders: string[] = [];
  let folder = path.slice(0, path.lastIndexOf('/'));
  while (folder !== '' && open.some((one) => isWithin(one, folder))) {
    const inner = folder;
    if (roots.some((root) => isWithin(inner, root))) break;
    folders.unshift(folder);
    folder = folder.slice(0, folder.lastIndexOf('/'));
  }
  return folders;
}

/** Only what the asked file is about: its own entity, and the documents that it cites; of a document, what cites it. */
export function narrowed(sides: ReviewSides): ReviewSides {
  const { asked } = sides;
  if (asked === undefined) return sides;
  const wanted = new Set<string>([keyOf(asked)]);
  const all = [...sides.before, ...sides.after];
  if (asked.kind === 'document') {
    const doc = docOf(asked);
    for (const record of all) if (doc !== undefined && citedDocs(record).has(doc)) wanted.add(keyOf(record));
  }
  const docs = new Set(
    all.filter((record) => wanted.has(keyOf(record))).flatMap((record) => [...citedDocs(record), docOf(record) ?? '']),
  );
  const keep = (record: FileRecord) =>
    wanted.has(keyOf(record)) || (record.kind === 'document' && docs.has(docOf(record) ?? '\n'));
  return { ...sides, before: sides.before.filter(keep), after: sides.after.filter(keep) };
}

/** A file that can't be read keeps its own name, so that it is never taken for another. */
function keyOf({ kind, id, file }: FileRecord): string {
  return kind === undefined || id === undefined ? `file ${file}` : `${kind}/${id}`;
}

function docOf({ entity }: FileRecord): string | undefined {
  const { doc } = (entity ?? {}) as { readonly doc?: { readonly text?: string } };
  return doc?.text;
}

function citedDocs({ entity }: FileRecord): ReadonlySet<string> {
  const { sources } = (entity ?? {}) as { readonly sources?: { readonly items?: readonly CitedSource[] } };
  return new Set((sources?.items ?? []).flatMap(({ doc }) => doc?.text ?? []));
}

interface CitedSource {
  readonly doc?: { readonly text: string };
}

/** The file of this folder at an absolute path. */
export function fileIn(folder: string, path: string): ReturnType<typeof fileId> {
  return fileId(path.slice(folder.length).replace(/^\//, '').normalize('NFC'));
}
