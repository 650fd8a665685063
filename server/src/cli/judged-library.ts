import type { FileId } from '../base/brand.ts';
import type { Coverage } from '../check/coverage.ts';
import { coverageOf } from '../check/coverage.ts';
import type { Engine } from '../check/engine.ts';
import type { AboutState } from '../check/state/library-state.ts';
import { type Elsewhere, nobodyElse } from '../check/together/elsewhere.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { libraryFileName } from '../library/listed-files.ts';
import type { LibraryReport, PlacedFinding } from '../report/model.ts';
import { Placer } from '../report/model.ts';
import type { OpenLibrary } from './open-library.ts';

/** All that was found in one file, with places as people count them. */
export interface JudgedFile {
  readonly file: FileId;
  readonly findings: readonly PlacedFinding[];
  readonly heldBack: readonly PlacedFinding[];
  readonly waived: readonly PlacedFinding[];
}

/** `at`: its place among the files. */
export interface AskedFile {
  readonly file: FileId;
  readonly at: number;
}

/** A library whose files can be asked for their findings, be they judged now or known from before. Only plain data comes out of it. */
export interface JudgedLibrary {
  /** Every file that was listed and not left out, in order of ids. */
  readonly files: readonly ListedFile[];
  readonly leftOut: number;
  readonly about: AboutLibrary;
  /** Told which files are asked for next: those that are still to be judged are judged together, which takes less time. */
  prepare(asked: readonly AskedFile[]): void;
  /** `at`: its place among the files. */
  of(file: FileId, at: number): JudgedFile;
}

/** What a report says of the library as a whole. */
export interface AboutLibrary extends Pick<LibraryReport, 'asOf'> {
  /** How many files could not be opened. */
  readonly unread: number;
  readonly settings: 'read' | 'unread';
  readonly coverage: Coverage;
}

/** Each file is judged when it is asked for, unless somebody else did it. */
export function judgedNow(open: OpenLibrary, elsewhere: Elsewhere = nobodyElse): JudgedLibrary {
  const { engine, files, leftOut, unread } = open;
  const found = { unread: unread.size, coverage: coverageOf(engine.view()), dayNamed: dayNamedIn(engine) };
  return {
    files,
    leftOut,
    about: aboutOf(engine, files, found),
    prepare: (asked) => judgeTogether(engine, elsewhere, asked),
    of: judgedBy(engine, elsewhere),
  };
}

/** Judges those of the files that nobody else did. */
export function judgeTogether(engine: Engine, elsewhere: Elsewhere, asked: readonly AskedFile[]): void {
  engine.judgeTogether(asked.flatMap(({ file }) => (elsewhere.found(file) === undefined ? [file] : [])));
}

/** What is found, file by file: by the engine, where nobody else judged the file. */
export function judgedBy(engine: Engine, elsewhere: Elsewhere = nobodyElse): (file: FileId) => JudgedFile {
  const placer = new Placer((file) => engine.library.record(file)?.text ?? '');
  return (file) => {
    const known = elsewhere.found(file);
    if (known !== undefined) return fromKeptForm(file, known);
    return {
      file,
      findings: engine.findings(file).map((finding) => placer.placed(finding)),
      heldBack: engine.heldBack(file).map((finding) => placer.placed(finding)),
      waived: engine.waived(file).map((finding) => placer.placed(finding)),
    };
  };
}

/** What was found in a file, as it is kept and told to others. Nothing is said in nothing. */
export function keptForm(one: JudgedFile): Uint8Array {
  if (one.findings.length + one.heldBack.length + one.waived.length === 0) return new Uint8Array();
  return new TextEncoder().encode(JSON.stringify(one));
}

export function fromKeptForm(file: FileId, kept: Uint8Array): JudgedFile {
  if (kept.length === 0) return { file, findings: nothing, heldBack: nothing, waived: nothing };
  return JSON.parse(new TextDecoder().decode(kept)) as JudgedFile;
}

const nothing: readonly never[] = [];

/** The day that the library names as its own; empty for none. */
export function dayNamedIn(engine: Engine): string {
  return engine.view().all('library')[0]?.as_of?.text ?? '';
}

export function aboutOf(
  engine: Engine,
  files: readonly ListedFile[],
  { unread, coverage, dayNamed }: Omit<AboutState, 'documents'>,
): AboutLibrary {
  const settings = files.find(({ path }) => path === libraryFileName);
  const isRead = settings !== undefined && engine.library.record(settings.file)?.entity !== undefined;
  return {
    unread,
    coverage,
    ...(dayNamed === engine.view().today && { asOf: dayNamed }),
    settings: isRead ? 'read' : 'unread',
  };
}
