import type { Severity } from '../base/problem.ts';

/** One fault that reading a file can show. All of them are settled by the person who writes the file. */
export interface SyntaxRule {
  /** Names the fault, kebab-case. */
  readonly id: string;
  readonly severity: Severity;
  /** One sentence: why this is worth a finding. */
  readonly why: string;
  readonly settledBy: 'educator';
}

type Row = readonly [id: string, severity: Severity, why: string];

const FILE = [
  ['file-too-large', 'error', 'A file of this size is not a rule file, and reading it would hold up everything else.'],
  ['too-many-keys', 'error', 'A file with this many keys is not a rule file; one file describes one thing.'],
  ['text-too-long', 'error', 'A single text of this length is usually a whole document pasted into one field.'],
  [
    'nested-too-deep',
    'error',
    'Rule files never need this many levels; it is usually a bracket or an indent gone wrong.',
  ],
  ['too-many-problems', 'error', 'When one file has this many faults, the first few usually explain the rest.'],
  ['not-readable', 'error', 'The file is not plain text in UTF-8, so its words and signs cannot be trusted.'],
  ['reader-failed', 'error', 'The reader itself failed on this file; that is our fault, not a judgement on the file.'],
  ['empty-file', 'error', 'A rule file says at least what kind of thing it describes and its id.'],
  ['text-instead-of-keys', 'error', 'A rule file is made of keys with values; plain text alone cannot be checked.'],
  [
    'list-instead-of-keys',
    'error',
    'A rule file describes one thing with keys; a list at the top has no kind and no id.',
  ],
  ['second-document', 'error', 'Readers take the first part of the file and drop the rest without a word.'],
  ['unfinished-merge', 'error', 'The file still holds two versions of the same lines, and nobody has chosen one.'],
] as const satisfies readonly Row[];

const NOT_ALLOWED = [
  [
    'anchor-not-allowed',
    'error',
    'A named piece of text that is repeated elsewhere hides what each place really says.',
  ],
  [
    'alias-not-allowed',
    'error',
    'Every value must be written where it counts, so that a reader sees it and can cite it.',
  ],
  [
    'tag-not-allowed',
    'error',
    'A word with an exclamation mark changes how a value is read, differently in each program.',
  ],
  [
    'merge-key-not-allowed',
    'error',
    'Values pulled in from elsewhere cannot be checked against the page they came from.',
  ],
  ['directive-not-allowed', 'error', 'A percent line at the top changes how every value in the file is read.'],
  [
    'complex-key-not-allowed',
    'error',
    'A key is one plain word; lists or blocks as keys are read differently by each program.',
  ],
] as const satisfies readonly Row[];

const STRUCTURE = [
  ['key-missing', 'error', 'A value without a key in front of it belongs to nothing.'],
  ['key-without-colon', 'error', 'A line without a colon belongs to nothing, so its content is lost.'],
  ['colon-without-space', 'error', 'Without a space after the colon, key and value become one piece of text.'],
  ['dash-without-space', 'error', 'Without a space after the dash, the list becomes one piece of text.'],
  ['dash-joined-to-text', 'error', 'A line that should be its own item was read as part of the text above.'],
  ['dash-after-colon', 'error', 'A list starts on the line after its key; on the same line it cannot be read.'],
  ['key-joined-to-text', 'error', 'A line that should be its own key was read as part of the text above.'],
  ['colon-in-text', 'error', 'A colon followed by a space looks like a key, so the text cannot be read.'],
  ['brace-without-value', 'error', 'A word in braces without a value is read as a key that holds nothing.'],
  ['uneven-indent', 'error', 'Lines that belong together must start in the same column.'],
  ['unclosed-quote', 'error', 'A quote that is never closed swallows what follows it.'],
  ['text-after-quote', 'error', 'Text that starts with a quote ends at the closing quote; what follows is lost.'],
  [
    'backslash-in-quotes',
    'error',
    'Between double quotes a backslash starts a code, so the text becomes something else.',
  ],
  ['unclosed-bracket', 'error', 'A bracket that is never closed swallows what follows it.'],
  ['stray-bracket', 'error', 'A closing bracket without an opening one cannot be read.'],
  ['comma-missing', 'error', 'Items between brackets are kept apart by commas.'],
  ['comma-extra', 'error', 'Two commas in a row leave an item out.'],
  ['sign-needs-quotes', 'error', 'Text that starts with this sign is read as something other than text.'],
  [
    'comment-needs-space',
    'error',
    'A comment starts with a space and a number sign; without the space it is unclear where the value ends.',
  ],
  [
    'text-block-uneven',
    'error',
    'The first line of a text block decides where it starts; a line further left ends it.',
  ],
  ['unexpected-sign', 'error', 'The file cannot be read at this place.'],
] as const satisfies readonly Row[];

