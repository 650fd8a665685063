import type { Edit } from '../base/problem.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { Told } from '../panel/sentences.ts';
import type { QuoteReading } from '../quantity/prose/prose.ts';
import type { Shape } from '../schema/shape.ts';
import { shapeOf } from '../schema/shapes.ts';
import { fileForm } from '../syntax/edits.ts';
import type { MapTree } from '../syntax/tree.ts';
import { valueUnder } from '../syntax/value-under.ts';
import type { Hole, Piece } from './offer.ts';
import { asPlain } from './offer.ts';
import type { Sentence } from './open-sentences.ts';
import { matchNumbers } from './quote-match.ts';
import { sectionOf, wayOf, ways } from './quote-section.ts';
import type { FieldsFromQuote } from './quote-to-fields.ts';
import { quoteToFields } from './quote-to-fields.ts';
import { leftUnclear, noted, reasonChoices } from './sentence-notes.ts';
import type { Question, WalkChoice } from './walk-choice.ts';
import { asking, caution, ends, leaveOpen } from './walk-choice.ts';

export interface Read {
  readonly reading: QuoteReading;
  readonly told: Told;
}

/** The question that stands next for a sentence. */
export function asked(record: FileRecord, tree: MapTree, sentence: Sentence, { reading, told }: Read): Question {
  if (told.next === 'reason') return { asks: 'Why does it need no field?', choices: reasonChoices(record, sentence) };
  if (told.way === undefined && isWayOpen(record, sentence, reading)) return whichWay(told);
  const found = quoteToFields(record, tree, sentence.offset, told.way);
  const holes = holesOf(found);
  const open = holes.findIndex(({ hole, at }) => isUndecided(hole) && (told.words[at] ?? '') === '');
  const undecided = holes[open];
  if (undecided !== undefined) return whichWord(undecided, told);
  if (told.next === 'bounds')
    return { asks: 'Which bound word does the page have?', choices: otherBounds(holes, told) };
  return whole(record, tree, sentence, { reading, told, found });
}

/** Whether the sentence fits more than one way of cleaning, and nothing says which. */
function isWayOpen({ kind }: FileRecord, { section, quote }: Sentence, reading: QuoteReading): boolean {
  if (kind !== 'device') return false;
  const above = sectionOf(section, reading.language);
  const named = [...above.stages, ...reading.stages.map(({ stage }) => stage)];
  if (wayOf(above) !== undefined || named.some((stage) => ways.some((way) => way === stage))) return false;
  const isRinsed = reading.stages.some(({ stage }) => stage === 'rinse') && !above.stages.includes('rinse');
  const isPlaced = matchNumbers(reading, kind, above).placed.length > 0;
  const isCleaned = /\b(?:clean|wash|detergent|reinig|wasch|nettoy|lav)/i.test(quote);
  return isRinsed || (isCleaned && reading.numbers.some(({ units }) => units.length > 0) && !isPlaced);
}

const wayWords: Readonly<Record<(typeof ways)[number], string>> = {
  manual: 'Cleaning by hand',
  ultrasonic: 'The ultrasonic bath',
  mechanical: 'The washer',
};

function whichWay(told: Told): Question {
  const choices = ways.map((way) => asking(wayWords[way], { ...told, way }));
  return {
    asks: 'Which step is it about? The sentence and its heading do not say.',
    choices: [leaveOpen(), ...choices, asking('None of these: a step by itself', { ...told, way: '' }), ...ends],
  };
}

interface HoleAt {
  readonly hole: Hole;
  /** Among the holes of the sentence. */
  readonly at: number;
  /** What stands before and behind it. */
  readonly before: string;
  readonly behind: string;
}

function holesOf(found: FieldsFromQuote | undefined): readonly HoleAt[] {
  const holes: HoleAt[] = [];
  for (const { pieces } of found?.insertions ?? [])
    for (const [index, hole] of pieces.entries()) {
      if (typeof hole === 'string') continue;
      holes.push({ hole, at: holes.length, before: textAt(pieces, index - 1), behind: textAt(pieces, index + 1) });
    }
  return holes;
}

function textAt(pieces: readonly Piece[], index: number): string {
  const piece = pieces[index];
  return typeof piece === 'string' ? piece : '';
}

function isUndecided({ choices }: Hole): boolean {
  return choices === undefined;
}

/** A method or a grade that the words leave open. */
function whichWord({ at, before }: HoleAt, told: Told): Question {
  const key = /([a-z_]+): $/.exec(before)?.[1] ?? '';
  const known = knownWords(key);
  return {
    asks: `Which ${key === 'modality' ? 'method' : key} does the page mean? This sentence does not say.`,
    choices: [leaveOpen(), ...known.map(([word, about]) => asking(word, withWord(told, at, word), about)), ...ends],
  };
}

