import type { FileId, IsoDate } from '../base/brand.ts';
import { dayOf } from '../check/day.ts';
import { Engine } from '../check/engine.ts';
import type { OpenedFile } from '../host/library-files.ts';
import { decodeFile, openFile } from '../host/library-files.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { isBelow, leftOutFolders } from '../library/left-out.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { libraryFileName, ruleFilesOf } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { recordOf } from '../library/loaded-file.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Progress } from './progress.ts';
import { takeDocuments } from './take-documents.ts';

/** A library read into an engine. Nothing has been judged yet. */
export interface OpenLibrary {
  readonly engine: Engine;
  /** Every file that was listed and not left out, in order of ids. */
  readonly files: readonly ListedFile[];
  readonly unread: ReadonlySet<FileId>;
  /** Files in folders that the library's own settings leave out. */
  readonly leftOut: number;
}

export interface OpenOptions {
  readonly rules: readonly AnyRule[];
  /** The day that was asked for; else the library's own `as_of`, else the clock's. */
  readonly asked: IsoDate | undefined;
  readonly clock: IsoDate;
  readonly progress: Progress;
  /** The program that reads PDFs. */
  readonly pdfReader?: string | undefined;
  /** Where texts of PDFs are kept from one run to the next. */
  readonly pdfTexts?: string | undefined;
  /** A text that stands for a file of the library, which need not be there yet. */
  readonly typed?: TypedFile;
}

export interface TypedFile {
  readonly file: FileId;
  readonly text: string;
}

/** A library whose settings are read, so that it is known which files count and as of which day. */
export interface BegunLibrary {
  readonly found: FoundLibrary;
  readonly options: OpenOptions;
  readonly engine: Engine;
  readonly settings: Taken | undefined;
  readonly files: readonly ListedFile[];
  readonly leftOut: number;
}

/** A file as it was opened, kept so that what is read is what was looked at. */
interface Taken {
  readonly listed: ListedFile;
  readonly opened: OpenedFile;
}

/** Reads every rule file of the library; one that can't be read is a finding and the others are read all the same. */
export function openLibrary(found: FoundLibrary, options: OpenOptions): OpenLibrary {
  const begun = beginLibrary(found, options);
  return finishLibrary(begun, (listed) => openedBy(begun, listed));
}

/** Reads the library's own file only. */
export function beginLibrary(found: FoundLibrary, options: OpenOptions): BegunLibrary {
  const { rules, asked, clock, typed } = options;
  let engine = new Engine({ rules, today: asked ?? clock, changes: 'unlikely' });
  const listed = withTyped(ruleFilesOf(found.listing), typed);
  const first = listed.find(({ path }) => path === libraryFileName);
  const settings = first === undefined ? undefined : { listed: first, opened: openFile(found.root, first) };
  if (settings !== undefined) engine.put(recordOf(loadedFrom(settings.opened, typed)));
  const day = asked ?? dayOf(engine.view(), clock);
  if (day !== engine.view().today && settings !== undefined) {
    engine = new Engine({ rules, today: day, changes: 'unlikely' });
    engine.put(recordOf(loadedFrom(settings.opened, typed)));
  }
  const folders = leftOutFolders(engine.view());
  const files = listed.filter(({ path }) => path === libraryFileName || !isBelow(path, folders));
  return { found, options, engine, settings, files, leftOut: listed.length - files.length };
}

/** One file as it is on disk; the library's own as it was when the library was begun. */
export function openedBy({ found, settings }: BegunLibrary, listed: ListedFile): OpenedFile {
  return listed === settings?.listed ? settings.opened : openFile(found.root, listed);
}

/** Reads the other files; `opened` gives each as it was opened and is asked once for each. */
export function finishLibrary(begun: BegunLibrary, opened: (listed: ListedFile) => OpenedFile): OpenLibrary {
  const { engine, files, settings, options, found, leftOut } = begun;
  const { progress, typed, pdfReader, pdfTexts } = options;
  const unread = new Set<FileId>();
  for (const [index, listed] of files.entries()) {
    const loaded = loadedFrom(opened(listed), typed);
    if (loaded.text === undefined) unread.add(listed.file);
    if (listed !== settings?.listed) engine.put(recordOf(loaded));
    progress.step(index + 1, files.length);
  }
  if (pdfReader !== undefined) takeDocuments(engine, found.root, { program: pdfReader, texts: pdfTexts }, progress);
  progress.end();
  return { engine, files, unread, leftOut };
}

export function loadedFrom(opened: OpenedFile, typed: TypedFile | undefined): LoadedFile {
  return opened.file === typed?.file ? { ...typed, problems: [] } : decodeFile(opened);
}

function withTyped(listed: readonly ListedFile[], typed: TypedFile | undefined): readonly ListedFile[] {
  if (typed === undefined || listed.some(({ file }) => file === typed.file)) return listed;
  const added: ListedFile = { file: typed.file, path: typed.file, problems: [], opens: 'yes' };
  return [...listed, added].sort((a, b) => (a.file < b.file ? -1 : 1));
}
