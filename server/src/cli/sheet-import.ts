import { resolve } from 'node:path';
import { findLibraries } from '../host/library-search.ts';
import { rewriteAll } from '../host/rewrite.ts';
import { tableFilesAt, tablesIn } from '../host/table-files.ts';
import { loadWorkbookPart } from '../host/workbook-part.ts';
import { readRuleFile } from '../library/file-record.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Block } from '../report/blocks.ts';
import { textOfBlocks } from '../report/blocks.ts';
import { comparePage } from '../report/compare-page.ts';
import { counted } from '../report/words.ts';
import { reviewOf } from '../revision/review.ts';
import { type GivenTable, type TakenIn, takeIn } from '../sheet/take-in.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import type { OpenLibrary } from './open-library.ts';
import { libraryAt } from './route-library.ts';

/** `sheet import FILE...`: shows what would change; with `--write` changes it. */
export async function importSheet(io: CommandIo, given: Arguments, files: readonly string[]): Promise<ExitCode> {
  const path = given.values.get('library') ?? '.';
  const open = libraryAt(path, io, given);
  if (open === undefined) return exit.nothing;
  const tables: GivenTable[] = [];
  for (const file of files) {
    const paths = tableFilesAt(resolve(io.cwd, file));
    if (paths.length === 0) return cannotFollow(io, `the folder "${file}" holds no CSV files.`);
    for (const path of paths) {
      const read = await tablesIn(path, loadWorkbookPart(io.workbookPart));
      if ('why' in read) return cannotFollow(io, read.why);
      tables.push(...read.tables);
    }
  }
  const taken = takeIn(tables, open.engine.library);
  io.stdout.write(textOfBlocks(pageOf(taken, open, files), paletteFor(io, given)));
  if (taken.mistakes.length > 0) return cannotFollow(io, 'the sheet has mistakes, so nothing was written.');
  if (taken.texts.size === 0) return exit.ok;
  if (given.switches.has('write')) return write(io, path, taken, open);
  io.stderr.write(`traywright: nothing was written. Say --write to change ${counted(taken.texts.size, 'file')}.\n`);
  return exit.findings;
}

/** The cells that differ, then what that means here, as a comparison shows it. */
function pageOf(taken: TakenIn, open: OpenLibrary, files: readonly string[]): readonly Block[] {
  const { changes, mistakes, notices } = taken;
  const lines = changes.map(
    ({ where, of, before, after }) => `${where} (${of}): ${shown(before)} becomes ${shown(after)}`,
  );
  const blocks: Block[] = [{ is: 'heading', level: 2, text: headingFor(changes.length) }];
  if (lines.length > 0) blocks.push({ is: 'list', items: lines });
  if (mistakes.length > 0) blocks.push({ is: 'heading', level: 2, text: 'Mistakes' }, { is: 'list', items: mistakes });
  if (notices.length > 0) blocks.push({ is: 'list', items: notices });
  return changes.length === 0 ? blocks : [...blocks, ...comparison(taken, open, files)];
}

function headingFor(count: number): string {
  if (count === 0) return 'No cell differs from the library.';
  return count === 1 ? '1 cell differs' : `${count} cells differ`;
}

function shown(cell: string): string {
  return cell === '' ? 'empty' : `"${cell}"`;
}

function comparison({ texts }: TakenIn, { engine }: OpenLibrary, files: readonly string[]): readonly Block[] {
  const { library } = engine;
  const before: AnyEntity[] = [];
  const after: AnyEntity[] = [];
  for (const file of library.files()) {
    const entity = library.record(file)?.entity;
    if (entity === undefined) continue;
    const text = texts.get(file);
    const now = text === undefined ? entity : readRuleFile(file, text).entity;
    before.push(entity);
    if (now !== undefined) after.push(now);
  }
  const review = reviewOf({ before, after, extent: 'whole', library, today: engine.view().today });
  const head = {
    old: 'The library as it is',
    now: files.join(', '),
    department: 'Effects are derived for this library.',
    notices: [],
    recording: 'Once the files are changed, "traywright compare" begins the record to complete.',
  };
  return comparePage(review, head);
}

function write(io: CommandIo, path: string, { texts }: TakenIn, open: OpenLibrary): ExitCode {
  const [found] = findLibraries([path], io.cwd).libraries;
  const paths = new Map(open.files.map((listed) => [listed.file, listed.path]));
  const rewrites = [...texts].map(([file, after]) => ({
    path: paths.get(file) ?? file,
    before: open.engine.library.record(file)?.text ?? '',
    after,
  }));
  const done = found === undefined ? { why: 'the library is gone.' } : rewriteAll(found.root, rewrites);
  if ('why' in done) return cannotFollow(io, done.why);
  io.stderr.write(`traywright: changed ${counted(done.written, 'file')}.\n`);
  return exit.ok;
}
