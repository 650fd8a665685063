import type { FileRecord } from '../../library/file-record.ts';
import { plainName } from '../../model/plain-words.ts';
import type { AddedItem, Told } from '../../panel/sentences.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { itemSaid } from '../items/item-said.ts';
import { type FieldPlace, fieldPlacesIn } from '../reading/field-places.ts';
import type { Sentence } from '../reading/open-sentences.ts';
import { sectionOf } from '../reading/quote-section.ts';
import { put } from '../reading/quote-to-fields.ts';
import { idsIn } from '../reading/quote-values.ts';
import { told } from '../reading/told-fields.ts';
import type { Question, WalkChoice } from '../words/walk-choice.ts';
import { asking, caution, ends, leaveOpen } from '../words/walk-choice.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import type { FieldValue } from './field-choices.ts';
import { isNumber, takesText, typedValue, valuesFor, wordsWithoutValue } from './field-choices.ts';
import { likely, likelyFields, surely } from './field-likelihood.ts';
import { fieldsCiting, foundBy } from './field-names.ts';
import { anyItem, type Target, targetsOf } from './field-targets.ts';
import { aboutTwice, nodeAt, standing } from './field-there.ts';
import { editsOf } from './sentence-holes.ts';
import { keepQuoted, noted } from './sentence-notes.ts';

/** A sentence that is answered by choice: the field, then what stands in it, then whether the sentence says more. */

/** Told when a field has been taken: the same sentence is asked about again. */
export function andMore(next: 'field' | 'more'): Told {
  return { words: [], next };
}

/**
 * Whether a field of the file is likely to hold what the sentence says. The names of fields are English: of a sentence in another language
 * nobody can say that no field is for it.
 */
export function hasField(
  { kind }: FileRecord,
  { section }: Sentence,
  reading: QuoteReading,
  how: 'likely' | 'surely',
): boolean {
  if (reading.language !== 'en') return how === 'likely';
  const [first] = kind === undefined ? [] : likelyFields(reading, kind, sectionOf(section, reading.language));
  return first !== undefined && first.score >= (how === 'likely' ? likely : surely);
}

export function whichField(record: FileRecord, tree: MapTree, sentence: Sentence, reading: QuoteReading): Question {
  const { kind } = record;
  const above = sectionOf(sentence.section, reading.language);
  const all = kind === undefined ? [] : likelyFields(reading, kind, above, fieldPlacesIn(kind, tree));
  const citing = fieldsCiting(tree, sentence.id);
  const isTaken = ({ path }: FieldPlace): boolean => citing.has(path.replaceAll('[]', '').replaceAll(anyItem, ''));
  const [open, taken] = [all.filter(({ place }) => !isTaken(place)), all.filter(({ place }) => isTaken(place))];
  const near = Math.min(mostNear, open.filter(({ score }) => score >= likely).length);
  const choices = [...open, ...taken].map(({ place }) => fieldChoice(place, itemSaid(place, reading, sentence.id)));
  const back = asking('Back to the sentence', { words: [] }, 'to what was proposed for it');
  return {
    asks: 'Which field is it about? The likely ones come first; type to search.',
    choices: [
      ...choices.slice(0, near),
      ...(citing.size === 0 ? keepQuoted(record, sentence) : []),
      back,
      ...choices.slice(near),
      leaveOpen(),
      ...ends,
    ],
  };
}

/** What is asked for part by part comes back to the sentence when it is put in. */
function fieldChoice(place: FieldPlace, adds: AddedItem | undefined): WalkChoice {
  const title = place.titles.join(': ');
  if (adds === undefined) return asking(title, { words: [], field: place.path }, foundBy(place));
  return { ...asking(title, andMore('more'), foundBy(place)), adds };
}

/** So many likely fields stand before the ways out of the list. */
const mostNear = 6;

