import type { Edit } from '../../base/problem.ts';
import type { AnswerProblem, AskedQuestion, QuestionsDone } from '../../panel/questions.ts';
import type { Field, RecordShape } from '../../schema/shape.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { sentencesOf } from '../reading/open-sentences.ts';
import { caution } from '../words/walk-choice.ts';
import { asValue } from '../writing/bare.ts';
import { furtherFields, insideOf, usualFields, usualInside } from './item-fields.ts';
import type { ItemList } from './item-lists.ts';
import type { Asking, AskingAbout, Question } from './item-questions.ts';
import { askRequirement, askScalar, askScalars, leaveOpen, plain, questionOf } from './item-questions.ts';
import type { Written, WrittenEntry } from './item-written.ts';
import { itemEdits, otherWays } from './item-written.ts';

/**
 * Part `items`: a new file, and a further item of a list, by questions that end in one edit.
 */

/** A further item of a list, asked for part by part. */
export interface NewItem {
  readonly text: string;
  readonly root: MapTree;
  readonly kind: RecordShape;
  readonly list: ItemList;
  /** The item behind which it goes; undefined: the last one. */
  readonly behind: number | undefined;
  /** Items of such lists in other files, to learn from where this list has none. */
  readonly elsewhere: readonly MapTree[];
  readonly about: AskingAbout;
}

export interface ItemMade extends QuestionsDone {
  readonly edits: readonly Edit[];
}

/** `Add a further cycle`. */
export function titleOf({ shape, field, tree, path }: ItemList): string {
  if (path.join('.') === otherWays) return 'Add another way of cleaning (one of them is enough)';
  if (path.join('.') === 'cleaning.all_of') return 'Add a further stage of cleaning (all are done)';
  if (path.slice(-2).join('.') === 'packaging.allowed')
    return tree === undefined ? 'Name the packagings' : 'Name a further packaging';
  const one = shape.item.form === 'record' ? shape.item.title : '';
  if (one === '') return `Add to “${field.title || plain(field.key)}”`;
  const noun = `${one.charAt(0).toLowerCase()}${one.slice(1)}`;
  const isFirst = (tree?.items ?? []).every(({ node }) => node === 'empty');
  return isFirst ? `Add ${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}` : `Add a further ${noun}`;
}

/** The next question after these answers, what is wrong with the last of them, or the item with the edits that put it in. */
export function askForItem(
  item: NewItem,
  answers: readonly (readonly string[])[],
): AskedQuestion | AnswerProblem | ItemMade {
  const asking = askItem(item);
  let step = asking.next();
  for (const answer of answers) {
    if (step.done === true) break;
    const words = faultIn(step.value, answer);
    if (words !== undefined) return { is: 'problem', words };
    step = asking.next(answer);
  }
  if (step.done !== true) {
    const { check: _, ...asked } = step.value;
    return { ...asked, of: counted(item, answers) };
  }
  return made(item, step.value);
}

/** As many as there are where each further one is passed over. */
function counted(item: NewItem, answers: readonly (readonly string[])[]): number {
  const asking = askItem(item);
  let step = asking.next();
  let all = 0;
  for (; step.done !== true && all < mostCounted; all++) step = asking.next(answers[all] ?? []);
  return all;
}

const mostCounted = 1_000;

function faultIn({ check, pass }: Question, answer: readonly string[]): string | undefined {
  if (pass === '' && answer.every((one) => one.trim() === '')) return 'An answer is needed here.';
  return check?.(answer);
}

function made({ text, root, kind, list, behind }: NewItem, items: readonly Written[]): ItemMade {
  const said = items.filter((written) => written.is !== 'map' || written.entries.length > 0);
  if (said.length === 0) return { is: 'made', words: 'Nothing was answered, so nothing was put in.', edits: [] };
  const edits = itemEdits(text, root, kind, list, said, behind);
  const words = edits.length === 0 ? 'It could not be put in here. Write the list on lines of its own first.' : '';
  return { is: 'made', words, edits };
}