const CONTENT = [
  ['tab-indent', 'error', 'Tabs have no fixed width, so programs disagree about which line belongs to which.'],
  ['key-too-long', 'error', 'A key is a short word; a long one is text that ran into a colon.'],
  ['duplicate-key', 'error', 'When a key is written twice, one of the two values is lost without a word.'],
  ['look-alike-key', 'error', 'Two keys print the same but are stored differently, so one of them is never found.'],
  ['twin-key', 'warning', 'Two keys that differ only in capital letters are nearly always one key written twice.'],
  ['text-cut-at-hash', 'error', 'Everything after a number sign is read as a comment, so part of the value is lost.'],
  [
    'text-block-number',
    'warning',
    'A number after the text-block sign fixes the indent by hand, which breaks when the block is moved.',
  ],
  ['folded-table', 'warning', 'This kind of text block joins its lines into one, which destroys a table.'],
  ['tab-after-sign', 'warning', 'Some programs refuse a tab after a colon; a space is read by all.'],
  ['quote-swallows-lines', 'warning', 'A quote that closes some lines later may have swallowed keys as text.'],
] as const satisfies readonly Row[];

const CHARACTERS = [
  ['hidden-character', 'error', 'A character that cannot be seen makes two texts differ that look the same.'],
  ['look-alike-character', 'error', 'A character that looks like another makes two texts differ that look the same.'],
  ['control-character', 'error', 'A control character has no place in text and is often the sign of a damaged file.'],
  ['odd-line-end', 'error', 'Programs disagree on whether this character ends a line.'],
] as const satisfies readonly Row[];

const SCALARS = [
  ['time-or-ratio', 'error', 'Some programs read two numbers with a colon as minutes or seconds.'],
  ['time-impossible', 'error', 'No clock shows this time.'],
  ['leading-zero-lost', 'error', 'Zeros at the front are dropped, and some programs count such numbers in eights.'],
  ['trailing-zero-lost', 'error', 'Zeros at the end are dropped, so revision 1.10 becomes revision 1.1.'],
  ['number-form', 'error', 'This way of writing a number is read differently by different programs.'],
  ['number-too-long', 'error', 'A number this long is rounded by most programs, so its last digits change.'],
  ['decimal-comma', 'error', 'A comma in a number can mean a fraction or thousands.'],
  ['truth-word', 'error', 'Some programs read this word as true or false.'],
  ['empty-word', 'error', 'Programs read this word as "nothing here".'],
  ['date-as-text', 'error', 'Some programs turn a date into a moment in time and print it back differently.'],
  ['date-impossible', 'error', 'This day does not exist in the calendar.'],
  ['date-form', 'error', 'A date is written with four digits for the year and two each for month and day.'],
  ['not-a-minus', 'error', 'This dash looks like a minus sign but is not one, so the number is not read as a number.'],
  ['range-as-text', 'error', 'A range written as text has no lower and upper limit that can be compared.'],
  ['digits-not-plain', 'error', 'Only the digits 0 to 9 are read as numbers by every program.'],
  ['unit-spelling', 'advice', 'One spelling for each unit keeps files searchable.'],
] as const satisfies readonly Row[];

const ROWS = [...FILE, ...NOT_ALLOWED, ...STRUCTURE, ...CONTENT, ...CHARACTERS, ...SCALARS] as const;

export type SyntaxRuleId = (typeof ROWS)[number][0];

/** Every fault this folder can report, for the catalogue and for `explain`. */
export const syntaxRules: readonly SyntaxRule[] = ROWS.map(([id, severity, why]) => ({
  id,
  severity,
  why,
  settledBy: 'educator',
}));

const severities = new Map<string, Severity>(ROWS.map(([id, severity]) => [id, severity]));

export function severityOf(rule: SyntaxRuleId): Severity {
  return severities.get(rule) ?? 'error';
}

/** Faults of structure: several on one line, or after something left open, are nearly always one mistake. */
const structureIds: ReadonlySet<string> = new Set([
  ...STRUCTURE.map(([id]) => id),
  'text-instead-of-keys',
  'list-instead-of-keys',
  'complex-key-not-allowed',
]);

export function isStructureFault(rule: string): boolean {
  return structureIds.has(rule);
}
