import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { type Sentence, sentencesOf } from './open-sentences.ts';
import { languageOf } from './quote-language.ts';
import { methodOf } from './quote-values.ts';

/** `Method: steam, fractionated pre-vacuum` above the times: the one method that other sentences of the section name without forbidding it. */
export function methodBeside(tree: MapTree, { id, section }: Sentence): string | undefined {
  const others = sentencesOf(tree).filter((one) => section !== '' && one.section === section && one.id !== id);
  const stages = others.flatMap((one) => {
    const { stages: named, negations } = readQuote(one.quote, languageOf(tree, one));
    return negations.length > 0 ? [] : named.map(({ stage }) => stage);
  });
  return methodOf(stages);
}
