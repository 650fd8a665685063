import { startedBy } from '../host/helper-thread.ts';
import { checkCommand } from './check-command.ts';
import { runAsProcess } from './process-io.ts';
import { runCommand } from './run-command.ts';
import { help } from './together/helper.ts';
import { helperWord } from './together/messages.ts';

// The words are the same as those of the whole command line, of which `check` is the first.
const [, , , ...words] = process.argv;
const starter = words[0] === helperWord ? startedBy() : undefined;
if (starter !== undefined) help(starter);
else runAsProcess('traywright-check.cjs', (io) => runCommand(checkCommand, words, io));