/** The closed list of words of a field of the device. */
function knownWords(key: string): readonly (readonly [string, string])[] {
  const find = (shape: Shape, depth: number): Shape | undefined => {
    if (shape.form === 'list') return find(shape.item, depth);
    if (shape.form !== 'record' || depth === 0) return undefined;
    const own = shape.fields.get(key)?.shape;
    if (own?.form === 'words') return own;
    for (const { shape: inner } of shape.fields.values()) {
      const found = find(inner, depth - 1);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  const shape = find(shapeOf('device'), 4);
  return shape?.form === 'words' ? [...shape.words] : [];
}

function withWord({ way, words }: Told, at: number, word: string): Told {
  const all = Array.from({ length: Math.max(words.length, at + 1) }, (_none, index) => words[index] ?? '');
  return { ...(way !== undefined && { way }), words: all.with(at, word) };
}

/** Every choice of a word that stands in the proposal, with the words it stands among. */
function otherBounds(holes: readonly HoleAt[], told: Told): readonly WalkChoice[] {
  return holes.flatMap(({ hole, at, before, behind }) => {
    const now = chosen(hole, told.words[at]);
    const name = /([a-z_]+)(?:: \{?)$/.exec(before)?.[1]?.replaceAll('_', ' ') ?? '';
    const value = /^: ([^,}]+)/.exec(behind)?.[1] ?? '';
    const others = (hole.choices ?? []).filter((word) => word !== now);
    return others.map((word) =>
      asking(`${name} ${word.replaceAll('_', ' ')} ${value}`.trim(), withWord(told, at, word)),
    );
  });
}

function chosen({ choices }: Hole, word: string | undefined): string {
  return word === undefined || word === '' ? (choices?.[0] ?? '') : word;
}

/** The proposal as the words make it, with the words that somebody chose. */
function editsOf(found: FieldsFromQuote, { words }: Told, lineEnd: string): readonly Edit[] {
  let at = 0;
  return found.insertions.map(({ span, pieces }) => {
    const filled = pieces.map((piece) => (typeof piece === 'string' ? piece : chosen(piece, words[at++])));
    return { span, text: asPlain(filled, lineEnd) };
  });
}

interface Proposed extends Read {
  readonly found: FieldsFromQuote | undefined;
}

function whole(record: FileRecord, tree: MapTree, sentence: Sentence, { reading, told, found }: Proposed): Question {
  const made = found !== undefined && found.insertions.length > 0 ? found : undefined;
  const edits = made === undefined ? [] : editsOf(made, told, fileForm(record.text).lineEnd);
  const nothing = asking('Nothing to encode here …', { ...told, next: 'reason' }, 'then the reason');
  const general = isGeneral(reading, sentence) ? noted(record, sentence, 'general advice') : undefined;
  const unclear = leftUnclear(record, tree, sentence, made?.made[0]);
  const first: WalkChoice[] = [];
  if (made !== undefined) first.push({ label: taken(made, told), detail: detailOf(made, tree), does: 'fields', edits });
  else if (general !== undefined) first.push({ ...generalAdvice, edits: general });
  const hasChoice = holesOf(made).some(({ hole }) => hole.choices !== undefined);
  return {
    asks: made === undefined ? 'No field is read from this sentence.' : caution,
    choices: [
      ...first,
      leaveOpen(),
      ...(hasChoice ? [asking('Another word …', { ...told, next: 'bounds' }, 'at least, at most, required, ...')] : []),
      nothing,
      ...(unclear === undefined
        ? []
        : [{ label: 'The page leaves it unclear', detail: 'ask the maker', does: 'fields' as const, edits: unclear }]),
      ...ends,
    ],
  };
}

const generalAdvice = {
  label: 'Nothing to encode here: general advice',
  detail: 'noted as not needed',
  does: 'nothing',
} as const;

/** The fields in words, with the words that somebody chose. */
function taken(found: FieldsFromQuote, { words }: Told): string {
  const holes = holesOf(found);
  let text = found.shown.join(' | ');
  for (const { hole, at, behind } of holes) {
    const [from, to] = [chosen(hole, undefined), chosen(hole, words[at])].map((word) => word.replaceAll('_', ' '));
    const value = /^: ([^,}]+)/.exec(behind)?.[1] ?? '';
    if (from !== to && from !== undefined)
      text = text.replace(`${from}${value === '' ? '' : ` ${value}`}`, `${to}${value === '' ? '' : ` ${value}`}`);
  }
  return text;
}

function detailOf({ left, insertions }: FieldsFromQuote, tree: MapTree): string {
  const cleaning = valueUnder(tree, 'cleaning');
  const stages = cleaning?.node === 'map' ? valueUnder(cleaning, 'all_of') : undefined;
  const isFurther = stages?.node === 'list' && insertions.some(({ pieces }) => textAt(pieces, 0).includes('- stage: '));
  const mind = 'a further stage that is done as well; where the page gives a choice of ways, change all_of to any_of';
  return [...left.map((one) => `left: ${one}`), ...(isFurther ? [mind] : [])].join('; ');
}

/** Words of the work: a sentence with one of them may ask for something. */
const workWords =
  /clean|wash|water|detergent|agent|solution|steril|temperature|heat|dry|pack|store|cool|inspect|check|test|remov|apart|replac|discard|must|only|never|not\b|reinig|wasser|temperatur|prüf|nur\b|nicht\b|nettoy|eau\b|stéril|seulement/i;

/** No number, no step, nothing forbidden, and no heading that asks for something. */
function isGeneral({ numbers, stages, negations, language }: QuoteReading, { quote, section }: Sentence): boolean {
  const above = sectionOf(section, language);
  if (numbers.length + stages.length + negations.length + above.stages.length > 0) return false;
  return !workWords.test(quote);
}
