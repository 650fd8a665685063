import type { Shape } from '../../schema/shape.ts';
import { indexCaution } from '../words/cautions.ts';
import { asValue } from '../writing/bare.ts';
import type { Offer, Piece } from '../writing/offer.ts';
import type { Block } from '../writing/text-blocks.ts';
import { unquoted } from '../writing/writing-flow.ts';
import type { Wanted } from '../writing/writing-shape.ts';
import { sayingPieces, wordsOfRequirement } from './completion-bounds.ts';
import type { CycleChoice } from './completion-cycles.ts';
import { cycleChoices } from './completion-cycles.ts';
import type { KnownId, Surroundings } from './completion-ids.ts';
import { fittingIds, knownIds, mostOffered } from './completion-ids.ts';
import { aboutField, examplesOf, type Layout } from './completion-keys.ts';
import { typicalUnits } from './typical-units.ts';

/** A value before it is put in its place: the words, and what they mean. */
interface Choice {
  readonly label: string;
  readonly detail: string;
  readonly about: readonly Block[];
  readonly of: Offer['of'];
  readonly pieces: readonly Piece[];
  readonly filter?: string;
}

/** All that may stand as a value, or an item, at the place: words with their meaning, ids that exist, units, dates. */
export function valueOffers(wanted: Wanted, around: Surroundings, layout: Layout): readonly Offer[] {
  const { shape, as, slot } = wanted;
  if (shape.form === 'list' && as === 'value') return listOffers(wanted, around, layout);
  const taken = takenItems(wanted);
  const isThirdEnd = wanted.field?.key === 'between' && taken.size > 1 && slot.word.start === slot.word.end;
  if (isThirdEnd) return [];
  const choices = choicesFor(shape, wanted, around, layout).filter(({ label }) => !taken.has(label));
  return choices.map((choice) => placed(choice, [slot.lead, ...choice.pieces], wanted));
}

/** A list that has not begun: one item of it, with the brackets or the dash that it needs. */
function listOffers(wanted: Wanted, around: Surroundings, layout: Layout): readonly Offer[] {
  const { shape, slot } = wanted;
  if (shape.form !== 'list') return [];
  const onOwnLine = slot.at === 'content';
  if (wanted.field?.key === 'between' && !onOwnLine)
    return amountChoices(wanted, layout).map((choice) => placed(choice, bothEnds(choice, slot.lead), wanted));
  if (shape.item.form === 'record' || shape.item.form === 'table') return [newItem(wanted, layout)];
  return choicesFor(shape.item, wanted, around, layout).map((choice) => {
    const pieces: readonly Piece[] = onOwnLine
      ? ['- ', ...choice.pieces]
      : [`${slot.lead}[`, ...choice.pieces, { hole: 'rest' }, ']'];
    return placed(choice, pieces, wanted);
  });
}

/** A range has two ends, in one unit. */
function bothEnds({ pieces }: Choice, lead: string): readonly Piece[] {
  return [`${lead}[`, ...pieces, ', ', ...pieces, ']'];
}

function newItem({ slot, field }: Wanted, layout: Layout): Offer {
  const inner = ' '.repeat(layout.column + layout.step);
  const rest: Piece = { hole: 'rest' };
  const forms: Readonly<Record<string, readonly Piece[]>> = {
    content: ['- ', rest],
    flow: [`${slot.lead}[{`, rest, '}]'],
    block: [`\n${inner}- `, rest],
  };
  const form = slot.at === 'content' ? 'content' : layout.style;
  return {
    label: 'new line of the list',
    detail: field?.title ?? '',
    about: field === undefined ? [] : aboutField(field),
    of: 'field',
    pieces: forms[form] ?? [],
    span: slot.word,
    goesOn: true,
  };
}

function placed({ pieces: _, ...choice }: Choice, pieces: readonly Piece[], { slot }: Wanted): Offer {
  return { ...choice, pieces: [...pieces, slot.tail], span: slot.word };
}

