import { printable } from '../base/printable.ts';
import { parse } from './arguments.ts';
import type { Command } from './command.ts';
import { commandHelp } from './help.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

/** Runs a command with the words that follow its name. Never throws: a fault of ours becomes exit code 3. */
export async function runCommand(command: Command, words: readonly string[], io: CommandIo): Promise<ExitCode> {
  const parsed = parse(words, command.options);
  if ('mistake' in parsed) return usage(io, `${printable(parsed.mistake)} See "traywright ${command.name} --help".\n`);
  if (parsed.given.switches.has('help')) {
    io.stdout.write(commandHelp(command));
    return exit.ok;
  }
  try {
    return await command.run(io, parsed.given);
  } catch (thrown) {
    sayFault(io, thrown);
    return exit.internal;
  }
}

export function sayFault(io: CommandIo, thrown: unknown): void {
  const why = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  io.stderr.write(
    `traywright: a fault of Traywright itself, not of your files.\n${why.split('\n').map(printable).join('\n')}\n`,
  );
}

export function usage(io: CommandIo, message: string): ExitCode {
  io.stderr.write(`traywright: ${message}`);
  return exit.usage;
}
