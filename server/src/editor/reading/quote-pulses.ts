import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';

/** What counts the pulses of a vacuum: `3 pulses`, `three times fractionated`, `fractionated vacuum (3 x)`, `at least three phases`. */
export function isPulses({ span, numberSpan, quantities }: NumberMention, { quote }: QuoteReading): boolean {
  const isOther =
    quantities.length > 0 &&
    quantities.every(({ dimension }) => dimension !== 'count' && dimension !== 'magnification');
  if (isOther) return false;
  return (
    behind.test(quote.slice(numberSpan.end)) ||
    (inBrackets.test(quote.slice(0, span.start)) && closed.test(quote.slice(numberSpan.end)))
  );
}

const behind =
  /^[\s-]?(?:x\b|×|times|fold|-?fach(?:es|em)?|fois)?[\s-]?(?:(?:pre-?|sub-?)?(?:vacuum|conditioning|vakuum)[\s-])?(?:puls|impuls|fraction|fraktion|phases?\b(?!\sof\b)|(?:pre|vor)-?va[ck]uum|vide fractionné)/i;
const inBrackets = /(?:fraction|fraktion|vacuum|vakuum|vide)\p{L}*(?:\s(?:vacuum|vakuum))?\s?\($/iu;
const closed = /^[\s-]?(?:x|×|times|fold|fach|fois)?\)/i;