function takenItems({ slot, as }: Wanted): ReadonlySet<string> {
  const list = slot.path[slot.path.length - 1]?.frame;
  if (as !== 'item' || list?.of !== 'list') return new Set();
  return new Set(list.items.map(unquoted));
}

function choicesFor(shape: Shape, wanted: Wanted, around: Surroundings, layout: Layout): readonly Choice[] {
  switch (shape.form) {
    case 'words':
      return [...shape.words].map(([word, meaning]) => wordChoice(word, meaning));
    case 'flag':
      return [flagChoice('true', 'Yes.'), flagChoice('false', 'No.')];
    case 'reference':
      return [...suggestedChoices(shape, wanted), ...referenceChoices(shape.refers, wanted, around)];
    case 'citation':
      return knownIds('statement', around).map((id) => idChoice(id, 'statement'));
    case 'date':
    case 'datetime':
      // The day on which a document was issued is printed on it: today would be a guess.
      return shape.mayBeMonth === true ? [] : [{ ...wordChoice(layout.today, ''), detail: 'today', of: 'date' }];
    case 'quantity':
      return amountChoices(wanted, layout);
    case 'record':
      return shape.dimension === undefined ? [groupChoice()] : boundChoices(wanted, layout);
    case 'table':
      return [groupChoice()];
    case 'text':
    case 'link':
      return textChoices(shape, wanted, around);
    case 'id':
    case 'list':
      return [];
  }
}

function wordChoice(word: string, meaning: string): Choice {
  const about: readonly Block[] = meaning === '' ? [] : [{ block: 'line', text: meaning }];
  return { label: word, detail: meaning, about, of: 'word', pieces: [asValue(word)] };
}

/** Between quotes it would be a text, and the field takes none. */
function flagChoice(word: string, meaning: string): Choice {
  return { ...wordChoice(word, meaning), pieces: [word] };
}

function groupChoice(): Choice {
  return { label: '{ }', detail: 'fields on one line', about: [], of: 'field', pieces: ['{', { hole: 'rest' }, '}'] };
}

function idChoice({ id, detail, about }: KnownId, of: Offer['of']): Choice {
  return {
    label: id,
    detail,
    about,
    of,
    pieces: [asValue(id)],
    ...(of === 'statement' && { filter: `${id} ${detail}` }),
  };
}

function referenceChoices(refers: readonly string[], wanted: Wanted, around: Surroundings): readonly Choice[] {
  const ids = refers.flatMap((one) => knownIds(one, around));
  const self = around.entity === undefined ? '' : unquoted(wanted.slot.path[0]?.frame.present.get('id') ?? '');
  const others = ids.filter(({ id }) => id !== self || !refers.includes(wanted.kind ?? ''));
  const choices = cyclesFor(refers, wanted, around);
  if (choices === undefined) return fittingIds(others, wanted.typed).map((id) => idChoice(id, 'id'));
  const order = new Map(choices.map((choice, index) => [choice.id, { ...choice, index }]));
  const rankOf = (id: string): number => order.get(id)?.index ?? order.size;
  const sorted = others.toSorted((a, b) => rankOf(a.id) - rankOf(b.id));
  return fittingIds(sorted, wanted.typed).map((known) => withReason(idChoice(known, 'id'), order.get(known.id)));
}

/** More ids may stand here than are offered at once. */
export function isOneOfMany({ shape }: Wanted, around: Surroundings): boolean {
  const named = shape.form === 'list' ? shape.item : shape;
  if (named.form !== 'reference') return false;
  let count = 0;
  for (const refers of named.refers) count += knownIds(refers, around).length;
  return count > mostOffered;
}

function withReason(choice: Choice, found: CycleChoice | undefined): Choice {
  if (found === undefined || found.words === '') return choice;
  const words: Block = { block: 'line', text: `For this set: ${found.words}` };
  const facts: Block = { block: 'line', text: choice.detail };
  const note: Block = {
    block: 'note',
    text: indexCaution,
  };
  return { ...choice, detail: found.words, about: [words, facts, ...choice.about, note] };
}

