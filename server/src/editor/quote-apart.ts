import type { QuoteReading } from '../quantity/prose/prose.ts';
import { asValue } from './bare.ts';
import type { NewField } from './insert-fields.ts';
import type { Section } from './quote-section.ts';

/** A plain request under the heading of taking apart is one of its steps, in the words of the page. */

const begins =
  /^(?:then\s|next,?\s|always\s|carefully\s)?(?:press|push|pull|remove|unscrew|detach|withdraw|take|slide|release|loosen|lift|turn|twist|rotate|unlock|disconnect|separate|unclip|disengage|open|retract|draw)\s(?!(?:care|note|place)\b)/i;

/** What is taken off before cleaning and is no part. */
const noPart =
  /\b(?:soil|blood|debris|residues?|tissue|matter|cement|contamina\p{L}*|dirt|fluids?|labels?|packag\p{L}*|wrap|gloves?)\b/iu;

export function stepsApart(
  { quote, numbers, negations, language }: QuoteReading,
  src: string,
  { text, stages }: Section,
): readonly NewField[] {
  const isMeant = stages.includes('disassembly') && !/assembl(?!.*disassembl)/.test(text.replaceAll('disassembl', ''));
  const isPlain = numbers.every(({ units }) => units.length === 0) && negations.length === 0 && quote.length <= longest;
  if (!isMeant || !isPlain || language !== 'en' || !begins.test(quote) || noPart.test(quote)) return [];
  const words = quote.replace(/\s*[.!]\s*$/, '');
  if (/[.;]\s|\b(?:if|unless|when)\b|\bbefore\s(?:\p{L}+\s)?(?:clean|reprocess)/iu.test(words)) return [];
  const head = `do: ${asValue(words)}`;
  return [{ path: 'disassembly.steps[]', value: `{${head}, src: ${src}}`, head }];
}

const longest = 160;
