import { plainName } from '../../model/plain-words.ts';
import type { AskedChoice, AskedQuestion } from '../../panel/questions.ts';
import { isFault, parseQuantity } from '../../quantity/parse.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import { quantityFaultInWords } from '../../rules/support/quantity-faults.ts';
import type { Field, Shape } from '../../schema/shape.ts';
import { isSafeBare } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { wordsOfRequirement } from '../completion/completion-bounds.ts';
import type { Surroundings } from '../completion/completion-ids.ts';
import { idAsked, knownIds } from '../completion/completion-ids.ts';
import { asValue } from '../writing/bare.ts';
import type { Written } from './item-written.ts';

/** One question, and what is wrong with an answer to it. */
export interface Question extends AskedQuestion {
  check?(answer: readonly string[]): string | undefined;
}

/** Asks one question after the other; what it gives in the end is worked out from the answers. */
export type Asking<T> = Generator<Question, T, readonly string[]>;

/** What questions need to know beside the schema. */
export interface AskingAbout {
  readonly around: Surroundings;
  readonly today: string;
  /** `Add a cycle`. */
  readonly title: string;
  /** What is known of the item before anything is asked, by its field: it stands there to be accepted or changed. */
  readonly known?: ReadonlyMap<string, string>;
}

export const leaveOpen = 'Leave it open';

export function questionOf(about: AskingAbout, part: string, asks: string, rest: Partial<Question>): Question {
  return {
    is: 'question',
    title: part === '' ? about.title : `${about.title}: ${part}`,
    asks,
    takes: 'text',
    value: '',
    typical: '',
    choices: [],
    free: false,
    pass: leaveOpen,
    ...rest,
  };
}

/** One value, typed or chosen, as YAML; undefined where the question was passed over. */
export function* askScalar(
  shape: Shape,
  field: Field | undefined,
  part: string,
  about: AskingAbout,
  rest: Partial<Question> = {},
): Asking<string | undefined> {
  const [answer] = yield scalarQuestion(shape, field, part, about, rest);
  return answer === undefined || answer.trim() === '' ? undefined : asWritten(answer.trim(), shape);
}

/** Several values at once, as a list, beside those that are there. */
export function* askScalars(
  item: Shape,
  field: Field,
  part: string,
  about: AskingAbout,
  rest: Partial<Question> = {},
  there: ReadonlySet<string> = new Set(),
): Asking<Written | undefined> {
  const question = scalarQuestion(item, field, part, about, rest);
  const choices = question.choices.filter(({ label, gives = label }) => !there.has(gives));
  const takes = choices.length > 0 ? 'many' : 'text';
  const several = takes === 'text' ? ' Several: put a comma between them.' : '';
  const answer = yield { ...question, choices, takes, asks: `${question.asks}${several}` };
  const words = takes === 'many' ? answer : answer.flatMap((one) => one.split(','));
  const items = words.map((word) => word.trim()).filter((word) => word !== '');
  if (items.length === 0) return undefined;
  return { is: 'list', items: items.map((word) => ({ is: 'text', text: asWritten(word, item) })) };
}

function scalarQuestion(
  shape: Shape,
  field: Field | undefined,
  part: string,
  about: AskingAbout,
  rest: Partial<Question>,
): Question {
  const choices = choicesOf(shape, field, about);
  const asks = field?.description || shape.description || part;
  const examples = (field?.examples.length ?? 0) > 0 ? (field?.examples ?? []) : shape.examples;
  return questionOf(about, part, asks, {
    takes: choices.length > 0 ? 'one' : 'text',
    choices,
    free: shape.form !== 'words' && shape.form !== 'flag',
    typical: typicalOf(examples),
    ...checkOf(shape),
    ...rest,
  });
}