/** For the cycles that a set's card names: those that fit first. */
function cyclesFor(
  refers: readonly string[],
  { kind, keys }: Wanted,
  around: Surroundings,
): readonly CycleChoice[] | undefined {
  const id = around.entity?.id?.text;
  if (kind !== 'set' || id === undefined || keys.length !== 1) return undefined;
  const choices = around.view.ask(cycleChoices, id);
  const found = refers.includes('cycle')
    ? choices?.sterilizing
    : refers.includes('washer-cycle')
      ? choices?.washing
      : undefined;
  return found === undefined || found.length === 0 ? undefined : found;
}

/** A number that stands already gets its units; where none stands, a hole is offered: a number is never proposed. */
function amountChoices({ shape, named, field, slot, typical }: Wanted, layout: Layout): readonly Choice[] {
  const measured =
    shape.form === 'quantity'
      ? shape
      : shape.form === 'list' && shape.item.form === 'quantity'
        ? shape.item
        : undefined;
  if (measured === undefined) return [];
  const examples = [...typical, ...(field?.examples ?? []), ...measured.examples];
  const dimension = named?.dimension ?? measured.dimension;
  const typed = typedNumber(slot.path, slot.word, layout);
  const about: readonly Block[] =
    examples.length === 0 ? [] : [{ block: 'line', text: `Typical: ${examples.slice(0, 4).join(' · ')}` }];
  return typicalUnits(dimension, examples).map((unit) => {
    const number: Piece = typed === '' ? { hole: 'number' } : typed;
    const label = typed === '' ? `number in ${unit}` : `${typed} ${unit}`;
    return { label, detail: '', about, of: 'value', pieces: [number, ` ${unit}`] };
  });
}

function typedNumber(path: Wanted['slot']['path'], word: { start: number; end: number }, { text }: Layout): string {
  if (path.length === 0) return '';
  return /^[-+]?[0-9][0-9.]{0,20}/.exec(text.slice(word.start, word.end))?.[0] ?? '';
}

/** A whole requirement, by the word that the page uses. */
function boundChoices({ shape, named, typical }: Wanted, layout: Layout): readonly Choice[] {
  const record = shape.form === 'list' ? shape.item : shape;
  if (record.form !== 'record' || record.dimension === undefined) return [];
  const measure = {
    dimension: named?.dimension ?? record.dimension,
    examples: [...typical, ...examplesOf(record)],
    today: layout.today,
  };
  return wordsOfRequirement(record).map((field) => {
    const cited: readonly Piece[] = field.key === 'silent' ? [] : [', src: ', { hole: 'words' }];
    const pieces: readonly Piece[] = ['{', ...sayingPieces(field.key, measure), ...cited, '}'];
    return { label: field.key, detail: field.description, about: aboutField(field), of: 'word', pieces };
  });
}

function textChoices(shape: Shape, wanted: Wanted, around: Surroundings): readonly Choice[] {
  const choices = suggestedChoices(shape, wanted);
  return wanted.field?.key === 'rev' ? [...choices, ...revisionChoices(wanted, around)] : choices;
}

/** Usual words of a field that takes others too: `double-wrap`, beside the ids of packagings. */
function suggestedChoices({ suggestions }: Shape, { field }: Wanted): readonly Choice[] {
  return [...(suggestions ?? field?.suggestions ?? [])].map(([word, meaning]) => wordChoice(word, meaning));
}

/** The registered revisions of the document named beside it. */
function revisionChoices({ around: map }: Wanted, { view }: Surroundings): readonly Choice[] {
  const number = unquoted(map?.present.get('doc') ?? '');
  if (number === '') return [];
  return view.revisions(number).flatMap(({ rev, status }) => {
    if (rev === undefined) return [];
    return [{ ...wordChoice(rev.text, ''), detail: status?.text ?? '', of: 'id' as const }];
  });
}
