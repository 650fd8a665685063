import type { Arguments, OptionSpec } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';

/** What a command looks like from outside. Its code is loaded only when it is run. */
export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** What follows the name: `[PATH...]`. */
  readonly operands: string;
  readonly options: readonly OptionSpec[];
  /** Paragraphs for the command's own help. */
  readonly help: readonly string[];
  load(): Promise<{ run(io: CommandIo, given: Arguments): ExitCode | Promise<ExitCode> }>;
}
