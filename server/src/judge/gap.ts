import type { Requirement } from '../model/node.ts';
import { formatIn, shortNumber } from '../quantity/format.ts';
import { boundUnit } from './bounds.ts';

/** `10 min short`, `0.6 kg over`, `2 K too low`. `difference` is ours less theirs, in the base unit. */
export function gapWords(requirement: Requirement, difference: number): string {
  const size = Math.abs(difference);
  if (requirement.dimension === 'temperature') return `${shortNumber(size)} K too ${difference < 0 ? 'low' : 'high'}`;
  if (requirement.dimension === 'ph') return `${shortNumber(size)} too ${difference < 0 ? 'low' : 'high'}`;
  return `${formatIn(size, boundUnit(requirement))} ${difference < 0 ? 'short' : 'over'}`;
}