/** What stands in the field that was chosen. A field that the file no longer has, or that was never offered, is asked for again. */
export function whichValue(
  record: FileRecord,
  tree: MapTree,
  sentence: Sentence,
  { reading, path, text, word }: Chosen,
): Question {
  const { kind } = record;
  const place = kind === undefined ? undefined : fieldPlacesIn(kind, tree).find((one) => one.path === path);
  if (kind === undefined || place === undefined) return whichField(record, tree, sentence, reading);
  const saying = { reading, src: asValue(sentence.id), ids: idsIn(tree) };
  const typed = text === undefined || text.trim() === '' ? [] : typedValue(place, text.trim(), saying, word);
  const values = [...typed, ...valuesFor(place, saying)].flatMap((value) => wordsChosen(value));
  const offered = values.flatMap((value) =>
    targetsOf(value.fields, { root: tree, kind, statement: sentence.id }).map((target) => ({ value, target, place })),
  );
  const ordered = byTarget(offered).filter(({ target }) => !target.fields.some((field) => isListed(tree, field)));
  const [whole, open] = [ordered.filter(isWhole), ordered.filter((one) => !isWhole(one))];
  const choices = open.flatMap((one) => choiceOf(record, tree, sentence, one));
  const twice = choices.length > 0 ? [] : ordered.flatMap((one) => twiceChoices(record, tree, sentence, one));
  if (twice.length > 0)
    return {
      asks: `${place.titles.join(': ')} is there already. What does this sentence say of it?`,
      choices: [...onceEach(twice), ...typing(place), ...waysOut(record, sentence)],
    };
  const asked = wordsWithoutValue(place, saying).map((one) => askingValue(place, one));
  const last = whole.flatMap((one) => choiceOf(record, tree, sentence, one));
  const says = choices.length + last.length === 0 ? missing(place, text) : `what does the sentence say? ${caution}`;
  return {
    asks: `${place.titles.join(': ')}: ${says}`,
    choices: [...choices, ...asked, ...typing(place), ...last, ...waysOut(record, sentence)],
  };
}

/** Behind the values: nothing that was chosen by mistake holds anybody. */
function waysOut(record: FileRecord, sentence: Sentence): readonly WalkChoice[] {
  return [
    asking('Another field …', andMore('field')),
    asking('Back to the sentence', { words: [] }, 'to what was proposed for it'),
    ...(sentence.state === 'fields' ? [] : keepQuoted(record, sentence)),
    leaveOpen(),
    ...ends,
  ];
}

interface Valued extends Pick<FieldValue, 'fields' | 'is'> {
  readonly about: string;
}

/** A value with each word that may stand in its one open place. */
function wordsChosen({ fields, words, is }: FieldValue): readonly Valued[] {
  const holes = fields.flatMap(({ value }) => marked.pieces(value).filter((piece) => typeof piece !== 'string'));
  const [hole, other] = holes;
  const choices = hole === undefined || other !== undefined ? [''] : (hole.choices ?? ['']);
  return choices.map((word) => ({
    fields: fields.map((field) => ({ ...field, value: filled(field.value, word) })),
    about: words.get(word) ?? '',
    ...(is !== undefined && { is }),
  }));
}

function filled(value: string, word: string): string {
  const pieces = marked.pieces(value);
  return pieces
    .map((piece) => (typeof piece === 'string' ? piece : word === '' ? (piece.choices?.[0] ?? '') : word))
    .join('');
}

/** All values for the place that is meant most likely come first. */
function byTarget(offered: readonly Offered[]): readonly Offered[] {
  const order = [...new Set(offered.map(({ target }) => target.where))];
  return offered.toSorted((a, b) => order.indexOf(a.target.where) - order.indexOf(b.target.where));
}

function missing(place: FieldPlace, text = ''): string {
  if (text.trim() === '') return 'this sentence has no value for it.';
  return isNumber(place.shape)
    ? `"${text}" is no value with a unit that stands here.`
    : `"${text}" is no value for it.`;
}

