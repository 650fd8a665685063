import type { OptionSpec } from './arguments.ts';
import { run as runBaseline } from './baseline.ts';
import { checkCommand } from './check-command.ts';
import type { Command } from './command.ts';
import { colourOption, formatOption, helpOption, libraryOption, todayOption } from './common-options.ts';
import { run as runCompare } from './compare.ts';
import { run as runExplain } from './explain.ts';
import { printCommands } from './print-commands.ts';
import { run as runRoute } from './route.ts';
import { runQuestions, runRoutes } from './routes.ts';
import { run as runRules } from './rules.ts';
import { sheetCommand } from './sheet.ts';
import { run as runWhatIf } from './whatif.ts';

const routeFormatOption: OptionSpec = {
  name: 'format',
  values: ['text', 'json', 'markdown'],
  help: 'Form of the output; text unless given.',
};

/** Every command, in the order of the help page. A new one is one row here and one file beside this one. */
export const commands: readonly Command[] = [
  checkCommand,
  {
    name: 'baseline',
    summary: 'Holds back what is found today, so that only new findings are shown.',
    operands: '[PATH...]',
    options: [
      { name: 'grow', help: 'Takes in new findings too; without it a baseline only gets smaller.' },
      todayOption,
      helpOption,
    ],
    help: [
      'For the day on which a department begins to check and finds hundreds of things at once. Writes ".traywright-baseline.json" beside library.ifu.yaml; "check" then counts the findings in it instead of showing them. Run it again to take out what was settled. What nobody may waive is never held back.',
    ],
    run: runBaseline,
  },
  {
    name: 'explain',
    summary: 'Explains what a finding means, why it matters and who can settle it.',
    operands: 'RULE...',
    options: [formatOption, colourOption, helpOption],
    help: ['RULE is the name that stands beside a finding, such as quote-number-mismatch.'],
    run: runExplain,
  },
  {
    name: 'rules',
    summary: 'Lists everything that can be found, by stage of the work.',
    operands: '',
    options: [formatOption, colourOption, helpOption],
    help: [],
    run: runRules,
  },
  {
    name: 'route',
    summary: 'Derives how a set can be processed here, or the smallest clash if it cannot.',
    operands: 'SET...',
    options: [libraryOption, routeFormatOption, todayOption, colourOption, helpOption],
    help: [
      'SET is the id of a set, or of a device, which is then judged as if it were a set of one piece.',
      'Exit codes: 0 a route, be it provisional; 1 none; 2 the command line cannot be followed; 4 no library.',
    ],
    run: runRoute,
  },
  {
    name: 'routes',
    summary: 'Lists all sets: with a route, provisional, or without.',
    operands: '[LIBRARY]',
    options: [routeFormatOption, todayOption, colourOption, helpOption],
    help: ['Exit codes: 0 every set has a route, be it provisional; 1 some has none; 4 no library.'],
    run: runRoutes,
  },
  {
    name: 'whatif',
    summary: 'Shows which sets a change would gain or lose, without touching a file.',
    operands: '[LIBRARY]',
    options: [
      {
        name: 'with',
        form: 'texts',
        value: 'FILE',
        help: 'A rule file that stands in place of the one with its kind and id, or is added. Can be given again.',
      },
      {
        name: 'add-cycle',
        form: 'texts',
        value: 'FILE',
        help: 'A rule file of a sterilizer or washer whose cycles are added to the machine of its id. Can be given again.',
      },
      {
        name: 'without',
        form: 'texts',
        value: 'KIND/ID',
        help: 'Something left out: packaging/P3, washer/W1, cycle/S1-a, washer-cycle/W1-std, member/SET/DEVICE. Can be given again.',
      },
      routeFormatOption,
      todayOption,
      colourOption,
      helpOption,
    ],
    help: [],
    run: runWhatIf,
  },
  {
    name: 'compare',
    summary: 'Shows what a new revision, or a change of the department, changes here.',
    operands: '[OLD NEW]',
    options: [
      {
        name: 'from',
        form: 'text',
        value: 'STATE',
        help: 'A recorded state (a branch, tag or commit) of the library, in place of OLD and NEW.',
      },
      {
        name: 'to',
        form: 'text',
        value: 'STATE',
        help: 'The recorded state to compare with; the files as they are now unless given.',
      },
      {
        name: 'swap',
        form: 'text',
        value: 'KIND/OLD=NEW',
        help: 'Instead of two sides: what would become of every set and device if one thing of the department took the place of another, such as chemistry/C4=C5 or packaging/P3=P1.',
      },
      {
        name: 'library',
        form: 'text',
        value: 'PATH',
        help: 'The department for which effects are derived; the library around OLD unless given.',
      },
      {
        name: 'format',
        values: ['text', 'json', 'markdown', 'html'],
        help: 'Form of the output; text unless given. html is a page to print and sign.',
      },
      {
        name: 'fail-on',
        form: 'text',
        value: 'WORDS',
        help: 'What makes the exit code 1, separated by commas: undecided (unless given), route-breaks, lost, any, never, or classes such as stricter.',
      },
      {
        name: 'write-sign-off',
        form: 'text',
        value: 'FILE',
        help: 'Writes the record to be completed by whoever decides. Never over a file that exists.',
      },
      todayOption,
      colourOption,
      helpOption,
    ],
    help: [
      'OLD and NEW are two rule files or two folders. A NEW folder that is no library of its own holds only what it changes.',
      'With --from, PATH names the library; the one around the current folder unless given.',
      'Exit codes: 0 nothing that --fail-on names; 1 something; 2 the command line cannot be followed; 4 nothing to compare.',
    ],
    run: runCompare,
  },
  {
    name: 'questions',
    summary: 'Writes one letter a maker with the questions whose answers would free sets.',
    operands: '[LIBRARY]',
    options: [routeFormatOption, todayOption, colourOption, helpOption],
    help: [],
    run: runQuestions,
  },
  sheetCommand,
  ...printCommands,
];
