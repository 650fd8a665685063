import { counted } from '../../base/words.ts';
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
  way: ({ words: way, owner, lead }: Repair) => `${way.replace(/\.$/, '')} (${owner}, ${lead}).`,
  first: (way: string) => `A way out: ${way}`,
  together: (all: string) => `Each of these settles a part: ${all}`,
  none: 'No way out was found among what the department has.',
  further: (count: number) =>
    count === 0 ? 'The page of its route says more.' : `${counted(count, 'more way')} on the page of its route.`,
  other: 'Ways that need another cycle or detergent stand on the page of its route.',
};

/** The smallest clashes with their pages, then the best way out, as one text that is read at a glance; quotes and places beside it. */
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

/** The best of those that give a route, and how many more there are; parts only where nothing else does, and then together. */
function waysOut(repairs: readonly Repair[]): string {
  const whole = repairs.filter(({ effect }) => effect === 'route' || effect === 'provisional');
  const parts = repairs.filter(({ effect }) => effect === 'part');
  const all = whole.length > 0 ? whole : parts.length > 0 ? parts : repairs;
  const [first] = all;
  if (first === undefined) return `${words.none} ${words.other}`;
  if (whole.length > 0 || all.length === 1 || parts.length === 0)
    return `${words.first(words.way(first))} ${words.further(all.length - 1)}`;
  return `${words.together(all.slice(0, waysTold).map(words.way).join(' '))} ${words.other}`;
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
