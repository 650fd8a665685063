import type { FileRecord } from '../../library/file-record.ts';
import { plainName, raised } from '../../model/plain-words.ts';
import type { Told } from '../../panel/sentences.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import type { MapTree } from '../../syntax/tree.ts';
import type { Sentence } from '../reading/open-sentences.ts';
import { matchNumbers } from '../reading/quote-match.ts';
import { methodBeside } from '../reading/quote-method-beside.ts';
import { isAtUse, sectionOf, wayOf, ways } from '../reading/quote-section.ts';
import type { FieldsFromQuote } from '../reading/quote-to-fields.ts';
import { quoteToFields } from '../reading/quote-to-fields.ts';
import type { WaysJoined } from '../reading/quote-ways.ts';
import { waysJoined } from '../reading/quote-ways.ts';
import { titleOf } from '../reading/told-fields.ts';
import type { Question, WalkChoice } from '../words/walk-choice.ts';
import { asking, ends, leaveOpen } from '../words/walk-choice.ts';
import { marked, wordIn } from '../writing/marked.ts';
import type { Hole, Piece } from '../writing/offer.ts';
import { hasField, more, whichField, whichValue } from './field-questions.ts';
import { aboutTwice, standing } from './field-there.ts';
import { holesOf, isUndecided, withWord } from './sentence-holes.ts';
import { isUntried, keepQuoted, noted, reasonChoices, reasonIn } from './sentence-notes.ts';
import { insteadOfStages, proposal } from './sentence-proposal.ts';

export interface Read {
  readonly reading: QuoteReading;
  readonly told: Told;
}

/** The question that stands next for a sentence. */
export function asked(record: FileRecord, tree: MapTree, sentence: Sentence, { reading, told }: Read): Question {
  if (told.next === 'reason') return { asks: 'Why does it need no field?', choices: reasonChoices(record, sentence) };
  if (told.next === 'more') return more();
  if (told.next === 'field') return whichField(record, tree, sentence, reading);
  if (told.field !== undefined)
    return whichValue(record, tree, sentence, {
      reading,
      path: told.field,
      text: told.text,
      word: told.words[0],
    });
  if (told.way === undefined && isWayOpen(record, sentence, reading)) return whichWay(told);
  const section = sectionOf(sentence.section, reading.language);
  const joined = record.kind === 'device' ? waysJoined(reading, tree, section) : undefined;
  if (told.way === undefined && joined !== undefined && joined.together === undefined) return allOrAny(joined, told);
  const found = quoteToFields(record, tree, sentence.offset, told.way);
  const holes = holesOf(found);
  const undecided = holes.find((hole) => isUndecided(hole, told.words));
  if (undecided !== undefined) return whichWord(tree, sentence, holes, undecided, told);
  if (told.next === 'bounds')
    return { asks: 'Which bound word does the page have?', choices: otherBounds(record, found, told) };
  const instead = told.next === 'instead' ? insteadOfStages(record, tree, found, told) : undefined;
  return instead ?? whole(record, tree, sentence, { reading, told, found });
}

