import { whenNeeded } from '../../quantity/prose/named/acts.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, type ReadFields } from './cited-fields.ts';
import { doneAtUse } from './quote-at-use.ts';
import { cooled } from './quote-cooling.ts';
import { airGrade, dryingMethods } from './quote-drying.ts';
import { metalsApart } from './quote-forbidden.ts';
import { oiling } from './quote-lubrication.ts';
import type { Matched } from './quote-match.ts';
import { massOf, packagingsIn } from './quote-packagings.ts';
import type { Section } from './quote-section.ts';
import { stored } from './quote-storage.ts';
import { useChoice } from './quote-uses.ts';

interface Citing {
  readonly src: string;
  readonly section: Section;
}

/** What the words of a sentence say beside its numbers, where all of these belong to one part of the work. */
export function saidBeside({ placed }: Matched, reading: QuoteReading, { src, section }: Citing): ReadFields {
  const [part, other] = [...new Set(placed.map(({ group }) => group.path))];
  const alone = (fields: readonly NewField[]): ReadFields => ({ fields, left: [] });
  if (other !== undefined) return alone([]);
  switch (part) {
    case 'packaging':
      return withMass(packagingsIn(reading, src, section), placed, reading);
    // How something is stored stands beside how long and how warm.
    case 'storage':
      return alone(reading.negations.length === 0 ? stored(reading, src, section) : []);
    // `Keep it moist and begin within 60 minutes`.
    case 'point_of_use':
      return alone(doneAtUse(reading, src, section));
    case 'drying':
    case 'drying.air':
      return alone(reading.negations.length === 0 ? driedBy(reading, src) : []);
    case 'cooling':
      return alone(cooled(reading, src, section));
    case 'lubrication':
      return alone(reading.negations.length === 0 ? oiled(reading, src) : []);
    case 'ultrasonic':
      return alone(metalsApart(reading, src, section));
    default:
      return alone([]);
  }
}

/** Whether the mass counts the packaging. */
function withMass({ fields, left }: ReadFields, placed: Matched['placed'], reading: QuoteReading): ReadFields {
  const isMass = placed.some(({ home }) => home.field === 'max_mass');
  return { fields: [...fields, ...(isMass ? massOf(reading) : [])], left };
}

/** `Dry with a cloth, then blow out with air at no more than 1.5 bar`: with what besides the air, which has its numbers. */
function driedBy({ quote }: QuoteReading, src: string): readonly NewField[] {
  const named = dryingMethods(quote.toLowerCase());
  const grade = named.includes('air') ? airGrade(quote) : undefined;
  return [
    ...(named.every((method) => method === 'air') ? [] : [{ path: 'drying.method', value: `[${named.join(', ')}]` }]),
    ...(grade === undefined ? [] : inGroup('drying.air', [['grade', grade]], src)),
  ];
}

/** `Put one drop of oil on the hinge`: besides the drops, with what and where. */
function oiled({ quote }: QuoteReading, src: string): readonly NewField[] {
  const [words] = whenNeeded.exec(quote) ?? [];
  const values = [
    ['use', useChoice('required')] as const,
    ...(words === undefined ? [] : [['when', asValue(words)] as const]),
    ...oiling(quote),
  ];
  return inGroup('lubrication', values, src);
}
