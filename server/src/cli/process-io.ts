import { besideProgram } from '../host/beside-program.ts';
import { todayByClock } from '../host/clock.ts';
import { buildName } from '../host/digest.ts';
import { resultsFolder } from '../host/results-folder.ts';
import { standardStream } from '../host/standard-streams.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { sayFault } from './run-command.ts';

/**
 * Runs a command line as this process. What fails where nobody waits for it, such as a promise that nobody looks at, is a fault of ours as
 * well: left to Node it would end with 1, which means findings. `program` is the file that the process was started from, without its folder.
 */
export function runAsProcess(program: string, command: (io: CommandIo) => Promise<ExitCode>): void {
  const io = processIo(program);
  const fail = (thrown: unknown) => {
    sayFault(io, thrown);
    endProcess(exit.internal, io);
    // On a terminal: even if something is still being waited for.
    setTimeout(() => process.exit(), 1000).unref();
  };
  process.on('unhandledRejection', fail);
  process.on('uncaughtException', fail);
  // A turn later, so that Node has told before the end what nobody waited for.
  command(io).then((code) => setImmediate(() => endProcess(code, io)));
}

/** What a command sees of the process that runs it. */
function processIo(program: string): CommandIo {
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
 * Ends the process; a fault that was said stays its exit code. Where everything printed has left it, at once: what Node would still tidy up the system takes back sooner, which is a
 * fiftieth of a short check. On a terminal the last lines may still be on their way.
 */
function endProcess(code: ExitCode, { stdout, stderr }: CommandIo): void {
  if (process.exitCode !== exit.internal) process.exitCode = code;
  if (!stdout.isTerminal && !stderr.isTerminal) process.exit();
}