/** Whether the sentence fits more than one way of cleaning, and nothing says which. */
function isWayOpen({ kind }: FileRecord, { section, quote }: Sentence, reading: QuoteReading): boolean {
  if (kind !== 'device') return false;
  const above = sectionOf(section, reading.language);
  const named = [...above.stages, ...reading.stages.map(({ stage }) => stage)];
  if (wayOf(above) !== undefined || named.some((stage) => ways.some((way) => way === stage))) return false;
  if (isAtUse(above)) return false;
  const isRinsed = reading.stages.some(({ stage }) => stage === 'rinse') && !above.stages.includes('rinse');
  const isPlaced = matchNumbers(reading, kind, above).placed.length > 0;
  const isCleaned = /\b(?:clean(?!ly)|wash|detergent|reinig|wasch|nettoy|lav)/i.test(quote);
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

/** Ways of cleaning that the sentence names without saying whether one of them is enough. */
function allOrAny({ ways: named }: WaysJoined, told: Told): Question {
  const list = named.map((way) => wayWords[way].toLowerCase()).join(', ');
  return {
    asks: `How do these belong together: ${list}? The sentence does not say.`,
    choices: [
      leaveOpen(),
      asking('All of these are done, one after the other', { ...told, way: 'all_of' }),
      asking('Any one of these is enough', { ...told, way: 'any_of' }),
      ...ends,
    ],
  };
}

const asksFor: Readonly<Record<string, string>> = {
  modality: 'Which method does the page mean? This sentence does not say.',
  relation: 'What does the page say of these packagings? This sentence leaves it open.',
  grade: 'Which grade of water does the page mean? Its own word is none of ours.',
};

/** A method or a grade that the words leave open: asked once for all places of the sentence. */
function whichWord(
  tree: MapTree,
  sentence: Sentence,
  holes: readonly Hole[],
  { field = '' }: Hole,
  told: Told,
): Question {
  const open = holes.filter((hole) => hole.field === field && isUndecided(hole, told.words)).map(({ at = 0 }) => at);
  const said = field === 'modality' ? methodBeside(tree, sentence) : undefined;
  const all = knownWords(field).map(([word, about]) =>
    asking(raised(plainName(word)), withHoles(told, open, word), `${about} Written as ${word}.`),
  );
  const first = all.filter((_choice, at) => knownWords(field)[at]?.[0] === said);
  const asks = asksFor[field] ?? `Which ${field} does the page mean? This sentence does not say.`;
  const forAll = open.length > 1 ? ` It is taken for all ${open.length} of the sentence.` : '';
  return {
    asks: `${asks}${first.length > 0 ? ' Another sentence of its section names the one that comes first.' : ''}${forAll}`,
    choices: [leaveOpen(), ...first, ...all.filter((choice) => !first.includes(choice)), ...ends],
  };
}

function withHoles(told: Told, places: readonly number[], word: string): Told {
  return places.reduce((sum, at) => withHole(sum, at, word), told);
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

function withHole({ way, words }: Told, at: number, word: string): Told {
  return { ...(way !== undefined && { way }), words: withWord(words, at, word) };
}

/** Every choice of a word that stands in the proposal, with the words it stands among. */
function otherBounds({ kind }: FileRecord, found: FieldsFromQuote | undefined, told: Told): readonly WalkChoice[] {
  return holesOf(found).flatMap((hole) => {
    const { at = 0, field = '', value = '', choices = [] } = hole;
    const path =
      found?.fields.find((one) => marked.pieces(one.value).some((piece) => isHole(piece, at)))?.path ?? field;
    const title = kind === undefined ? field : titleOf(kind, path, field);
    const others = choices.filter((word) => word !== wordIn(hole, told.words));
    return others.map((word) => asking(`${title} ${plainName(word)} ${value}`.trim(), withHole(told, at, word)));
  });
}

function isHole(piece: Piece, at: number): boolean {
  return typeof piece !== 'string' && piece.at === at;
}

interface Proposed extends Read {
  readonly found: FieldsFromQuote | undefined;
}

function whole(record: FileRecord, tree: MapTree, sentence: Sentence, { reading, told, found }: Proposed): Question {
  if (sentence.state !== 'open') return more('This sentence is taken already. Does it say more than that?');
  if (found !== undefined && found.insertions.length > 0)
    return proposal(record, tree, sentence, { reading, told, found });
  const twice = found === undefined ? [] : standing(record, tree, found.there, told.words);
  const others = [
    asking('Another field …', { ...told, next: 'field' }, 'choose where it belongs'),
    asking('Nothing to encode here …', { ...told, next: 'reason' }, 'then the reason'),
  ];
  if (twice.length > 0)
    return {
      asks: 'A field is there already. What does this sentence say of it?',
      choices: [...aboutTwice(record, sentence, twice), ...others, ...ends],
    };
  return unread(record, sentence, reading, [...others, ...ends]);
}

/** No field is read out of it: what says nothing of the work needs none, and what no field is for stays a quoted statement. */
function unread(
  record: FileRecord,
  sentence: Sentence,
  reading: QuoteReading,
  others: readonly WalkChoice[],
): Question {
  if (isUntried(sentence.quote)) {
    const reason = 'not tried out by the maker: neither allowed nor forbidden';
    return { asks: untried, choices: [...keepQuoted(record, sentence, reason), leaveOpen(), ...others] };
  }
  const isField = hasField(record, sentence, reading, 'likely');
  const isAdvice = isGeneral(reading, sentence) && !hasField(record, sentence, reading, 'surely');
  const reason = reasonIn(record, sentence) ?? (isAdvice ? 'general advice' : undefined);
  if (reason !== undefined) {
    const first = {
      label: `Nothing to encode here: ${reason}`,
      detail: 'noted as not needed',
      does: 'nothing',
    } as const;
    return {
      asks: notRead,
      choices: [{ ...first, edits: noted(record, sentence, reason) ?? [] }, leaveOpen(), ...others],
    };
  }
  const keep = keepQuoted(record, sentence);
  return isField
    ? { asks: notRead, choices: [leaveOpen(), ...others.slice(0, 1), ...keep, ...others.slice(1)] }
    : { asks: noField, choices: [...keep, leaveOpen(), ...others] };
}

const notRead = 'No field is read from this sentence.';
const noField = 'No field was read from this sentence: it can stay as a quoted statement.';

const untried = 'The page says that something was not tried out: it neither allows nor forbids it.';

/** Words of the work: a sentence with one of them may ask for something. */
const workWords =
  /clean|wash|water|detergent|agent|solution|steril|temperature|heat|dry|pack|store|cool|inspect|check|test|remov|apart|replac|discard|spray|delay|end of life|service life|worn|wear\b|damage|open|clos|unscrew|withdraw|attach|detach|connect|lubric|oil\b|wipe|keep|protect|avoid|place\b|load|cover|flush|rinse|brush|must|only|never|not\b|reinig|wasser|temperatur|prüf|nur\b|nicht\b|nettoy|eau\b|stéril|seulement/i;

/** No number, no step, nothing forbidden, and no heading that asks for something. */
function isGeneral({ numbers, stages, negations, language }: QuoteReading, { quote, section }: Sentence): boolean {
  const above = sectionOf(section, language);
  if (numbers.length + stages.length + negations.length + above.stages.length > 0) return false;
  return !workWords.test(quote);
}
