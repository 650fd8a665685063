import {
  aboutLoading,
  aboutPacking,
  laidSo,
  leftSo,
  liesSo,
  noLiner,
  noMat,
  notOfThePosition,
  notStacked,
} from '../../quantity/prose/named/arranged.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup, withoutStop } from './cited-fields.ts';
import { positioned } from './quote-apart.ts';
import type { Section } from './quote-section.ts';

/**
 * How something lies in its package and is left for the cycle, in the words of the page: `Leave the tap open`, `a point guard is fitted to each
 * obturator`. Only under a heading of packing or putting together; what is left open or loose also under that of sterilization.
 */
export function arranged(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, numbers } = reading;
  const { text, stages } = section;
  const isOfPacking = (stages.includes('packaging') || aboutPacking.test(text)) && !/(?:dis|un)assembl/.test(text);
  const kept = isOfPacking ? keptOut.filter(([, words]) => words.test(quote)) : [];
  if (kept.length > 0)
    return inGroup(
      'packaging',
      kept.map(([field]) => [field, 'true'] as const),
      src,
    );
  const isCounted = numbers.some(
    ({ units, isReference }) => !isReference && units.some(({ dimension }) => dimension !== 'length'),
  );
  const words = withoutStop(quote);
  if (isCounted || words.length > longest || /[.!?]\s\p{Lu}/u.test(words)) return [];
  const isLeft = leftSo.test(words) && (isOfPacking || /sterili|stérili/.test(text));
  const isLaid =
    stages.includes('packaging') || aboutLoading.test(text)
      ? laidSo.test(words) || liesSo.test(words)
      : isOfPacking && liesSo.test(words) && /(?<!\p{L})(?:no|not|never|nicht|keine?|ne)(?!\p{L})/iu.test(words);
  if (!isLeft && !(isLaid && !notOfThePosition.test(words))) return [];
  return positioned(words, src);
}

const longest = 180;

const keptOut = [
  ['no_stack', notStacked],
  ['no_textile_liner', noLiner],
  ['no_silicone_mat', noMat],
] as const;