/** As a person types it: brackets and quotation marks are what the file needs. */
function typicalOf(examples: readonly string[]): string {
  const [first = '', second = ''] = examples;
  const isList = first.startsWith('[');
  const shown = isList || second === '' || second === 'null' ? [first] : [first, second];
  return shown.join(', ').replaceAll(/[[\]"']/g, '');
}

function choicesOf(shape: Shape, field: Field | undefined, { around, today }: AskingAbout): readonly AskedChoice[] {
  switch (shape.form) {
    case 'words':
      return [...shape.words].map(wordAsked);
    case 'flag':
      return [
        { label: 'yes', detail: '', gives: 'true' },
        { label: 'no', detail: '', gives: 'false' },
      ];
    case 'reference':
      return [
        ...[...(field?.suggestions ?? shape.suggestions ?? [])].map(wordAsked),
        ...shape.refers.flatMap((refers) =>
          knownIds(refers, around).map((known) => idAsked(refers, known, around.view)),
        ),
      ];
    case 'citation':
      return knownIds('statement', around).map(({ id, detail }) => ({ label: id, detail: `“${detail}”` }));
    case 'date':
      return shape.mayBeMonth === true ? [] : [{ label: today, detail: 'today' }];
    default:
      return [...(field?.suggestions ?? shape.suggestions ?? [])].map(wordAsked);
  }
}

/** A word of a list as people say it, found by the word of the file too. */
export function wordAsked([word, meaning]: readonly [string, string]): AskedChoice {
  const label = plainName(word);
  return label === word ? { label, detail: meaning } : { label, detail: `${meaning} Written as ${word}.`, gives: word };
}

function checkOf(shape: Shape): Pick<Question, 'check'> {
  const faultIn = faultOf(shape);
  if (faultIn === undefined) return {};
  return {
    check: (answer) =>
      answer
        .filter((one) => one.trim() !== '')
        .map(faultIn)
        .find((fault) => fault !== undefined),
  };
}

type FaultIn = (text: string) => string | undefined;

/** What is wrong with a typed value of this form; undefined where any text will do. */
export function faultOf(shape: Shape): FaultIn | undefined {
  switch (shape.form) {
    case 'quantity':
      if (shape.limits?.types.has('integer') === true) return wholeNumberFault;
      return shape.dimension === 'any' ? undefined : amountFault(shape.dimension);
    case 'id':
      return (text) =>
        /^[A-Za-z0-9][A-Za-z0-9._:-]{0,63}$/.test(text)
          ? undefined
          : 'Letters, digits, dot, underscore, colon and hyphen; a letter or digit first.';
    case 'date':
    case 'datetime':
      return (text) =>
        /^[0-9]{4}-(0[1-9]|1[0-2])(-(0[1-9]|[12][0-9]|3[01]))?$/.test(text) &&
        (shape.mayBeMonth === true || text.length === 10)
          ? undefined
          : 'A day is written as year, month and day, such as 2025-01-31.';
    default:
      return undefined;
  }
}

function wholeNumberFault(text: string): string | undefined {
  if (/^\d{1,9}$/.test(text)) return undefined;
  const is = /^\d{4}-\d{2}/.test(text) ? 'a day' : 'no whole number';
  return `"${text}" is ${is}. A whole number belongs here, such as 12.`;
}

export function amountFault(dimension: Dimension): FaultIn {
  return (text) => {
    const read = parseQuantity(text, dimension);
    return isFault(read) ? quantityFaultInWords({ text: text.trim(), dimension }, read) : undefined;
  };
}

/** Numbers, days and words of closed lists stand as they are; what could be taken for something else goes between quotation marks. */
export function asWritten(text: string, { form }: Shape): string {
  switch (form) {
    case 'quantity':
      return isSafeBare(text) || /^[0-9.]+$/.test(text) ? text : quoteScalar(text);
    case 'flag':
    case 'date':
    case 'datetime':
      return text;
    default:
      return asValue(text);
  }
}

/** A demand: what the page says of a number, then the number. */
export function* askRequirement(
  field: Field,
  part: string,
  about: AskingAbout,
  rest: Partial<Question> = {},
): Asking<Written | undefined> {
  const { shape } = field;
  if (shape.form !== 'record' || shape.dimension === undefined) return undefined;
  const words = wordsOfRequirement(shape);
  const [word] = yield questionOf(about, part, `${field.description} How does the page say it?`.trim(), {
    takes: 'one',
    choices: words.map(({ key, description }) => ({ label: plain(key), detail: description, gives: key })),
    ...rest,
  });
  if (word === undefined || word === '') return undefined;
  if (word === 'silent') return { is: 'text', text: `{silent: true, checked: ${about.today}}` };
  const named = `${part}, ${plain(word)}`;
  if (word === 'ambiguous' || word === 'not_applicable') {
    const [said = ''] = yield questionOf(about, named, 'The words of the page, or why it does not apply.', {
      pass: '',
    });
    return { is: 'text', text: `{${word}: ${quoteScalar(said.trim())}}` };
  }
  const amounts = yield* askAmounts(word, shape.dimension, named, about, [...field.examples, ...shape.examples]);
  return { is: 'text', text: `{${word}: ${amounts}}` };
}

function* askAmounts(
  word: string,
  dimension: Dimension,
  part: string,
  about: AskingAbout,
  examples: readonly string[],
): Asking<string> {
  const fault = amountFault(dimension);
  const typical = typicalAmount(examples);
  const isRange = word === 'between';
  const asks = isRange
    ? 'Both ends with their unit and a comma between them.'
    : 'The number with its unit, as the page has it.';
  const [answer = ''] = yield questionOf(about, part, asks, {
    typical: isRange && typical !== '' ? `${typical}, ${typical}` : typical,
    pass: '',
    check: ([text = '']) => {
      const parts = isRange ? endsOf(text) : [text];
      if (isRange && parts.length !== 2) return 'Write two numbers with a comma between them, such as 3 min, 18 min.';
      return parts.map(fault).find((one) => one !== undefined);
    },
  });
  const written = (isRange ? endsOf(answer) : [answer]).map((text) => asAmount(text.trim()));
  return isRange ? `[${written.join(', ')}]` : (written[0] ?? '');
}

function endsOf(text: string): readonly string[] {
  return text.split(',').map((part) => part.trim());
}

function asAmount(text: string): string {
  return isSafeBare(text) || /^[0-9.]+$/.test(text) ? text : quoteScalar(text);
}

/** Of `{at_least: 4 min, src: s1}` the number with its unit. */
function typicalAmount(examples: readonly string[]): string {
  for (const example of examples) {
    const found = /(?:^|[:[] ?)(-?[0-9.]+(?: [^\s,}\]][^,}\]]{0,20})?)/.exec(example)?.[1];
    if (found !== undefined) return found;
  }
  return '';
}

export function plain(word: string): string {
  return word.replaceAll('_', ' ');
}
