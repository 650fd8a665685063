import type { OptionSpec } from './arguments.ts';

/** Options that mean the same wherever they are taken. */

export const helpOption: OptionSpec = { name: 'help', short: 'h', help: 'Explains the command.' };

export const colourOption: OptionSpec = {
  name: 'colour',
  alias: 'color',
  values: ['auto', 'always', 'never'],
  help: 'Colours; "auto" uses them on a terminal only (NO_COLOR and FORCE_COLOR are heeded).',
};

export const formatOption: OptionSpec = {
  name: 'format',
  values: ['text', 'json'],
  help: 'Form of the output; text unless given.',
};

export const todayOption: OptionSpec = {
  name: 'today',
  form: 'date',
  help: 'Works as if it were this day, for output that can be repeated.',
};

export const libraryOption: OptionSpec = {
  name: 'library',
  form: 'text',
  value: 'PATH',
  help: 'The library; the one around the current folder unless given.',
};
