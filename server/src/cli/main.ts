import { todayByClock } from '../host/clock.ts';
import type { CommandIo, Sink } from './io.ts';
import { exit } from './io.ts';
import { run } from './run.ts';

function sinkOf(stream: NodeJS.WriteStream): Sink {
  return {
    isTerminal: stream.isTTY === true,
    columns: stream.columns,
    write: (text) => void stream.write(text),
  };
}

/** A reader that has seen enough (`| head`) is no fault: the exit code stays what the check says. */
function endQuietlyWhenUnread(stream: NodeJS.WriteStream): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = exit.internal;
  });
}

endQuietlyWhenUnread(process.stdout);
endQuietlyWhenUnread(process.stderr);

const io: CommandIo = {
  stdout: sinkOf(process.stdout),
  stderr: sinkOf(process.stderr),
  env: process.env,
  cwd: process.cwd(),
  today: todayByClock,
};

run(process.argv.slice(2), io).then((code) => {
  process.exitCode ??= code;
});
