import { besideProgram } from '../host/beside-program.ts';
import { todayByClock } from '../host/clock.ts';
import { buildName } from '../host/digest.ts';
import { resultsFolder } from '../host/results-folder.ts';
import { standardStream } from '../host/standard-streams.ts';
import type { CommandIo, ExitCode } from './io.ts';

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

/**
 * Ends the process. Where everything printed has left it, at once: what Node would still tidy up the system takes back sooner, which is a
 * fiftieth of a short check. On a terminal the last lines may still be on their way.
 */
export function endProcess(code: ExitCode, { stdout, stderr }: CommandIo): void {
  if (stdout.isTerminal || stderr.isTerminal) process.exitCode = code;
  else process.exit(code);
}
