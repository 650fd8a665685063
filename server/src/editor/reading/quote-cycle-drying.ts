import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { NewField } from '../writing/insert-fields.ts';
import type { Home } from './home.ts';
import { isOwnValue } from './quote-own-values.ts';
import type { Section } from './quote-section.ts';
import { requirement } from './quote-values.ts';

/**
 * `Dry for a minimum of 40 minutes`, after the cycles under the same heading: a time for those of them that have none yet. A sentence that
 * names a packaging or a temperature speaks of some of them, and which is for the reader to say.
 */
export function dryingOfCycles(
  reading: QuoteReading,
  tree: MapTree,
  src: string,
  { text, stages }: Section,
): readonly NewField[] {
  const { quote, negations } = reading;
  const time = onlyTime(reading);
  const isUnderCycles = /sterili|stérili|autoclav/.test(text) && !stages.includes('packaging');
  if (time === undefined || !isUnderCycles || negations.length > 0 || !drying.test(quote)) return [];
  if (narrowed.test(quote) || quote.length > 100) return [];
  const group = { path: 'sterilization.any_of[]', stages: [], words: [], fields: [] };
  const value = requirement({ group, home: dry, mentions: [time] }, reading, `, src: ${src}`);
  return indexesWithout(tree).map((index) => ({ path: `sterilization.any_of.${index}.dry`, value }));
}

const dry: Home = { field: 'dry', dimension: 'time', near: [] };
const drying =
  /^(?:then\s)?(?:vacuum\s|chamber\s|final\s)?(?:dry|drying|trocken|trocknung|trocknen|séchage|sécher)\p{L}*(?!\p{L})/iu;
const narrowed =
  /pouch|wrap|container|beutel|vlies|sachet|emballage|conteneur|cloth|towel|air\b|tuch|luft|chiffon|\b(?:if|for (?:the )?(?:gravity|prevac|single|sets))\b/i;

function onlyTime(reading: QuoteReading): NumberMention | undefined {
  const [time, other] = reading.numbers.filter((one, at) => isOwnValue(one, at, reading));
  const isTime = time?.quantities.some(({ dimension }) => dimension === 'time') === true;
  return isTime && other === undefined && time.range === undefined ? time : undefined;
}

/** Cycles with steam that have no time of drying, by their number in the list. */
function indexesWithout(tree: MapTree): readonly number[] {
  const sterilization = valueUnder(tree, 'sterilization');
  const cycles = sterilization?.node === 'map' ? valueUnder(sterilization, 'any_of') : undefined;
  if (cycles?.node !== 'list') return [];
  return cycles.items.flatMap((item, index) => (isUndriedSteam(item) ? [index] : []));
}

function isUndriedSteam(cycle: Tree): boolean {
  if (cycle.node !== 'map' || valueUnder(cycle, 'dry') !== undefined) return false;
  const modality = valueUnder(cycle, 'modality');
  const isUrgent = valueUnder(cycle, 'context') !== undefined;
  return !isUrgent && modality?.node === 'scalar' && modality.text.startsWith('steam');
}
