import type { Place } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import type { RouteGap } from '../../route/explanation.ts';
import type { Clash, Repair } from '../../route/model.ts';
import type { Report } from '../rule.ts';
import { quotesOf } from './failures.ts';

/** More clashes than these are read on the page of the route; all of them stand in the way. */
const clashesTold = 3;
const waysTold = 3;

const words = {
  more: (count: number) =>
    count === 1 ? 'One more clash stands in the way.' : `${count} more clashes stand in the way.`,
  way: (letter: string, { words: way, owner, lead }: Repair) =>
    `${letter}. ${way.replace(/\.$/, '')} (${owner}, ${lead}).`,
  ways: (all: string) => `Ways out: ${all}`,
  together: (all: string) => `Each of these settles a part: ${all}`,
  none: 'No way out was found among what the department has.',
  other: 'Ways that need another cycle or detergent stand on the page of its route.',
};

/** The smallest clashes with their pages, then the ways out, as one text; quotes and places beside it. */
export function clashReport({ clashes, ways }: RouteGap): Required<Pick<Report, 'message' | 'says' | 'related'>> {
  const told = clashes.slice(0, clashesTold);
  const lines = told.map((clash) => clash.words);
  if (clashes.length > told.length) lines.push(words.more(clashes.length - told.length));
  return {
    message: [...lines, waysOut(ways)].join(' '),
    says: sayingsOf(told),
    related: placesOf(told),
  };
}

/** Those that give a route first; parts only where nothing else does. */
function waysOut(repairs: readonly Repair[]): string {
  const whole = repairs.filter(({ effect }) => effect === 'route' || effect === 'provisional');
  const parts = repairs.filter(({ effect }) => effect === 'part');
  const other = repairs.filter(({ effect }) => effect === 'unverified');
  const shown = (whole.length > 0 ? whole : parts.length > 0 ? parts : other).slice(0, waysTold);
  if (shown.length === 0) return `${words.none} ${words.other}`;
  const list = shown.map((repair, index) => words.way('abc'.charAt(index), repair)).join(' ');
  if (whole.length > 0) return words.ways(list);
  return `${parts.length > 1 ? words.together(list) : words.ways(list)} ${words.other}`;
}

function sayingsOf(clashes: readonly Clash[]): readonly Saying[] {
  return quotesOf(clashes.flatMap(({ atoms }) => atoms.map(({ says }) => says)));
}

function placesOf(clashes: readonly Clash[]): readonly { readonly at: Place; readonly note: string }[] {
  const places = new Map<Place, string>();
  for (const { atoms } of clashes) {
    for (const { at, who, factAt } of atoms) {
      if (!places.has(at)) places.set(at, `what ${who} demands`);
      if (factAt !== undefined && !places.has(factAt)) places.set(factAt, 'what stands against it');
    }
  }
  return [...places].map(([at, note]) => ({ at, note }));
}
