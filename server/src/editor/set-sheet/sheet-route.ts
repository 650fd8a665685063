import { methodWords } from '../../model/method-names.ts';
import type { Cell, Row, SheetBlock } from '../../panel/set-sheet.ts';
import type { CardCycle, MemberRoute, SetRoute, SterilizationFit } from '../../route/model.ts';
import type { SheetPlaces } from './sheet-places.ts';
import { markOf, packWords } from './sheet-words.ts';

/** Alternatives after the chosen one that are shown. */
const furtherWays = 6;

const outcomeWords = {
  meets: 'fits',
  'meets-with-note': 'fits, with a note',
  'needs-answer': 'needs an answer',
  fails: 'fails',
} as const;

/** What was derived, and why this way before others. */
export function routeSection(route: SetRoute, places: SheetPlaces): readonly SheetBlock[] {
  const { chosen, status, alternatives } = route;
  const rows = chosen === undefined ? [] : chosenRows(chosen, route, places);
  const washing = route.washing.baskets.map(({ machine, cycle, devices, outcome }): Row => {
    const words = `${cycle} on ${places.machine(machine)}: ${devices.map((id) => places.called(`device/${id}`)).join(', ')}`;
    return rowOf('Wash', { ...places.cell(words, places.cycle(cycle)), mark: markOf[outcome] });
  });
  const called = (who: string): string => places.called(who);
  const further = alternatives.slice(0, furtherWays).map((option): Row => {
    const words = `${packWords(option, called)} on ${option.cycle}`;
    return rowOf('Also possible', { ...places.cell(words, places.cycle(option.cycle)), mark: markOf[option.outcome] });
  });
  const all = [...rows, ...washing, ...further];
  if (all.length === 0) return [];
  const lead: readonly SheetBlock[] =
    status === 'none' && chosen !== undefined
      ? [{ is: 'text', text: 'Sterilization alone has a way; something else stands against it.' }]
      : [];
  return [...lead, { is: 'table', head: ['Step', 'How'], rows: all }];
}

function rowOf(step: string, how: Cell): Row {
  return [[{ text: step }], [how]];
}

function chosenRows(chosen: SterilizationFit, route: SetRoute, places: SheetPlaces): readonly Row[] {
  const { packagingChange: change, machines } = route;
  const packed = places.cell(
    packWords(chosen, (who) => places.called(who)),
    places.entity('packaging', chosen.packaging),
  );
  const cycle = places.cell(`${chosen.cycle} on ${places.machine(chosen.machine)}`, places.cycle(chosen.cycle));
  const rows: Row[] = [rowOf('Pack', packed), rowOf('Sterilize', { ...cycle, mark: markOf[chosen.outcome] })];
  if (change !== undefined)
    rows.push(
      rowOf('Instead of', {
        text: `${places.called(`packaging/${change.from}`)}, as the file names it: packed there it fails`,
      }),
    );
  if (machines.length === 1)
    rows.push(
      rowOf('Take care', { text: `Only ${places.machine(machines[0] ?? '')} can do it: one fault stops the set` }),
    );
  rows.push(rowOf('Chosen by', { text: chosen.choice.map(({ words }) => words).join('; ') }));
  return rows;
}

export function cleaningSection({ members }: SetRoute, places: SheetPlaces): readonly SheetBlock[] {
  const rows = members.flatMap((member) => (member.cleaning === undefined ? [] : [cleaningRow(member, places)]));
  return rows.length === 0 ? [] : [{ is: 'table', head: ['Member', 'Pieces', 'Way', 'Stages', 'Outcome'], rows }];
}

function cleaningRow({ device, quantity, at, cleaning }: MemberRoute, places: SheetPlaces): Row {
  const stages =
    cleaning?.stages.map(({ stage, machine, means }) =>
      [stage, means || places.machine(machine)].filter((word) => word !== '').join(' '),
    ) ?? [];
  const outcome = cleaning?.outcome ?? 'meets';
  return [
    [places.cell(places.called(`device/${device}`), at)],
    [{ text: String(quantity) }],
    [{ text: cleaning?.alternative ?? '' }],
    [{ text: stages.join(', then ') }],
    [{ text: outcomeWords[outcome], mark: markOf[outcome] }],
  ];
}

/** What the set's card names, against what was derived. */
export function cardSection({ card }: SetRoute, places: SheetPlaces): readonly SheetBlock[] {
  const named = [card.cycle, card.washerCycle].filter((one) => one !== undefined);
  if (named.length === 0) return [];
  return [{ is: 'list', ordered: false, items: named.map((cycle) => cardItem(cycle, places)) }];
}

function cardItem(cycle: CardCycle, places: SheetPlaces): Extract<SheetBlock, { is: 'list' }>['items'][number] {
  const place = places.at(cycle.at);
  if (!cycle.known)
    return { text: `${cycle.id}: no machine here has a cycle of this name`, mark: 'fails', place, details: [] };
  const reasons = cycle.judgements
    .filter(({ outcome }) => outcome === 'fails')
    .map(({ demandedBy, required, given, gap }) => {
      const short = gap === undefined ? '' : ` (${gap})`;
      const ours = given === '' ? 'nothing known' : methodWords(given);
      return `${places.called(demandedBy)}: ${methodWords(required)}; here ${ours}${short}`;
    });
  const derived = cycle.derived ? 'among the derived ways' : 'not among the derived ways without open question';
  const text = `${cycle.id}: as filed it ${outcomeWords[cycle.outcome]}; ${derived}`;
  return { text, mark: markOf[cycle.outcome], place, details: [...new Set(reasons)] };
}