/** Of what is only words, as many as are given at once. */
function* askItem(item: NewItem): Asking<readonly Written[]> {
  const { list, about } = item;
  const shape = list.shape.item;
  const own = list.tree?.items ?? [];
  if (shape.form === 'record')
    return [
      yield* askGroupItem(
        item,
        shape,
        own.filter((one) => one.node === 'map'),
      ),
    ];
  const there = new Set(own.flatMap((one) => (one.node === 'scalar' ? [one.text] : [])));
  const words = yield* askScalars(shape, list.field, '', about, { pass: '' }, there);
  return words?.is === 'list' ? words.items : [];
}

function* askGroupItem(item: NewItem, shape: RecordShape, own: readonly MapTree[]): Asking<Written> {
  const { about } = item;
  const like = own.length > 0 ? own : item.elsewhere;
  const entries = new Map<string, Written>();
  for (const field of usualFields(shape, like)) yield* askInto(entries, field, shape, like, about);
  yield* askFurther(entries, shape, like, about);
  if (shape.fields.has('src')) yield* askSource(entries, item);
  yield* askId(entries, shape, own, item);
  return { is: 'map', entries: inOrder(entries, like) };
}

/** Fields stand as the neighbours have them; what they do not have comes last, and what cites at the very end. */
function inOrder(entries: ReadonlyMap<string, Written>, like: readonly MapTree[]): readonly WrittenEntry[] {
  const order = (like[0]?.entries ?? []).map(({ key }) => key.text);
  const rank = (key: string): number => {
    if (key === 'id') return -1;
    const at = order.indexOf(key);
    return at >= 0 ? at : key === 'src' ? order.length + 1 : order.length;
  };
  return [...entries].toSorted(([a], [b]) => rank(a) - rank(b));
}

function* askInto(
  entries: Map<string, Written>,
  field: Field,
  shape: RecordShape,
  like: readonly MapTree[],
  about: AskingAbout,
  prefix = '',
): Asking<void> {
  const written = yield* askField(
    field,
    shape.required.includes(field.key) ? '' : leaveOpen,
    insideOf(like, field.key),
    about,
    prefix,
  );
  if (written !== undefined) entries.set(field.key, written);
}

function* askField(
  field: Field,
  pass: string,
  like: readonly MapTree[],
  about: AskingAbout,
  prefix: string,
): Asking<Written | undefined> {
  const { shape } = field;
  const part = `${prefix}${field.title || plain(field.key)}`;
  const value = prefix === '' ? about.known?.get(field.key) : undefined;
  const rest = { pass, ...(value !== undefined && { value }) };
  if (shape.form === 'record') {
    if (shape.dimension !== undefined) return yield* askRequirement(field, part, about, rest);
    return yield* askGroup(shape, like, about, `${part}, `);
  }
  if (shape.form !== 'list') {
    const text = yield* askScalar(shape, field, part, about, rest);
    return text === undefined ? undefined : { is: 'text', text };
  }
  return shape.item.form === 'record'
    ? yield* askGroups(shape.item, like, about)
    : yield* askScalars(shape.item, field, part, about, rest);
}

function* askGroup(
  shape: RecordShape,
  like: readonly MapTree[],
  about: AskingAbout,
  prefix: string,
): Asking<Written | undefined> {
  const entries = new Map<string, Written>();
  for (const field of usualInside(shape, like)) yield* askInto(entries, field, shape, like, about, prefix);
  return entries.size === 0 ? undefined : { is: 'map', entries: inOrder(entries, like) };
}

const mostGroups = 100;

/** A list inside, such as the phases of a cycle: passing over the first part of a further one says that there is none. */
function* askGroups(item: RecordShape, like: readonly MapTree[], about: AskingAbout): Asking<Written | undefined> {
  const items: Written[] = [];
  const [first, ...rest] = usualInside(item, like);
  while (first !== undefined && items.length < mostGroups) {
    const entries = new Map<string, Written>();
    const prefix = `${item.title} ${items.length + 1}, `;
    const pass = items.length === 0 ? leaveOpen : 'That was the last';
    const written = yield* askField(first, pass, insideOf(like, first.key), about, prefix);
    if (written === undefined) break;
    entries.set(first.key, written);
    for (const field of rest) yield* askInto(entries, field, item, like, about, prefix);
    items.push({ is: 'map', entries: inOrder(entries, like) });
  }
  return items.length === 0 ? undefined : { is: 'list', items };
}

