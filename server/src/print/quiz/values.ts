import { unitNamed } from '../../judge/unit-named.ts';
import type { Quantity, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatIn } from '../../quantity/format.ts';
import type { Interval } from '../../quantity/interval.ts';
import { intersectAll } from '../../quantity/interval.ts';
import type { SterilizationFit } from '../../route/model.ts';
import { type Demand, demandOf } from '../../rules/support/limits-of.ts';
import type { CycleDemand, CycleField } from '../../rules/support/set-demands.ts';
import { demandsOn } from '../../rules/support/set-demands.ts';
import { amount, demanded } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Piece } from '../piece.ts';
import { originOf } from '../piece.ts';
import { citationOf } from '../sayings.ts';
import type { Ground, GroundSet } from './ground.ts';
import { isClear } from './ground.ts';
import type { Draft } from './question.ts';

const asked: Readonly<Record<Exclude<CycleField, 'temp'>, string>> = { exposure: 'be exposed', dry: 'dry' };

/** How long must this set be exposed, or dry, at least; and who decides it. */
export function valueDrafts(ground: Ground): readonly Draft[] {
  const drafts: Draft[] = [];
  for (const one of ground.sets) {
    for (const field of ['dry', 'exposure'] as const) {
      const demands = demandsOn(field, one.fit, ground.printing.view);
      const isOpen = demands.some(({ requirement }) => !isClear(requirement));
      if (isOpen || leavesChoice(one.fit, field, ground)) continue;
      const allowed = intersectAll(demands.map(({ demand }) => demand));
      const governing = demands.find(({ demand }) => demand.low === allowed.low && demand.lowest !== undefined);
      if (governing?.demand.lowest === undefined || !(allowed.low > 0) || allowed.low > allowed.high) continue;
      drafts.push(valueDraft(one, field, { demands, allowed, governing, key: governing.demand.lowest }, ground));
      const who = whoDraft(one, field, { demands, allowed, governing, key: governing.demand.lowest }, ground);
      if (who !== undefined) drafts.push(who);
    }
  }
  return drafts;
}

/** A page that offers two ways with other numbers for this kind of cycle: less, or more, might do by the other one. */
function leavesChoice({ members }: SterilizationFit, field: CycleField, { printing }: Ground): boolean {
  return members.some(({ device: id, option: name }) => {
    const options = printing.view.get('device', id)?.sterilization?.any_of?.items ?? [];
    const own = options.find((one) => one.id?.text === name);
    const alike = options.filter(({ modality }) => modality?.text === own?.modality?.text);
    return alike.some((one) => isDoubtful(one[field]) || !isSameDemand(demandOf(one[field]), demandOf(own?.[field])));
  });
}

/** Silence asks nothing; "about" or two readings ask something that no number settles. */
function isDoubtful(requirement: Requirement | undefined): boolean {
  return requirement !== undefined && requirement.silent?.on !== true && !isClear(requirement);
}

function isSameDemand(one: Demand | undefined, other: Demand | undefined): boolean {
  return one?.low === other?.low && one?.high === other?.high;
}

interface Governed {
  readonly demands: readonly CycleDemand[];
  readonly allowed: Interval;
  readonly governing: CycleDemand;
  readonly key: Quantity;
}

function valueDraft({ set }: GroundSet, field: 'exposure' | 'dry', governed: Governed, ground: Ground): Draft {
  const { governing, key } = governed;
  const { printing } = ground;
  const name = nameOf(set, set.id?.text ?? '');
  return {
    key: `value set/${set.id?.text} ${field}`,
    template: 'value',
    stage: 'sterilizing',
    text: ['How long must ', name, `, packed as on its card, ${asked[field]} at least?`],
    right: [amount(key, printing)],
    wrong: tooShort(governed, field, ground),
    asking: 'wrong',
    why: whyOf(governing, ground),
    citation: citationFor(governing),
    difficulty: Math.min(4, governed.demands.length),
  };
}

/** Values of other sets and members, and some shares of the right one; kept only where the pages of this set do not allow them. */
function tooShort({ allowed, key }: Governed, field: 'exposure' | 'dry', { sets, printing }: Ground): readonly Line[] {
  const values = new Set<number>();
  for (const { fit } of sets)
    for (const { demand } of demandsOn(field, fit, printing.view))
      if (Number.isFinite(demand.low)) values.add(demand.low);
  for (const share of [0.5, 0.75, 0.25]) values.add(Math.round((allowed.low * share) / 60) * 60);
  const unit = unitNamed(key.dimension, key.unit);
  return [...values]
    .filter((value) => value > 0 && (value < allowed.low || value > allowed.high))
    .map((value): Line => [{ text: formatIn(value, unit), from: [originOf(key.at)], how: 'computed' }]);
}

function whyOf({ by, who, requirement }: CycleDemand, { printing }: Ground): Line {
  return [
    nameOf(by, who.slice(who.indexOf('/') + 1)),
    ' asks for ',
    ...demanded(requirement, printing),
    ' and has the last word; no other page asks for more.',
  ];
}

function citationFor({ by, src }: CycleDemand): Line {
  const [saying] = sayingsOf(by, src);
  return saying === undefined ? [] : citationOf(saying);
}

/** Asked only where one alone governs: with two, either name would be right. */
function whoDraft(
  { set }: GroundSet,
  field: 'exposure' | 'dry',
  governed: Governed,
  ground: Ground,
): Draft | undefined {
  const { demands, allowed, governing } = governed;
  const governors = new Set(demands.filter(({ demand }) => demand.low === allowed.low).map(({ who }) => who));
  const others = new Map(demands.filter(({ who }) => !governors.has(who)).map((demand) => [demand.who, demand]));
  if (governors.size !== 1 || others.size === 0) return undefined;
  const nameFor = ({ by, who }: CycleDemand): Piece => nameOf(by, who.slice(who.indexOf('/') + 1));
  return {
    key: `who-governs set/${set.id?.text} ${field}`,
    template: 'who-governs',
    stage: 'sterilizing',
    text: ['Who decides how long ', nameOf(set, set.id?.text ?? ''), ` must ${asked[field]}?`],
    right: [nameFor(governing)],
    wrong: [...others.values()].map((one): Line => [nameFor(one)]),
    asking: 'wrong',
    why: whyOf(governing, ground),
    citation: citationFor(governing),
    difficulty: Math.min(4, demands.length),
  };
}
