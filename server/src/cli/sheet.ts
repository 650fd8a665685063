import type { Arguments } from './arguments.ts';
import type { Command } from './command.ts';
import { colourOption, helpOption, libraryOption, todayOption } from './common-options.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { exportSheet } from './sheet-export.ts';
import { importSheet } from './sheet-import.ts';

/** Tables for a spreadsheet and back. */
export const sheetCommand: Command = {
  name: 'sheet',
  summary: 'Writes devices, sets and documents as a spreadsheet, and takes an edited one back.',
  operands: 'export|import [FILE...]',
  options: [
    libraryOption,
    {
      name: 'out',
      form: 'text',
      value: 'FILE',
      help: 'For export: a new workbook such as department.xlsx, or a folder for CSV files.',
    },
    { name: 'separator', values: ['comma', 'semicolon'], help: 'Between the cells of CSV files; comma unless given.' },
    {
      name: 'write',
      help: 'For import: changes the files, once the comparison was shown. Without it nothing is changed.',
    },
    todayOption,
    colourOption,
    helpOption,
  ],
  help: [
    '"export" writes four tables: devices, sets, set contents and documents. Every cell is text, so that ids keep their zeros and nothing becomes a date or a formula.',
    '"import" reads a workbook, CSV files or a folder of them that came from an export, shows which cells differ and what that changes here, and changes the files only with --write. In the set contents a row without a line number is a new line, and a line that is gone while others of its set are there is taken out.',
    'Exit codes: 0 done, or nothing to do; 1 changes that were shown and not written; 2 the command line or the sheet cannot be followed; 4 no library.',
  ],
  run,
};

function run(io: CommandIo, given: Arguments): Promise<ExitCode> | ExitCode {
  const [action, ...files] = given.operands;
  if (action === 'export' && files.length === 0) return exportSheet(io, given);
  if (action === 'import' && files.length > 0) return importSheet(io, given, files);
  io.stderr.write('traywright: say "sheet export --out FILE" or "sheet import FILE". See "traywright sheet --help".\n');
  return exit.usage;
}