/** Where words or numbers may stand, they can be typed. */
function typing(place: FieldPlace): readonly WalkChoice[] {
  const how = isNumber(place.shape) ? 'the value with its unit, such as the page has it' : 'in the words of the page';
  const types = `${place.titles.join(': ')}: ${how}`;
  return takesText(place)
    ? [{ ...asking('Type it yourself …', { words: [], field: place.path }, place.about), types }]
    : [];
}

/** A word that says nothing without its value. */
function askingValue({ path, titles, words }: FieldPlace, word: string): WalkChoice {
  const title = titles.join(': ');
  return {
    ...asking(`${title}: ${plainName(word)} …`, { words: [word], field: path }, words.get(word) ?? 'then the value'),
    types: `${title}: ${plainName(word)}: which value, with its unit?`,
  };
}

function isWhole({ value }: Offered): boolean {
  return value.is === 'whole';
}

/** A word that the list has already. */
function isListed(tree: MapTree, { path, value }: NewField): boolean {
  const list = path.endsWith('[]') ? nodeAt(tree, path.slice(0, -2).split('.')) : undefined;
  return list?.node === 'list' && list.items.some((item) => item.node === 'scalar' && asValue(item.text) === value);
}

interface Chosen {
  readonly reading: QuoteReading;
  readonly path: string;
  /** What somebody typed for it. */
  readonly text?: string | undefined;
  /** The word whose value that is. */
  readonly word?: string | undefined;
}

interface Offered {
  readonly value: Valued;
  readonly target: Target;
  readonly place: FieldPlace;
}

function choiceOf(
  record: FileRecord,
  tree: MapTree,
  sentence: Sentence,
  { value, target, place }: Offered,
): readonly WalkChoice[] {
  const { kind } = record;
  if (kind === undefined) return [];
  const found = put({ record, kind, tree }, sentence.id, target.fields, []);
  if (found.made.length === 0) return [];
  const { lineEnd } = fileForm(record.text);
  // A field without a place for its sentence would leave the sentence open for ever: the sentence itself says where it went.
  const note =
    place.cites === 'no' ? (noted(record, sentence, `in words under ${place.path.replace('[]', '')}`) ?? []) : [];
  const label = [told(kind, value.fields, []), target.where].filter((part) => part !== '').join(', ');
  const detail = [value.about, ...aboutWays(value), ...found.left].filter((part) => part !== '').join('; ');
  return [{ label, detail, does: 'fields', edits: [...editsOf(found, [], lineEnd), ...note], told: andMore('more') }];
}

/** Said of a stage, it is said of all its steps. */
function aboutWays({ fields }: Valued): readonly string[] {
  const isBefore = fields.some(({ path, value }) => path === 'manual.needed' && value === 'before-machine');
  return isBefore ? ['all steps of this stage; by hand alone is then no way of cleaning by itself'] : [];
}

/** The field is there already: what stands there, this instead, or both. */
function twiceChoices(
  record: FileRecord,
  tree: MapTree,
  sentence: Sentence,
  { target }: Offered,
): readonly WalkChoice[] {
  const { kind } = record;
  const found = kind === undefined ? undefined : put({ record, kind, tree }, sentence.id, target.fields, []);
  if (found === undefined || found.made.length > 0) return [];
  return aboutTwice(record, sentence, standing(record, tree, found.there, []));
}

/** What is kept is the same whichever word is chosen. */
function onceEach(choices: readonly WalkChoice[]): readonly WalkChoice[] {
  return [...new Map(choices.map((choice) => [choice.label, choice])).values()];
}

/** After a field was taken: most sentences say no more, so that Enter goes on. */
export function more(asks = 'Taken. Does the sentence say more than this?'): Question {
  return {
    asks,
    choices: [
      { label: 'Go on to the next sentence', detail: '', does: 'open', edits: [] },
      asking('A further field from this sentence …', andMore('field')),
      ...ends,
    ],
  };
}