/** Whatever else can be said of it, as often as there is something. */
function* askFurther(
  entries: Map<string, Written>,
  shape: RecordShape,
  like: readonly MapTree[],
  about: AskingAbout,
): Asking<void> {
  const asked = new Set([...entries.keys(), ...usualFields(shape, like).map(({ key }) => key)]);
  for (;;) {
    const further = furtherFields(shape, asked);
    if (further.length === 0) return;
    const [key = ''] = yield questionOf(about, '', 'Is there anything else to say of it?', {
      takes: 'one',
      choices: further.map((field) => ({
        label: field.title || plain(field.key),
        detail: field.description,
        gives: field.key,
      })),
      pass: 'That is all',
    });
    const field = further.find((one) => one.key === key);
    if (field === undefined) return;
    asked.add(key);
    yield* askInto(entries, field, shape, like, about);
  }
}

/** The sentence that says so: those first that nothing cites yet. */
function* askSource(entries: Map<string, Written>, { root, about }: NewItem): Asking<void> {
  const known = about.known?.get('src');
  if (known !== undefined) entries.set('src', { is: 'text', text: asValue(known) });
  if (known !== undefined) return;
  const sentences = sentencesOf(root).toSorted((a, b) => Number(a.state !== 'open') - Number(b.state !== 'open'));
  if (sentences.length === 0) return;
  const [id = ''] = yield questionOf(about, 'Sentence', `Which sentence of the instruction says so? ${caution}`, {
    takes: 'one',
    choices: sentences.map((one) => ({
      label: one.id,
      detail: `“${one.quote}”${one.page === '' ? '' : `, page ${one.page}`}`,
    })),
  });
  if (id !== '') entries.set('src', { is: 'text', text: asValue(id) });
}

/** Last, since it is made of the other answers. */
function* askId(
  entries: Map<string, Written>,
  shape: RecordShape,
  own: readonly MapTree[],
  { root, list, about }: NewItem,
): Asking<void> {
  const field = shape.fields.get('id');
  const isUsual = own.length === 0 || own.some((one) => valueUnder(one, 'id') !== undefined);
  if (field === undefined || !(shape.required.includes('id') || isUsual)) return;
  const taken = new Set(own.flatMap((one) => textUnder(one, 'id')));
  const proposed = proposedFor(entries, root, list);
  const text = yield* askScalar(field.shape, field, field.title || 'Id', about, {
    value: taken.has(proposed) ? '' : proposed,
    pass: shape.required.includes('id') ? '' : leaveOpen,
    check: ([answer = '']) => {
      const id = answer.trim();
      if (id !== '' && !/^[A-Za-z0-9][A-Za-z0-9._:-]{0,63}$/.test(id))
        return 'Letters, digits, dot, underscore, colon and hyphen; a letter or digit first.';
      return taken.has(id) ? `There is one with the id "${id}" already.` : undefined;
    },
  });
  if (text !== undefined) entries.set('id', { is: 'text', text });
}

/** Cycles are named in the whole library, so that they begin with the id of their machine; all else is known in its own file only. */
function proposedFor(entries: ReadonlyMap<string, Written>, root: MapTree, { path }: ItemList): string {
  const name = entries.get('name_on_screen') ?? entries.get('name');
  if (name?.is !== 'text') return '';
  const words = name.text.replaceAll(/["']/g, '');
  const [machine = ''] = path.join('.') === 'cycles' ? textUnder(root, 'id') : [];
  return idOf(machine === '' ? words : `${machine}-${words}`);
}

function idOf(words: string): string {
  return words
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')
    .replace(/[^A-Za-z0-9._:]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 64);
}

function textUnder(map: MapTree, key: string): readonly string[] {
  const value = valueUnder(map, key);
  return value?.node === 'scalar' ? [value.text] : [];
}
