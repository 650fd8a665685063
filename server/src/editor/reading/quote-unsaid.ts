import type { Span } from '../../base/span.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { readable } from './quote-to-fields.ts';

/** Words that say nothing by themselves, and such as every sentence of an instruction has. */
const empty: ReadonlySet<string> = new Set(
  `a an the this that these those it its they them there here and or but then than as at by for from in into of off on onto out over per to
  up with within without under through between until till if when while after before during is are be been being was were has have had do does
  done may might must shall should can could will would not no never any all each every both either only also again more less least most very
  such same other one ones use used using perform performed carry carried apply applied make made ensure allow proceed place put take start
  device devices instrument instruments product products item items minimum maximum about approximately exactly required recommended
  necessary permitted allowed suitable main only times time temperature exposure duration value range
  der die das den dem des ein eine einen einem einer und oder aber dann als am an auf aus bei bis durch für gegen im in ins mit nach nicht nie
  nur ohne über um unter vom von vor während wenn wird werden zu zum zur ist sind sein muss müssen soll sollen darf dürfen kann können sie es
  instrument instrumente produkt produkte mindestens höchstens maximal minimal etwa ca zeit temperatur
  le la les un une des du de et ou mais puis à au aux en dans sur sous par pour avec sans entre pendant avant après jusque si ne pas jamais
  est sont être doit doivent peut peuvent il elle ils elles ce cette ces dispositif instrument produit minimum maximum environ temps température`.split(
    /\s+/,
  ),
);

/**
 * What the sentence says and no proposed field holds, in its own words: nothing may vanish without being told. Numbers are told by
 * themselves. Words that a field has in its name or value are taken.
 */
export function wordsUnsaid(
  { quote, numbers, stages, negations }: QuoteReading,
  fields: readonly NewField[],
): readonly string[] {
  const taken = [
    ...numbers.flatMap(({ span, boundSpan }) => (boundSpan === undefined ? [span] : [span, boundSpan])),
    ...stages.map(({ span }) => span),
    ...negations.map(({ span }) => span),
  ];
  const held = wordsOf(readable(fields, []).join(' '));
  const runs: string[] = [];
  let last = -2;
  for (const { 0: word, index } of quote.matchAll(/\p{L}[\p{L}'’-]*/gu)) {
    const end = index + word.length;
    // `steam-permeable` is no steam, `pre-rinse` is a rinse.
    const isWhole = (span: Span): boolean => !word.includes('-') || span.end >= end;
    const isTaken = taken.some((span) => index < span.end && end > span.start && isWhole(span));
    if (isTaken || empty.has(word.toLowerCase()) || isHeld(word, held) || word.length < 2) continue;
    if (quote.slice(last, index) === ' ') runs[runs.length - 1] += ` ${word}`;
    else runs.push(word);
    last = end;
  }
  return [...new Set(runs)].map((run) => `“${run}”`);
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];
}

/** `sterilization` holds `sterilize`, `alkaline` holds `alkaline`. */
function isHeld(word: string, held: readonly string[]): boolean {
  const own = word.toLowerCase();
  return own
    .split('-')
    .every((part) =>
      held.some(
        (other) => other === part || (part.length > 3 && other.slice(0, stemOf(part)) === part.slice(0, stemOf(part))),
      ),
    );
}

function stemOf({ length }: string): number {
  return Math.max(4, length - 3);
}
