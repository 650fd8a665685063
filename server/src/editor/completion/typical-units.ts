import type { Dimension } from '../../quantity/quantity.ts';
import { unitsOf } from '../../quantity/units.ts';

const mostShown = 6;

/**
 * Units to offer for a value: first as the schema's examples spell them, then the rest of the list. Never a number: what the page says
 * is for the reader to type.
 */
export function typicalUnits(dimension: Dimension | 'any', examples: readonly string[]): readonly string[] {
  if (dimension === 'any') return [];
  const known = unitsOf(dimension);
  const spelled: string[] = [];
  const taken = new Set<string>();
  for (const example of examples) {
    const written = /(?:^|[:[] ?)[-+]?[0-9.]{1,20} ([^\s,}\]][^,}\]]{0,20})/.exec(example.trim())?.[1]?.trim();
    const unit = known.find(({ name, variants, fileOnly }) => [name, ...variants, ...fileOnly].includes(written ?? ''));
    if (written === undefined || unit === undefined || taken.has(unit.name)) continue;
    taken.add(unit.name);
    spelled.push(written);
  }
  for (const { name } of known) if (name !== '' && !taken.has(name)) spelled.push(name);
  return spelled.slice(0, mostShown);
}
