import type { Arguments, OptionSpec } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';

/**
 * What a command looks like from outside. Commands are imported plainly: measured, a flat bundle starts faster than parts that are
 * loaded on demand, which the engine has to read twice. `check` alone is a bundle of its own besides, see `check-main.ts`.
 */
export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** What follows the name: `[PATH...]`. */
  readonly operands: string;
  readonly options: readonly OptionSpec[];
  /** Paragraphs for the command's own help. */
  readonly help: readonly string[];
  readonly run: (io: CommandIo, given: Arguments) => ExitCode | Promise<ExitCode>;
}
