import { otherMetals } from '../../quantity/prose/named/acts.ts';
import { agents, qualified } from '../../quantity/prose/named/agents.ts';
import { wordFor } from '../../quantity/prose/named/named.ts';
import { beginnings, hotter, idle, keptAway, narrows, why } from '../../quantity/prose/named/prohibitions.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, withoutStop } from './cited-fields.ts';
import { amountOf } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';
import { isAtUse } from './quote-section.ts';

/** Agents and tools that a sentence says never to use, each as an entry of its own; what the lists have no word for is told. */
export interface Forbidden {
  readonly fields: readonly NewField[];
  /** Items of the sentence that are no word of the list, as printed. */
  readonly unknown: readonly string[];
}

export function agentsForbidden({ quote, numbers, stages }: QuoteReading, src: string, section: Section): Forbidden {
  const none = { fields: [], unknown: [] };
  if (stages.some(({ stage }) => methodsAlone.has(stage))) return none;
  const text = withoutEnds(quote);
  const said = keptAway.map((object) => object.exec(text.toLowerCase())).find((found) => found !== null);
  const phrase = said?.[1];
  if (said === undefined || phrase === undefined || /[.;:]\s/.test(phrase)) return none;
  const start = text.toLowerCase().indexOf(phrase);
  const items = text
    .slice(start, start + phrase.length)
    .split(/\s*(?:,|\/|(?<!\p{L})(?:and|or|nor|und|oder|noch|et|ou|ni)(?!\p{L}))\s*/u)
    .map((item) => item.replace(beginnings, '').trim())
    .filter((item) => item !== '');
  const path = isAtUse(section) ? 'point_of_use.avoid[]' : 'not[]';
  const heat = isAtUse(section) ? heatIn(numbers) : undefined;
  const isHeat = (item: string): boolean => heat !== undefined && hotter.test(item.toLowerCase());
  const isOther = numbers.length > 0 && !items.some(isHeat);
  if (isOther || items.some((item) => !isHeat(item) && narrows.test(item.toLowerCase()))) return none;
  // `strong acids and alkalis`: the adjective goes on.
  const isStrong = items.some((item) => qualified.test(item.toLowerCase()));
  const named = (item: string): string | undefined => {
    const what = whatIs(item.toLowerCase());
    return isStrong && (what === 'acid' || what === 'alkaline') ? undefined : what;
  };
  const known = items.map((item) => ({ item, what: isHeat(item) ? 'temp-above' : named(item) }));
  return {
    fields: known.flatMap(({ item, what }) => {
      if (what === undefined) return [];
      const value = what === 'temp-above' ? `value: ${heat}, ` : '';
      return [{ path, value: `{what: ${what}, ${value}as_written: ${asValue(item)}, src: ${src}}` }];
    }),
    unknown: known.some(({ what }) => what !== undefined)
      ? known.flatMap(({ item, what }) => (what === undefined ? [item] : []))
      : [],
  };
}

/** The one number of the sentence, where it is a temperature: at the point of use alone is what is kept away from it a heat and not a limit. */
function heatIn([only, more]: QuoteReading['numbers']): string | undefined {
  const isHeat = more === undefined && only?.quantities.some(({ dimension }) => dimension === 'temperature') === true;
  return isHeat ? amountOf(only, { field: 'value', dimension: 'temperature', near: [] }) : undefined;
}

/** Ways of sterilizing that no agent has the name of: what stands beside them is meant as one too. */
export const methodsAlone: ReadonlySet<string> = new Set(['eo', 'gravity', 'prevac', 'dry-heat', 'iuss']);

function withoutEnds(quote: string): string {
  const text = withoutStop(quote);
  const reason = why.exec(text.toLowerCase())?.index ?? text.length;
  const said = text.slice(0, reason);
  return said.slice(0, idle.exec(said.toLowerCase())?.index ?? said.length);
}

function whatIs(item: string): string | undefined {
  return qualified.test(item) ? undefined : wordFor(agents, item);
}

/** `Do not mix with instruments of other metals`: of the bath where its heading or the sentence names it, else of every step. */
export function metalsApart(
  { quote, negations, stages }: QuoteReading,
  src: string,
  section: Section,
): readonly NewField[] {
  if (!otherMetals.test(quote) || !negations.some(({ kind }) => kind === 'prohibition')) return [];
  if (stages.some(({ stage }) => stage !== 'ultrasonic')) return [];
  const isBath = stages.length > 0 || (section.stages.length === 1 && section.stages[0] === 'ultrasonic');
  return isBath
    ? inGroup('ultrasonic', [['single_metal', 'true']], src)
    : [{ path: 'not[]', value: `{what: mixed-metals, src: ${src}}` }];
}
