import { run as runAnswer } from './answer.ts';
import type { OptionSpec } from './arguments.ts';
import { run as runBinder } from './binder.ts';
import { run as runCards } from './cards.ts';
import type { Command } from './command.ts';
import { colourOption, helpOption, libraryOption, todayOption } from './common-options.ts';
import { run as runCycleRecord } from './cycle-record.ts';
import { run as runPosters } from './posters.ts';
import { run as runQuiz } from './quiz.ts';
import { run as runReceive } from './receive.ts';
import { run as runUrgent } from './urgent.ts';
import { run as runWetLoad } from './wet-load.ts';

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

const pageFormatOption: OptionSpec = {
  name: 'format',
  values: ['text', 'html'],
  help: 'Form of the output; text unless given. html is a page to print.',
};

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
  {
    name: 'answer',
    summary: 'Answers a surveyor: the current document, its sentences, our route, the last review, what is open.',
    operands: 'NUMBER...',
    options: [pageFormatOption, paperOption, libraryOption, todayOption, colourOption, helpOption],
    help: [
      'NUMBER is a catalogue number, the id of a device, or what a scanner reads from a GS1 or HIBC label.',
      'Exit codes: 0 answered; 1 no device file covers a number; 2 the command line cannot be followed; 4 no library.',
    ],
    run: runAnswer,
  },
  {
    name: 'urgent',
    summary: 'Answers whether something may be processed for immediate use, and what that takes.',
    operands: 'ID',
    options: [pageFormatOption, paperOption, libraryOption, todayOption, colourOption, helpOption],
    help: [
      'ID is a device, a set, a catalogue number or what a scanner reads from a label.',
      'Exit codes: 0 answered; 1 nothing is known of it; 2 the command line cannot be followed; 4 no library.',
    ],
    run: runUrgent,
  },
  {
    name: 'receive',
    summary: 'Receives trays on loan: go or hold, what is missing, the hours left, the letter to the vendor.',
    operands: 'SET...',
    options: [
      { name: 'needed-by', form: 'text', value: 'TIME', help: 'When surgery needs them: 2025-03-04T07:30.' },
      {
        name: 'received',
        form: 'text',
        value: 'TIME',
        help: 'When they arrived; what the file of the set says unless given, else today.',
      },
      pageFormatOption,
      paperOption,
      libraryOption,
      todayOption,
      colourOption,
      helpOption,
    ],
    help: ['Exit codes: 0 go for all; 1 some tray is held; 2 the command line cannot be followed; 4 no library.'],
    run: runReceive,
  },
  {
    name: 'wet-load',
    summary: 'Looks for the cause of a wet load: likely causes in order, figures, what changed before.',
    operands: 'SET',
    options: [pageFormatOption, paperOption, libraryOption, todayOption, colourOption, helpOption],
    help: ['Changes are read from the recorded history of the library, where it has one.'],
    run: runWetLoad,
  },
  {
    name: 'posters',
    summary: 'Writes wall posters for this department: one claim each, with drawings, exceptions and sources.',
    operands: '[NAME...]',
    options: [outOption, paperOption, languageOption, pdfOption, libraryOption, todayOption, helpOption],
    help: [
      'NAME is one of: indicators, aim, dry-before-steam, immediate-use, same-for-all, bound-words, units. All unless some are named.',
    ],
    run: runPosters,
  },
  {
    name: 'quiz',
    summary: 'Makes competency questions from the live library, with key, reasons and pages.',
    operands: '[LIBRARY]',
    options: [
      { name: 'seed', form: 'text', value: 'TEXT', help: 'The same seed gives the same sheet; the day unless given.' },
      { name: 'count', form: 'text', value: 'NUMBER', help: 'How many questions; 12 unless given.' },
      {
        name: 'stage',
        values: ['decontamination', 'inspection', 'packing', 'sterilizing', 'cooling'],
        help: 'Only questions of this stage of the work.',
      },
      {
        name: 'format',
        values: ['text', 'html', 'csv', 'qti'],
        help: 'Form of the output; text unless given. html is a sheet to print, csv and qti are for learning systems.',
      },
      { ...outOption, help: 'The folder for the files of a qti package.' },
      paperOption,
      libraryOption,
      todayOption,
      colourOption,
      helpOption,
    ],
    help: [
      'Nothing is asked that the files leave open or that an error concerns, and every wrong answer has been judged wrong.',
      'Exit codes: 0 made; 1 nothing could be asked; 2 the command line cannot be followed; 4 no library.',
    ],
    run: runQuiz,
  },
  {
    name: 'cycle-record',
    summary: 'Holds a logged curve of a cycle against the cycle and the instructions. It releases nothing.',
    operands: 'FILE',
    options: [
      { name: 'cycle', form: 'text', value: 'ID', help: 'The cycle that ran: its id in the file of the machine.' },
      { name: 'set', form: 'text', value: 'SET', help: 'A set of the load, to see what its pages ask.' },
      {
        name: 'uncertainty',
        form: 'text',
        value: 'KELVIN',
        help: 'Measuring uncertainty, taken off every reading; 0 unless given.',
      },
      {
        name: 'gap',
        form: 'text',
        value: 'SECONDS',
        help: 'Readings further apart are a gap; two and a half times the usual step unless given.',
      },
      pageFormatOption,
      paperOption,
      libraryOption,
      todayOption,
      colourOption,
      helpOption,
    ],
    help: [
      'FILE is a table with one line of names and units: "time (s), temperature (°C), pressure (kPa abs)". Times may be seconds, minutes or clock times (hh:mm:ss).',
      'Several columns of temperature are several probes; the coldest counts.',
    ],
    run: runCycleRecord,
  },
  {
    name: 'binder',
    summary: 'Writes the audit binder: status, documents, devices, sets, equipment, decisions and every finding.',
    operands: '[LIBRARY]',
    options: [
      { name: 'day', form: 'date', help: 'The day as of which everything is looked at.' },
      outOption,
      {
        name: 'from',
        form: 'text',
        value: 'STATE',
        help: 'A recorded state (a branch, tag or commit) in place of the files as they are.',
      },
      paperOption,
      pdfOption,
      libraryOption,
      helpOption,
    ],
    help: ['The same state, day and program give the same file, byte for byte.'],
    run: runBinder,
  },
];
