import { packagingCalled } from './equipment.ts';
import type { Repair } from './model.ts';
import { openJudgements, questionKey } from './questions.ts';
import { chemistryRepairs } from './repair-cleaning.ts';
import { programRepairs, qualifyRepairs } from './repair-cycles.ts';
import { lightenRepairs, splitRepairs, takeOutRepairs } from './repair-parts.ts';
import { repairOrder } from './repair-table.ts';
import { repair } from './repair-trial.ts';
import { type Derivation, derive } from './route.ts';
import { partOf } from './subject.ts';

/**
 * What people could do so that the set has a route, or one with fewer open questions: quickest first, and those that settle everything
 * before those that settle a part. Every change of members, packaging, cycles and detergents was derived again before it is offered.
 */
export function repairsFor(derivation: Derivation): readonly Repair[] {
  if (derivation.route.status === 'route') return [...packagingRepair(derivation), ...basketRepair(derivation)];
  const whole = takeOutRepairs(derivation);
  const repairs = [
    ...packagingRepair(derivation),
    ...whole,
    ...(whole.some(({ effect }) => effect === 'route') ? [] : splitRepairs(derivation)),
    ...lightenRepairs(derivation),
    ...basketRepair(derivation),
    ...askRepair(derivation),
    ...qualifyRepairs(derivation),
    ...programRepairs(derivation),
    ...chemistryRepairs(derivation),
    ...lastResorts(derivation),
  ];
  return inOrder(repairs);
}

/**
 * The repairs that need nothing but what the department has, and the last resorts: cheap enough for every check. Cycles to program or
 * qualify and other detergents are left to `repairsFor`, which derives a whole other department for each.
 */
export function repairsAtHand(derivation: Derivation): readonly Repair[] {
  if (derivation.route.status === 'route') return [...packagingRepair(derivation), ...basketRepair(derivation)];
  const whole = takeOutRepairs(derivation);
  return inOrder([
    ...packagingRepair(derivation),
    ...whole,
    ...(whole.some(({ effect }) => effect === 'route') ? [] : splitRepairs(derivation)),
    ...lightenRepairs(derivation),
    ...basketRepair(derivation),
    ...lastResorts(derivation),
  ]);
}

function inOrder(repairs: readonly Repair[]): readonly Repair[] {
  return repairs.toSorted(
    (a, b) =>
      effects.indexOf(a.effect) - effects.indexOf(b.effect) ||
      repairOrder.indexOf(a.kind) - repairOrder.indexOf(b.kind),
  );
}

const effects: readonly Repair['effect'][] = ['route', 'provisional', 'part', 'unverified'];

function packagingRepair({ route, department }: Derivation): readonly Repair[] {
  const { packagingChange: change, chosen, status } = route;
  if (change === undefined || chosen === undefined || status === 'none') return [];
  const words = {
    words: `Pack the set in ${packagingCalled(department, change.to)} instead of ${packagingCalled(department, change.from)}.`,
    verified: [`mass, drying, lumens and every page: ${status} on ${chosen.cycle}`],
    leaves: ['indicators, cooling and the card change with the packaging'],
    about: [chosen.packaging],
  };
  const { packaging, namedCase } = chosen;
  return [
    repair('change-packaging', status, words, {
      change: 'packaging',
      packaging,
      ...(namedCase !== undefined && { namedCase }),
    }),
  ];
}

function basketRepair({ route }: Derivation): readonly Repair[] {
  const { baskets } = route.washing;
  if (baskets.length < 2 || route.status === 'none') return [];
  const words = `Wash in ${baskets.length} baskets: ${baskets.map(({ cycle, devices }) => `${devices.join(', ')} in ${cycle}`).join('; ')}.`;
  return [
    repair('separate-baskets', route.status, {
      words,
      verified: ['each basket fits its cycle'],
      about: baskets.flatMap(({ devices }) => devices),
    }),
  ];
}

function askRepair({ route, department }: Derivation): readonly Repair[] {
  const open = openJudgements(route);
  const keys = [...new Set(open.map(questionKey))];
  if (keys.length === 0) return [];
  const unknown = route.members
    .filter((member) => member.unknown.length > 0)
    .map(({ device, unknown: why }) => `${device}: ${why.map(({ words }) => words).join(', ')}`);
  const words = {
    words: `Ask: ${open.map(({ demandedBy, required, given }) => `${demandedBy.slice(demandedBy.indexOf('/') + 1)} (page: ${required}; here: ${given === '' ? 'not known' : given})`).join('; ')}.`,
    verified: [
      `these are the only open questions of the route ${packagingCalled(department, route.chosen?.packaging ?? '')} on ${route.chosen?.cycle ?? ''}`,
    ],
    leaves: unknown,
    about: [...new Set(open.map(({ demandedBy }) => demandedBy))],
  };
  return [
    repair('ask-maker', unknown.length === 0 ? 'route' : 'provisional', words, { change: 'answers', questions: keys }),
  ];
}

/** Devices that have no route here even alone: only other equipment, another house or another device is left. */
function lastResorts(derivation: Derivation): readonly Repair[] {
  const { subject, department, route } = derivation;
  if (route.status !== 'none') return [];
  return subject.members.flatMap((member) => {
    if (member.device === undefined) return [];
    const alone = derive(
      partOf(subject, ({ id }) => id === member.id),
      department,
    );
    if (alone.route.status !== 'none') return [];
    const why =
      alone.route.failing.length === 0 || alone.sterilizing.feasible.length === 0
        ? 'no sterilization here fits it'
        : 'no way of cleaning here fits it';
    const facts = { verified: [`${member.id} alone: ${why}`], about: [member.id] };
    return [
      repair('buy-or-contract-out', 'unverified', {
        ...facts,
        words: `Have ${member.id} processed elsewhere, or obtain equipment that its page asks for.`,
      }),
      repair('replace-device', 'unverified', {
        ...facts,
        words: `Replace ${member.id} by a device whose instruction fits what is here.`,
      }),
    ];
  });
}
