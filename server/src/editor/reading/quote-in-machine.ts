import { handBeforeMachine } from '../../quantity/prose/named/acts.ts';
import { connectors, nextAct, positions, racks, standard } from '../../quantity/prose/named/machines.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import type { Section } from './quote-section.ts';

/** What a sentence says of the machine besides its phases: to what a device is joined there, in which rack and how it lies, which standard. */
export function inMachine(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, stages } = reading;
  const named = new Set([...section.stages, ...stages.map(({ stage }) => stage)]);
  if (!named.has('mechanical') || named.has('ultrasonic')) return [];
  if (section.stages.includes('mechanical') && handBeforeMachine.test(quote))
    return [
      { path: 'manual.needed', value: 'before-machine' },
      { path: 'manual.src', value: src },
    ];
  const found = [...conforming(quote), ...lying(quote)];
  return found.length === 0 ? [] : [...found, { path: 'mechanical.src', value: src }];
}

function conforming(quote: string): readonly NewField[] {
  const [, name] = standard.exec(quote) ?? [];
  return name === undefined ? [] : [{ path: 'mechanical.conforms_to[]', value: asValue(name.trim()) }];
}

/** `Connect it to the adapter and leave the stopcocks open`: each clause by itself, and each of them once. */
function lying(quote: string): readonly NewField[] {
  const [whole, ...more] = lyingIn(quote.split(nextAct).map((clause) => clause.trim()));
  return whole === undefined ? [] : [whole, ...more.filter(({ path }) => path !== whole.path)];
}

function lyingIn(clauses: readonly string[]): readonly NewField[] {
  return clauses.flatMap((clause) => {
    const [position, to, rack] = [positions, connectors, racks].map((forms) => firstOf(forms, clause));
    if (position !== undefined) return [{ path: 'mechanical.orientation', value: asValue(position) }];
    const isRack = to === undefined || /(?:rack|basket|trolley)$/i.test(to);
    const words = isRack ? (to ?? rack) : to;
    return words === undefined ? [] : [{ path: `mechanical.${isRack ? 'rack' : 'connector'}`, value: asValue(words) }];
  });
}

/** What the first of the forms that fits has in its group. */
export function firstOf(forms: readonly RegExp[], quote: string): string | undefined {
  const found = forms.map((form) => form.exec(quote)).find((one) => one !== null);
  return found?.slice(1).find((group) => group !== undefined && group !== '');
}
