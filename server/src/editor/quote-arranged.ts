import {
  aboutPacking,
  laidSo,
  leftSo,
  liesSo,
  notOfThePosition,
  notStacked,
} from '../quantity/prose/named/arranged.ts';
import type { QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import type { Section } from './quote-section.ts';

/**
 * How something lies in its package and is left for the cycle, in the words of the page: `Leave the tap open`, `a point guard is fitted to each
 * obturator`. Only under a heading of packing or putting together; what is left open or loose also under that of sterilization.
 */
export function arranged(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, numbers } = reading;
  const { text, stages } = section;
  const isOfPacking = (stages.includes('packaging') || aboutPacking.test(text)) && !/(?:dis|un)assembl/.test(text);
  if (isOfPacking && notStacked.test(quote)) return unstacked(src);
  const isCounted = numbers.some(({ units, isReference }) => units.length > 0 && !isReference);
  const words = quote.replace(/\s*[.!]\s*$/, '');
  if (isCounted || words.length > longest || /[.!?]\s\p{Lu}/u.test(words)) return [];
  const isLeft = leftSo.test(words) && (isOfPacking || /sterili|stérili/.test(text));
  const isLaid = stages.includes('packaging')
    ? laidSo.test(words) || liesSo.test(words)
    : isOfPacking && liesSo.test(words) && /(?<!\p{L})(?:no|not|never|nicht|keine?|ne)(?!\p{L})/iu.test(words);
  if (!isLeft && !(isLaid && !notOfThePosition.test(words))) return [];
  const head = `what: ${asValue(words)}`;
  return [{ path: 'packaging.configuration[]', value: `{${head}, src: ${src}}`, head }];
}

const longest = 180;

function unstacked(src: string): readonly NewField[] {
  return [
    { path: 'packaging.no_stack', value: 'true' },
    { path: 'packaging.src', value: src },
  ];
}
