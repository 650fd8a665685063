import type { Policies } from '../model/entities/site.generated.ts';
import type { Requirement } from '../model/node.ts';
import { intervalOf } from '../quantity/bound.ts';
import { everything, type Interval, intersect } from '../quantity/interval.ts';
import { boundsOf } from './bounds.ts';
import type { Outcome, Parameter } from './outcome.ts';
import { bareReading } from './policies.ts';
import { rowFor } from './value.ts';

/**
 * The values of ours that meet a requirement, noted or not, in the base unit: what a table of governing demands shows. A bare number counts
 * as the site reads it; a demand that is no number, or only "approximately", limits nothing here (it is a question, not a limit).
 */
export function acceptedInterval(
  parameter: Parameter,
  requirement: Requirement,
  policies: Policies | undefined,
): Interval {
  if (requirement.specific !== undefined) return acceptedInterval(parameter, requirement.specific, policies);
  const row = rowFor(parameter);
  let accepted = everything;
  for (const bound of boundsOf(requirement)) {
    if (bound.bound !== 'stated') {
      accepted = intersect(accepted, intervalOf(bound));
      continue;
    }
    const reading = bareReading(policies, parameter, requirement.dimension);
    const above = reading === 'treat-as-minimum' ? row.aboveBareMinimum : row.aboveBare;
    const low = isMet(row.belowBare.outcome) ? Number.NEGATIVE_INFINITY : bound.value;
    const high = isMet(above.outcome) ? Number.POSITIVE_INFINITY : bound.value;
    accepted = intersect(accepted, { low, high });
  }
  return accepted;
}

function isMet(outcome: Outcome): boolean {
  return outcome === 'meets' || outcome === 'meets-with-note';
}
