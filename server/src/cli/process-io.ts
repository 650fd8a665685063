import { besideProgram } from '../host/beside-program.ts';
import { todayByClock } from '../host/clock.ts';
import { buildName } from '../host/digest.ts';
import { resultsFolder } from '../host/results-folder.ts';
import { standardStream } from '../host/standard-streams.ts';
import type { CommandIo } from './io.ts';

/** What a command sees of the process that runs it. `program` is the file that this process was started from, without its folder. */
export function processIo(program: string): CommandIo {
  return {
    stdout: standardStream(1),
    stderr: standardStream(2),
    env: process.env,
    cwd: process.cwd(),
    today: todayByClock,
    pdfReader: besideProgram('pdf-reader.cjs'),
    build: buildName(besideProgram(program)),
    results: resultsFolder(process.env),
    helper: besideProgram('traywright.cjs'),
    workbookPart: besideProgram('workbook.cjs'),
  };
}
