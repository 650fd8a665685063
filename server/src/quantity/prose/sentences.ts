import type { Token } from './token.ts';

/** A point after one of these ends no sentence unless the quote ends with it. */
const abbreviations: ReadonlySet<string> = new Set(
  `ca approx env max min mind fig figs no nr art abb abs bzw z b e g i e s p pp ref rev tab nos resp usw etc std sek vol incl inkl temp
  réf rév cf ex dr st d h evtl ggf max mini maxi`.split(/\s+/),
);

/** The sentence each token belongs to, counted from 0. A semicolon, a bullet and a line end count as ends. */
export function numberSentences(tokens: readonly Token[], quote: string): number[] {
  const sentences: number[] = [];
  let sentence = 0;
  for (let at = 0; at < tokens.length; at++) {
    sentences.push(sentence);
    if (endsSentence(tokens, at, quote)) sentence++;
  }
  return sentences;
}

function endsSentence(tokens: readonly Token[], at: number, quote: string): boolean {
  const token = tokens[at];
  if (token === undefined || token.kind !== 'mark') return false;
  if (token.text === ';' || token.text === '\n' || token.text === '•' || token.text === '!' || token.text === '?')
    return true;
  if (token.text !== '.') return false;
  const next = tokens[at + 1];
  if (next === undefined) return true;
  if (!next.spaced) return false;
  const before = tokens[at - 1];
  const isShort = before?.kind === 'word' && abbreviations.has(before.text) && !isLetter(tokens, at - 1, quote);
  if (isShort && !endsUnit(tokens, at - 1, next)) return false;
  return startsSentence(next, quote);
}

/** `Appendix B. Do not …`: a letter that names something, and no abbreviation as in `z. B.`. */
function isLetter(tokens: readonly Token[], at: number, quote: string): boolean {
  const [before, letter, next] = [tokens[at - 1], tokens[at], tokens[at + 2]];
  const isNamed = before?.kind === 'word' && before.text.length > 3 && next?.kind === 'word';
  return isNamed && letter !== undefined && /^\p{Lu}$/u.test(quote.slice(letter.start, letter.end));
}

/** `4 min.` may end a sentence; `min. 4` and the `max. 110` behind another number do not. */
function endsUnit(tokens: readonly Token[], at: number, next: Token): boolean {
  return tokens[at - 1]?.kind === 'number' && !(next.kind === 'number' && boundWords.has(tokens[at]?.text ?? ''));
}

const boundWords: ReadonlySet<string> = new Set(['max', 'maxi', 'mind', 'mini', 'env', 'ca', 'approx']);

function startsSentence(next: Token, quote: string): boolean {
  // `pH` begins one too.
  const begin = quote.slice(next.start, next.start + 2);
  return next.kind !== 'word' || begin !== begin.toLowerCase();
}
