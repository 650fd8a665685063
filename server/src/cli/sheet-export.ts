import { basename, dirname, join, resolve } from 'node:path';
import { printable } from '../base/printable.ts';
import { writeNew } from '../host/new-file.ts';
import { outputFolder } from '../host/output-folder.ts';
import { holdsAlready } from '../host/read-text.ts';
import { loadWorkbookPart } from '../host/workbook-part.ts';
import { counted } from '../report/words.ts';
import { csvOf } from '../sheet/csv.ts';
import { cellsOf, type SheetTable, tablesOf } from '../sheet/tables-of.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { libraryAt } from './route-library.ts';

/** `sheet export --out FILE`: never over a file that exists. */
export async function exportSheet(io: CommandIo, given: Arguments): Promise<ExitCode> {
  const out = given.values.get('out');
  if (out === undefined)
    return cannotFollow(io, 'name the file to write with --out: department.xlsx, or a folder for CSV.');
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const tables = tablesOf(open.engine.library);
  const target = resolve(io.cwd, out);
  const why = /\.xlsx$/i.test(out) ? await writeBook(io, tables, target) : writeCsvFiles(given, tables, target);
  if (why !== undefined) return cannotFollow(io, why);
  const rows = tables.map(({ spec, rows: all }) => `${spec.title}: ${counted(all.length, 'row')}`);
  io.stdout.write(`${printable(out)}\n${rows.map((row) => `  ${row}\n`).join('')}`);
  return exit.ok;
}

async function writeBook(io: CommandIo, tables: readonly SheetTable[], target: string): Promise<string | undefined> {
  const part = loadWorkbookPart(io.workbookPart);
  if (part === undefined) return 'the part that writes workbooks is not installed; name a folder to get CSV files.';
  const sheets = tables.map((table) => ({
    title: table.spec.title,
    widths: table.spec.columns.map(({ width }) => width),
    rows: cellsOf(table),
  }));
  const written = writeNew(dirname(target), basename(target), await part.workbookOf(sheets));
  return 'why' in written ? written.why : undefined;
}

function writeCsvFiles(given: Arguments, tables: readonly SheetTable[], target: string): string | undefined {
  const folder = outputFolder(target);
  if ('why' in folder) return folder.why;
  const separator = given.values.get('separator') === 'semicolon' ? ';' : ',';
  for (const table of tables) {
    const [name, text] = [`${table.spec.name}.csv`, csvOf(cellsOf(table), separator)];
    // An export that was interrupted is completed by the same command.
    if (holdsAlready(join(folder.root, name), text)) continue;
    const written = writeNew(folder.root, name, text);
    if ('why' in written) return written.why;
  }
  return undefined;
}
