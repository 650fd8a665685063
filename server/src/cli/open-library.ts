import type { FileId, IsoDate } from '../base/brand.ts';
import { dayOf } from '../check/day.ts';
import { Engine } from '../check/engine.ts';
import { loadFile } from '../host/library-files.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { isBelow, leftOutFolders } from '../library/left-out.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { libraryFileName, ruleFilesOf } from '../library/listed-files.ts';
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
  /** A text that stands for a file of the library, which need not be there yet. */
  readonly typed?: TypedFile;
}

export interface TypedFile {
  readonly file: FileId;
  readonly text: string;
}

/** Reads every rule file of the library; one that can't be read is a finding and the others are read all the same. */
export function openLibrary(
  found: FoundLibrary,
  { rules, asked, clock, progress, pdfReader, typed }: OpenOptions,
): OpenLibrary {
  let engine = new Engine({ rules, today: asked ?? clock });
  const unread = new Set<FileId>();
  const take = (listed: ListedFile): void => {
    const loaded = listed.file === typed?.file ? { ...typed, problems: [] } : loadFile(found.root, listed);
    if (loaded.text === undefined) unread.add(listed.file);
    engine.put(recordOf(loaded));
  };
  const listed = withTyped(ruleFilesOf(found.listing), typed);
  const settings = listed.find(({ path }) => path === libraryFileName);
  if (settings !== undefined) take(settings);
  const day = asked ?? dayOf(engine.view(), clock);
  if (day !== engine.view().today && settings !== undefined) {
    engine = new Engine({ rules, today: day });
    take(settings);
  }
  const folders = leftOutFolders(engine.view());
  const files = listed.filter(({ path }) => path === libraryFileName || !isBelow(path, folders));
  for (const [index, file] of files.entries()) {
    if (file !== settings) take(file);
    progress.step(index + 1, files.length);
  }
  if (pdfReader !== undefined) takeDocuments(engine, found.root, pdfReader, progress);
  progress.end();
  return { engine, files, unread, leftOut: listed.length - files.length };
}

function withTyped(listed: readonly ListedFile[], typed: TypedFile | undefined): readonly ListedFile[] {
  if (typed === undefined || listed.some(({ file }) => file === typed.file)) return listed;
  const added: ListedFile = { file: typed.file, path: typed.file, problems: [], opens: 'yes' };
  return [...listed, added].sort((a, b) => (a.file < b.file ? -1 : 1));
}
