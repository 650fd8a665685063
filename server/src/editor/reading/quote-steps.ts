import { whenNeeded } from '../../quantity/prose/named/acts.ts';
import { onlyDescribed } from '../../quantity/prose/named/brushes.ts';
import { cleaners, detergentClasses, detergentNamed } from '../../quantity/prose/named/detergents.ts';
import { wordFor } from '../../quantity/prose/named/named.ts';
import { lastRinse } from '../../quantity/prose/named/phases.ts';
import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { inGroup } from './cited-fields.ts';
import { brushWords, classOf, detergentIn, gradeIn } from './quote-agents.ts';
import type { Section } from './quote-section.ts';
import { wayOf } from './quote-section.ts';

/** Steps by hand that a sentence without numbers asks for, each in its order: `Wipe it with a cloth, then rinse`. */
export function stepsInOrder(
  mentions: readonly StageMention[],
  { quote }: QuoteReading,
  path: string,
  src: string,
): readonly NewField[] {
  // `Brush it with a soft brush` is one step.
  const steps = mentions.filter(({ stage }, at) => mentions[at - 1]?.stage !== stage);
  const [first, ...more] = steps;
  const [when] = whenNeeded.exec(quote) ?? [];
  return steps.map((mention, at) => {
    const next = steps[at + 1];
    // What stands before the first verb belongs to it too: `Under running water, brush the tip`.
    const part = quote.slice(mention === first ? 0 : mention.span.start, next?.span.start ?? quote.length);
    const inside = more.length === 0 ? quote : part;
    const grade = gradeIn(inside);
    const doesLast = mention.stage === 'rinse' && lastRinse.test(inside);
    const isOfRinse = mention.stage === 'rinse' && !cleaners.test(inside.toLowerCase());
    const parts = [
      `do: ${doesLast ? 'final-rinse' : mention.stage}`,
      ...(isOfRinse ? [] : detergentIn(inside)),
      ...(mention.stage === 'brush' ? brushIn(inside) : []),
      ...(grade === undefined ? [] : [`water: {grade: ${grade}}`]),
      ...(when === undefined ? [] : [`when: ${asValue(when)}`]),
      `src: ${src}`,
    ];
    return { path, value: `{${parts.join(', ')}}`, head: parts[0] ?? '' };
  });
}

function brushIn(part: string): readonly string[] {
  const words = brushWords(part).map(([field, value]) => `${field}: ${value}`);
  return words.length === 0 ? [] : [`brush: {${words.join(', ')}}`];
}

/** `Use a neutral detergent`, `Detergent: alkaline`, under the heading of one way: its detergent, and no step by itself. */
export function detergentMeant(reading: QuoteReading, src: string, section: Section): readonly NewField[] {
  const { quote, stages, numbers, negations } = reading;
  const way = wayOf(section);
  const isOther = stages.some(({ stage }) => stage !== way) || numbers.some(({ units }) => units.length > 0);
  if ((way !== 'mechanical' && way !== 'manual') || isOther || negations.length > 0) return [];
  const isNamed = detergentNamed.test(quote) && !onlyFor.test(quote);
  const classes = isNamed ? (classOf(quote) ?? classesListed(quote)) : undefined;
  return classes === undefined ? [] : inGroup(`${way}.detergent`, [['class', `[${classes}]`]], src);
}

/** It holds for some devices or cases only. */
const onlyFor =
  /\bonly\s(?:for|if|when|in|on)\b|\b(?:if|when|unless|except)\b|\bfor\s(?!(?:manual|automated|machine|cleaning|the|all|this|these)\b)/i;

/** `Detergent: neutral or mild alkaline`: each of them a class of our list. */
function classesListed(quote: string): string | undefined {
  const [, list] = /^\p{L}+(?:\s\p{L}+)?\s?:\s([^.;:]{3,60})\.?$/u.exec(quote) ?? [];
  const classes = list?.split(/,\s|\s(?:or|oder|ou)\s/).map((item) => wordFor(detergentClasses, item.toLowerCase()));
  return classes === undefined || classes.includes(undefined) ? undefined : [...new Set(classes)].join(', ');
}

/** `A soft brush is sufficient`, `use soft brushes only`: what the brush of all steps is like, and no step by itself. */
export function brushMeant(
  { quote, negations, numbers }: QuoteReading,
  src: string,
  section: Section,
): readonly NewField[] {
  const way = wayOf(section);
  if ((way !== 'manual' && way !== undefined) || negations.length + numbers.length > 0 || !onlyDescribed.test(quote))
    return [];
  return inGroup('manual.brush', brushWords(quote), src);
}
