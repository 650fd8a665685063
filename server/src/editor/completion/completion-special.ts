import { kinds } from '../../schema/kinds.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { firstText } from '../naming/target-words.ts';
import { asValue } from '../writing/bare.ts';
import type { Offer, Piece } from '../writing/offer.ts';
import { slotAt } from '../writing/writing-place.ts';
import type { Wanted } from '../writing/writing-shape.ts';
import type { Surroundings } from './completion-ids.ts';

/** In a file that does not say yet what it describes: its kind. */
export function kindOffers(text: string, cursor: number): readonly Offer[] {
  const slot = slotAt(text, cursor);
  const top = slot?.path[0];
  if (slot === undefined || top === undefined || slot.path.length > 1) return [];
  if (slot.at === 'value') return top.key === 'kind' ? namedKinds(slot.word, slot.lead) : [];
  if (slot.at !== 'key' || top.frame.present.has('kind') || slot.hasColon) return [];
  return namedKinds(slot.word, 'kind: ').map((offer) => ({ ...offer, filter: `kind ${offer.label}` }));
}

function namedKinds(span: Offer['span'], lead: string): readonly Offer[] {
  return kinds.map((kind) => {
    const { description } = shapeOf(kind);
    return {
      label: kind,
      detail: description,
      about: [{ block: 'line', text: description }],
      of: 'word',
      pieces: [`${lead}${kind}`],
      span,
    };
  });
}

/** The next statement, with document and revision of the source where there is only one. */
export function statementOffers(wanted: Wanted, { entity }: Surroundings): readonly Offer[] {
  const { shape, slot, keys, present } = wanted;
  const isTable = wanted.as === 'key' && shape.form === 'table' && keys.join() === 'statements';
  if (!isTable || slot.hasColon) return [];
  const id = nextId([...present.keys()]);
  const pieces: readonly Piece[] = [
    `${slot.lead}${id}: {`,
    ...sourcePieces(entity),
    'page: ',
    { hole: 'number' },
    ', quote: "',
    { hole: 'words' },
    '"}',
  ];
  return [
    {
      label: id,
      detail: 'a further statement',
      about: [{ block: 'line', text: shape.value.description }],
      of: 'statement',
      pieces,
      span: slot.word,
    },
  ];
}

function nextId(present: readonly string[]): string {
  let highest = 0;
  for (const id of present) highest = Math.max(highest, Number(/^s(\d{1,6})$/.exec(id)?.[1] ?? 0));
  return `s${highest + 1}`;
}

function sourcePieces(entity: Surroundings['entity']): readonly Piece[] {
  const sources = entity !== undefined && 'sources' in entity ? entity.sources?.items : undefined;
  const [only] = sources ?? [];
  if (sources?.length !== 1 || only === undefined)
    return ['doc: ', { hole: 'words' }, ', rev: ', { hole: 'words' }, ', '];
  const revision = firstText(only, ['rev']);
  return [`doc: ${asValue(firstText(only, ['doc']))}, `, ...(revision === '' ? [] : [`rev: ${asValue(revision)}, `])];
}

/** Names of findings, in the settings of a library. */
export function settingOffers(wanted: Wanted, { rules }: Surroundings): readonly Offer[] {
  const { shape, slot, keys, kind, present } = wanted;
  if (kind !== 'library' || wanted.as !== 'key' || shape.form !== 'table' || keys.join() !== 'rules' || slot.hasColon)
    return [];
  return rules
    .filter(({ id }) => !present.has(id))
    .map(({ id, why }) => ({
      label: id,
      detail: '',
      about: [{ block: 'line', text: why }],
      of: 'id',
      pieces: [
        `${slot.lead}${id}: {severity: `,
        { hole: 'words', choices: ['warning', 'advice', 'error', 'ignored'] },
        ', reason: "',
        { hole: 'words' },
        '"}',
      ],
      span: slot.word,
    }));
}

/** The name of the file, for the id of what it describes. */
export function ownIdOffers({ shape, keys, slot }: Wanted, file: string): readonly Offer[] {
  const name = /([^/]{1,64})\.ifu\.yaml$/.exec(file)?.[1] ?? '';
  if (shape.form !== 'id' || keys.join() !== 'id' || !/^[A-Za-z0-9][A-Za-z0-9._-]*$/.test(name)) return [];
  return [
    {
      label: name,
      detail: 'as the file is named',
      about: [],
      of: 'id',
      pieces: [`${slot.lead}${asValue(name)}`],
      span: slot.word,
    },
  ];
}
