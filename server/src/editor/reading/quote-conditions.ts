import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';

/** Words that begin what a prohibition is narrowed by, in English, German and French. */
const begins =
  /(?<!\p{L})(?:together with|with|when|if|unless|while|during|before|after|until|above|below|longer than|more than|in|mit|wenn|falls|sofern|während|bevor|länger als|zusammen mit|avec|si|sauf|lorsque|pendant|avant|après|dans|plus de|for(?=\s(?:devices|instruments|products|parts|items|cables|handpieces|tips)(?!\p{L})))\s/giu;
const wholeDevice =
  /^(?:with|mit|avec)\s(?:this|these|the|diesem|dem|cet|ce|cette)\s(?:device|instrument|product|produkt|dispositif|appareil)s?$/iu;

/** Every liquid is meant, and not one of them. */
const anyLiquid =
  /^(?:in|into|with|mit|dans)\s(?:(?:all|every|an[y])\s)?(?:liquids?|fluids?|water(?:\sor\s.*)?|solutions?|flüssigkeit(?:en)?|wasser|liquides?|eau)(?:\sof\s(?:an[y]|all|whatever)\s(?:kinds?|sorts?|types?)|\s(?:jeder|aller) art|\squels qu.ils soient)?$/iu;

/**
 * `Do not clean in ultrasound with dissimilar metals`: the prohibition holds with dissimilar metals, and says nothing of any other load. The
 * words that only name the stage (`in an ultrasonic cleaner`) narrow nothing.
 */
export function conditionOf({ span }: StageMention, { quote, stages }: QuoteReading): string | undefined {
  const from = Math.max(...['. ', '; ', '! '].map((end) => quote.lastIndexOf(end, span.start) + 1));
  const stop = quote.slice(span.end).search(/[.;!](?:\s|$)/);
  const sentence = quote.slice(from, stop < 0 ? quote.length : span.end + stop);
  for (const found of sentence.matchAll(begins)) {
    const start = from + found.index + found[0].length;
    const namesStage = stages.some(
      (one) => one.span.start >= start && wordsIn(quote.slice(start, one.span.start)) <= 2,
    );
    const condition = sentence.slice(found.index).split(/[,:(]/, 1)[0]?.trim() ?? '';
    if (!namesStage && !wholeDevice.test(condition) && !anyLiquid.test(condition)) return condition;
  }
  return undefined;
}

function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => word !== '').length;
}
