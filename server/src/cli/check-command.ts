import type { OptionSpec } from './arguments.ts';
import { run } from './check.ts';
import { checkFormats } from './check-outputs.ts';
import type { Command } from './command.ts';
import { colourOption, helpOption } from './common-options.ts';

const options: readonly OptionSpec[] = [
  { name: 'format', values: checkFormats, help: 'Form of the output; text unless given.' },
  {
    name: 'output',
    form: 'texts',
    value: 'FORM=FILE',
    help: 'Writes the report to a file too, such as sarif=report.sarif; sarif=- prints it instead. May be given several times.',
  },
  {
    name: 'fail-on',
    values: ['error', 'warning', 'advice', 'never'],
    help: 'Least severity that makes the exit code 1; error unless given.',
  },
  { name: 'max-warnings', form: 'count', help: 'More warnings than this make the exit code 1 too.' },
  {
    name: 'changed-since',
    form: 'text',
    value: 'REVISION',
    help: 'Only findings of files that changed since this recorded state, and of those that the changes affect.',
  },
  {
    name: 'stdin',
    form: 'text',
    value: 'FILE',
    help: 'Checks the text on standard input as if it were this rule file of the library.',
  },
  { name: 'watch', help: 'Checks again whenever a file changes, and tells what is new; Ctrl-C ends it.' },
  {
    name: 'cache',
    form: 'text',
    value: 'FOLDER',
    help: 'Where results are kept so that an unchanged library is checked at once; the system’s folder for such things unless given.',
  },
  { name: 'no-cache', help: 'Neither uses nor keeps results of earlier checks.' },
  {
    name: 'workers',
    form: 'count',
    help: 'How many threads check one library, each with all of it in memory; 0 or 1 for one. Two unless given, in a library of 1,000 files or more.',
  },
  { name: 'timing', help: 'Tells on the error output how long reading and checking took.' },
  { name: 'today', form: 'date', help: 'Checks as if it were this day, for output that can be repeated.' },
  colourOption,
  { name: 'quiet', short: 'q', help: 'One line a finding, no progress. The summary stays.' },
  helpOption,
];

/** The command that runs on every change, many times a day: the program of its own that `check-main.ts` begins holds nothing else. */
export const checkCommand: Command = {
  name: 'check',
  summary: 'Checks libraries, parts of them or single files.',
  operands: '[PATH...]',
  options,
  help: [
    'PATH is a library (a folder that holds library.ifu.yaml), a folder of several libraries, or a folder or file inside one; the current folder unless given. A part of a library is checked against all of it, but only its own findings are shown.',
    'Exit codes: 0 nothing at or above --fail-on; 1 findings; 2 the command line or the library’s settings cannot be followed; 3 a fault of Traywright; 4 nothing to check. The form of the output changes none of them.',
  ],
  run,
};
