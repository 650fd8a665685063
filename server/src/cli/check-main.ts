import { checkCommand } from './check-command.ts';
import { processIo } from './process-io.ts';
import { runCommand } from './run-command.ts';

// The words are the same as those of the whole command line, of which `check` is the first.
runCommand(checkCommand, process.argv.slice(3), processIo('traywright-check.cjs')).then((code) => {
  process.exitCode = code;
});
