import type { Policies, Threshold } from '../model/entities/site.generated.ts';
import type { Quantity, Requirement } from '../model/node.ts';
import { rowOf } from '../model/walk.ts';
import type { Dimension } from '../quantity/quantity.ts';
import type { Parameter } from './outcome.ts';
import type { Setting } from './setting.ts';

/** How a number without a bound word counts. Without a policy it counts as the one value, so that anything else is asked about. */
export type BareReading = 'treat-as-exact' | 'treat-as-minimum' | 'setpoint' | 'needs-answer';

type PolicyKey = 'stated_exposure' | 'stated_temp' | 'stated_dry' | 'stated_time' | 'stated_volume' | 'stated_count';

const byParameter: Partial<Record<Parameter, PolicyKey>> = {
  exposure: 'stated_exposure',
  'steam-dry': 'stated_dry',
  'packaging-dry': 'stated_dry',
};

const byDimension: Partial<Record<Dimension, PolicyKey>> = {
  temperature: 'stated_temp',
  time: 'stated_time',
  volume: 'stated_volume',
  count: 'stated_count',
};

/** The policy that decides bare numbers of this parameter; undefined where there is no such policy. */
export function policyKeyOf(parameter: Parameter, dimension: Dimension): PolicyKey | undefined {
  return byParameter[parameter] ?? byDimension[dimension];
}

export function bareReading(policies: Policies | undefined, parameter: Parameter, dimension: Dimension): BareReading {
  const key = policyKeyOf(parameter, dimension);
  return (key !== undefined && policies?.[key]?.text) || 'treat-as-exact';
}

/** A limit the site has adopted, in the form of a requirement. Undefined when the site has none: nothing is assumed in its place. */
export function thresholdOf(setting: Setting, name: string, dimension: Dimension): Requirement | undefined {
  const threshold = rowOf(setting.site?.thresholds, name);
  return threshold === undefined ? undefined : asRequirement(threshold, dimension);
}

/** The longest age the site accepts for something, in days. */
export function longestAgeDays(setting: Setting, name: string): number | undefined {
  const period: Quantity | undefined = rowOf(setting.site?.review_periods, name)?.at_most;
  return period === undefined || period.problem !== undefined ? undefined : period.value / 86_400;
}

const asRequirements = new WeakMap<Threshold, Requirement>();

function asRequirement(threshold: Threshold, dimension: Dimension): Requirement {
  const known = asRequirements.get(threshold);
  if (known !== undefined) return known;
  const { src: _source, note: _note, edition: _edition, ...bounds } = threshold;
  const requirement: Requirement = { ...bounds, dimension };
  asRequirements.set(threshold, requirement);
  return requirement;
}
