import { handBeforeMachine } from '../../quantity/prose/named/acts.ts';
import { connectors, nextAct, positions, racks, standard } from '../../quantity/prose/named/machines.ts';
import { firstOf } from '../../quantity/prose/named/named.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { type FieldValue, inGroup } from './cited-fields.ts';
import type { Section } from './quote-section.ts';

/** What a sentence says of the machine besides its phases: to what a device is joined there, in which rack and how it lies, which standard. */
export function inMachine(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, stages } = reading;
  const named = new Set([...section.stages, ...stages.map(({ stage }) => stage)]);
  if (!named.has('mechanical') || named.has('ultrasonic')) return [];
  if (section.stages.includes('mechanical') && handBeforeMachine.test(quote))
    return inGroup('manual', [['needed', 'before-machine']], src);
  return inGroup('mechanical', [...conforming(quote), ...lying(quote)], src);
}

function conforming(quote: string): readonly FieldValue[] {
  const [, name] = standard.exec(quote) ?? [];
  return name === undefined ? [] : [['conforms_to[]', asValue(name.trim())]];
}

/** `Connect it to the adapter and leave the stopcocks open`: each clause by itself, and each of them once. */
function lying(quote: string): readonly FieldValue[] {
  const [whole, ...more] = lyingIn(quote.split(nextAct).map((clause) => clause.trim()));
  return whole === undefined ? [] : [whole, ...more.filter(([field]) => field !== whole[0])];
}

function lyingIn(clauses: readonly string[]): readonly FieldValue[] {
  return clauses.flatMap((clause) => {
    const [position, to, rack] = [positions, connectors, racks].map((forms) => firstOf(forms, clause));
    if (position !== undefined) return [['orientation', asValue(position)]];
    const isRack = to === undefined || /(?:rack|basket|trolley)$/i.test(to);
    const words = isRack ? (to ?? rack) : to;
    return words === undefined ? [] : [[isRack ? 'rack' : 'connector', asValue(words)]];
  });
}
