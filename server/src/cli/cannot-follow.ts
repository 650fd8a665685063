import { printable } from '../base/printable.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

/** Says why a command line can't be followed, and gives the exit code for it. */
export function cannotFollow(io: CommandIo, why: string): ExitCode {
  io.stderr.write(`traywright: ${printable(why)}\n`);
  return exit.usage;
}
