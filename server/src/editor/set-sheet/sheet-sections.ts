import { methodWords } from '../../model/method-names.ts';
import type { Cell, Row, SheetBlock, SheetItem, SheetSection } from '../../panel/set-sheet.ts';
import { citationWords } from '../../route/clash-words.ts';
import type { RouteExplanation } from '../../route/explanation.ts';
import type { Clash, GoverningRow, Governor, MakerLetter, NotOffered, Repair, SetRoute } from '../../route/model.ts';
import { nearMissBars } from './sheet-bars.ts';
import type { SheetPlaces } from './sheet-places.ts';
import { cardSection, cleaningSection, routeSection } from './sheet-route.ts';
import { effectMark, effectWords } from './sheet-words.ts';

/** The parts of a sheet in the order in which they are read: what is wrong, what to do, then what holds. */
export function sectionsOf(
  explanation: RouteExplanation,
  letters: readonly MakerLetter[],
  places: SheetPlaces,
): readonly SheetSection[] {
  const { route, clashes, repairs, governing, nearMisses, notOffered } = explanation;
  const sections: readonly SheetSection[] = [
    { title: clashes.length > 1 ? 'Smallest clashes' : 'Smallest clash', blocks: clashBlocks(clashes, places) },
    { title: 'Not known, or not to be relied on', blocks: unknownBlocks(route, places) },
    { title: 'Ways out', blocks: repairBlocks(repairs) },
    { title: 'Route', blocks: routeSection(route, places) },
    { title: 'Who governs', blocks: governingBlocks(governing, places) },
    { title: 'By how much cycles miss', blocks: barBlocks(nearMissBars(nearMisses, places)) },
    { title: 'Questions to makers', blocks: questionBlocks(letters, places) },
    { title: 'Cleaning, each member apart', blocks: cleaningSection(route, places) },
    { title: 'What the file of the set says', blocks: cardSection(route, places) },
    { title: 'Not offered', blocks: notOfferedBlocks(notOffered) },
  ];
  return sections.filter(({ blocks }) => blocks.length > 0);
}

function list(items: readonly SheetItem[], order: 'numbered' | 'plain' = 'plain'): readonly SheetBlock[] {
  return items.length === 0 ? [] : [{ is: 'list', ordered: order === 'numbered', items }];
}

function clashBlocks(clashes: readonly Clash[], places: SheetPlaces): readonly SheetBlock[] {
  return clashes.flatMap(({ about, of, atoms, alsoDemanded }) => {
    const lead =
      about === 'sterilization'
        ? `No packaging and cycle here meets all of these for ${of}:`
        : `No way of cleaning here meets the page of ${of}:`;
    const end =
      atoms.length === 1
        ? 'Without this, a route appears as far as this goes.'
        : 'With any one of these gone, a route appears as far as this goes.';
    const also = alsoDemanded.map(({ words }) => words);
    return [
      { is: 'text' as const, text: lead },
      ...list(
        atoms.map(({ words, says, at }) => ({
          text: words,
          mark: 'fails' as const,
          place: places.said(says, at),
          ...quoteOf(says),
          details: [],
        })),
        'numbered',
      ),
      { is: 'text' as const, text: also.length === 0 ? end : `${end} The same is demanded by: ${also.join('; ')}.` },
    ];
  });
}

function quoteOf(says: Clash['atoms'][number]['says']): { quote?: string; from?: string } {
  const [first] = says;
  return first === undefined || first.quote === '' ? {} : { quote: first.quote, from: citationWords(says) };
}

function unknownBlocks({ members }: SetRoute, places: SheetPlaces): readonly SheetBlock[] {
  return list(
    members.flatMap(({ device, unknown }) =>
      unknown.map(({ words, at }) => ({
        text: `${places.called(`device/${device}`)}: ${words}`,
        mark: 'asks' as const,
        place: places.at(at),
        details: [],
      })),
    ),
  );
}

function repairBlocks(repairs: readonly Repair[]): readonly SheetBlock[] {
  return list(
    repairs.map(({ words, effect, owner, lead, verified, leaves }) => ({
      text: words,
      mark: effectMark[effect],
      details: [
        `${effectWords[effect]}; who: ${owner}; how soon: ${lead}`,
        ...(verified.length === 0 ? [] : [`worked out: ${verified.join('; ')}`]),
        ...(leaves.length === 0 ? [] : [`left to do: ${leaves.join('; ')}`]),
      ],
    })),
  );
}

function governingBlocks(rows: readonly GoverningRow[], places: SheetPlaces): readonly SheetBlock[] {
  if (rows.length === 0) return [];
  const head = ['What', 'Required', 'Governed by', 'Here it is', 'Room left', 'Without the governor'];
  const cells = rows.map(
    ({ parameter, required, governedBy, gives, givenAt, slack, ifLeft }): Row => [
      [{ text: parameter }],
      [places.cell(methodWords(required), governedBy[0]?.at)],
      governorCells(governedBy, places),
      [places.cell(methodWords(gives), givenAt)],
      [{ text: slack }],
      [{ text: methodWords(ifLeft) }],
    ],
  );
  return [{ is: 'table', head, rows: cells }];
}

const governorsShown = 4;

function governorCells(governors: readonly Governor[], places: SheetPlaces): readonly Cell[] {
  const cells = governors.slice(0, governorsShown).map(({ who, says, at }): Cell => {
    const citation = citationWords(says);
    return { text: `${places.called(who)}${citation === '' ? '' : ` (${citation})`}`, place: places.said(says, at) };
  });
  const left = governors.length - governorsShown;
  return left > 0 ? [...cells, { text: `and ${left} more` }] : cells;
}

function barBlocks(bars: ReturnType<typeof nearMissBars>): readonly SheetBlock[] {
  return bars.length === 0 ? [] : [{ is: 'bars', bars }];
}

function questionBlocks(letters: readonly MakerLetter[], places: SheetPlaces): readonly SheetBlock[] {
  return list(
    letters.flatMap(({ maker, questions }) =>
      questions.map(({ words, says, at, unlocks }) => ({
        text: `${maker}: ${words}`,
        mark: 'asks' as const,
        place: places.said(says, at),
        ...quoteOf(says),
        details: unlocks.length === 0 ? [] : ['a favourable answer to this alone gives the set a route'],
      })),
    ),
  );
}

function notOfferedBlocks(notOffered: readonly NotOffered[]): readonly SheetBlock[] {
  return list(notOffered.map(({ what, why }) => ({ text: `${what}: ${why}.`, details: [] })));
}
