import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import { commands } from './commands.ts';
import { commandHelp, generalHelp } from './help.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { runCommand, usage } from './run-command.ts';
import { version } from './version.ts';

/** Runs one command line (without the program's name). Never throws: a fault of ours becomes exit code 3. */
export async function run(words: readonly string[], io: CommandIo): Promise<ExitCode> {
  const [first, ...rest] = words;
  if (first === undefined) return usage(io, `Name a command.\n\n${generalHelp(commands)}`);
  if (first === '--help' || first === '-h' || first === 'help') return help(io, rest[0]);
  if (first === '--version') {
    io.stdout.write(`traywright ${version}\n`);
    return exit.ok;
  }
  const command = commands.find(({ name }) => name === first);
  return command === undefined ? usage(io, unknownCommand(first)) : runCommand(command, rest, io);
}

function help(io: CommandIo, name: string | undefined): ExitCode {
  const command = commands.find((known) => known.name === name);
  if (name !== undefined && command === undefined) return usage(io, unknownCommand(name));
  io.stdout.write(command === undefined ? generalHelp(commands) : commandHelp(command));
  return exit.ok;
}

function unknownCommand(word: string): string {
  const names = commands.map(({ name }) => name);
  if (word.startsWith('-')) {
    const near = nearest(word.replace(/^--?/, ''), ['help', 'version']);
    return `There is no option "${printable(word)}".${near === undefined ? '' : ` Did you mean "--${near}"?`} A command comes first: ${names.join(', ')}.\n`;
  }
  const near = nearest(word, names);
  return `There is no command "${printable(word)}". ${near === undefined ? `Commands are: ${names.join(', ')}.` : `Did you mean "${near}"?`}\n`;
}
