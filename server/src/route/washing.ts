import type { Basket, MemberRoute, WashingTogether } from './model.ts';
import { outcomeOf, rankOf } from './ranks.ts';

/** A member's stage in the washer, with the cycles that do not fail. */
interface Wash {
  readonly device: string;
  readonly cycles: readonly { readonly cycle: string; readonly machine: string; readonly rank: number }[];
}

/**
 * Cleaning may be done apart, so a clash costs a basket and not the set. Few baskets are found by giving, again and again, the cycle that
 * takes most of the members that are left (ties: the better outcome, then the name).
 */
export function washingTogether(members: readonly MemberRoute[]): WashingTogether {
  let left: Wash[] = [];
  const without: string[] = [];
  for (const { device, cleaning } of members) {
    const stage = cleaning?.stages.find((one) => one.stage === 'mechanical');
    if (stage === undefined) continue;
    const cycles = stage.fitting.map(({ machine, means, outcome }) => ({
      machine,
      cycle: means,
      rank: rankOf(outcome),
    }));
    if (cycles.length === 0) without.push(device);
    else left.push({ device, cycles });
  }
  const baskets: Basket[] = [];
  while (left.length > 0) {
    const basket = fullest(left);
    if (basket === undefined) break;
    baskets.push(basket);
    left = left.filter(({ device }) => !basket.devices.includes(device));
  }
  return { baskets, without };
}

function fullest(left: readonly Wash[]): Basket | undefined {
  const found = new Map<string, { machine: string; cycle: string; devices: string[]; rank: number }>();
  for (const { device, cycles } of left) {
    for (const { cycle, machine, rank } of cycles) {
      const known = found.get(cycle) ?? { machine, cycle, devices: [], rank: 0 };
      known.devices.push(device);
      known.rank = Math.max(known.rank, rank);
      found.set(cycle, known);
    }
  }
  const [best] = [...found.values()].sort(
    (a, b) => b.devices.length - a.devices.length || a.rank - b.rank || (a.cycle < b.cycle ? -1 : 1),
  );
  return best === undefined
    ? undefined
    : { machine: best.machine, cycle: best.cycle, outcome: outcomeOf(best.rank), devices: best.devices };
}
