import type { OptionSpec } from './arguments.ts';
import { run as runCards } from './cards.ts';
import type { Command } from './command.ts';

const helpOption: OptionSpec = { name: 'help', short: 'h', help: 'Explains the command.' };

const libraryOption: OptionSpec = {
  name: 'library',
  form: 'text',
  value: 'PATH',
  help: 'The library; the one around the current folder unless given.',
};

const todayOption: OptionSpec = {
  name: 'today',
  form: 'date',
  help: 'Works as if it were this day, for output that can be repeated.',
};

const outOption: OptionSpec = {
  name: 'out',
  form: 'text',
  value: 'DIR',
  help: 'The folder to write to; made where it is missing.',
};

const paperOption: OptionSpec = {
  name: 'paper',
  values: ['a4', 'letter', 'a5'],
  help: 'Size of the sheet; a4 unless given.',
};

const languageOption: OptionSpec = {
  name: 'language',
  values: ['en', 'de'],
  help: 'Language of the printed words; en unless given. Quotes stay as the page has them.',
};

const pdfOption: OptionSpec = { name: 'pdf', help: 'Also prints each page to a PDF, where a Chromium is installed.' };

/** Commands that print or answer for people at the bench, the phone and the survey. */
export const printCommands: readonly Command[] = [
  {
    name: 'cards',
    summary: 'Writes work cards of sets, or tells which printed ones are out of date.',
    operands: '[SET...]',
    options: [
      outOption,
      {
        name: 'check',
        form: 'text',
        value: 'DIR',
        help: 'Looks at the cards in this folder instead: current, or out of date.',
      },
      paperOption,
      languageOption,
      pdfOption,
      libraryOption,
      todayOption,
      helpOption,
    ],
    help: [
      'All sets unless some are named. A card with an open error in what it is made from, or without a route, is a draft and says so across the page.',
      'Exit codes: 0 written, or all current; 1 some card is out of date; 2 the command line cannot be followed; 4 no library.',
    ],
    run: runCards,
  },
];
