import { span } from '../../base/span.ts';
import type { ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { Hit } from './lexicon.ts';
import type { Meaning, NegationKind } from './meaning.ts';
import type { Negation } from './prose.ts';

type NegationMeaning = Extract<Meaning, { role: 'negation' }>;

/** Verbs that carry no action of their own: `must not be cleaned` negates what follows, `is not permitted` what stands before. */
const backwardStops: ReadonlySet<string> = new Set([
  ';',
  ':',
  '.',
  'then',
  'dann',
  'puis',
  'but',
  'aber',
  'sondern',
  'mais',
]);
const longestTarget = 24;

/**
 * What the quote forbids, excepts or leaves free, without the negations that only turned a comparison round (`usedUp`), end-points
 * (`until no soil remains`) and conditions (`if a washer is not available`).
 */
export function readNegations(text: ReadingText, usedUp: ReadonlySet<Hit>): Negation[] {
  const negations: Negation[] = [];
  for (const hit of text.hits) {
    if (hit.meaning.role !== 'negation' || usedUp.has(hit)) continue;
    if (isUnderCondition(text, hit)) continue;
    negations.push(asNegation(text, hit, hit.meaning));
  }
  return dropDoubles(negations);
}

/** A condition or an end-point governs the negation when it stands before it with no comma between. */
function isUnderCondition(text: ReadingText, negation: Hit): boolean {
  const kind = negation.meaning.role === 'negation' ? negation.meaning.kind : undefined;
  if (kind === 'exception') return false;
  return text.hits.some((hit) => {
    if (hit.meaning.role !== 'condition' && hit.meaning.role !== 'until') return false;
    if (hit.last >= negation.first || text.sentences[hit.first] !== text.sentences[negation.first]) return false;
    return !hasComma(text, hit.last + 1, negation.first);
  });
}

function hasComma(text: ReadingText, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (tokenText(text, at) === ',') return true;
  return false;
}

function asNegation(text: ReadingText, hit: Hit, meaning: NegationMeaning): Negation {
  const isException = kindOf(text, hit, meaning) === 'exception';
  const first = isException
    ? sentenceStart(text, hit)
    : meaning.scope === 'both'
      ? scopeStart(text, hit)
      : hit.last + 1;
  const last = isException ? text.sentences.lastIndexOf(text.sentences[hit.first] ?? 0) : scopeEnd(text, hit);
  const target = span(text.tokens[first]?.start ?? text.quote.length, text.tokens[last]?.end ?? text.quote.length);
  return {
    kind: kindOf(text, hit, meaning),
    span: span(text.tokens[hit.first]?.start ?? 0, text.tokens[hit.last]?.end ?? 0),
    target,
    targetText: text.quote.slice(target.start, target.end),
  };
}

/** `not ... without` permits with a condition: a hole, not a prohibition. */
function kindOf(text: ReadingText, hit: Hit, meaning: NegationMeaning): NegationKind {
  if (meaning.kind !== 'prohibition') return meaning.kind;
  const later = text.hits.find((other) => other.first > hit.last && other.meaning.role === 'negation');
  const isLifted = later?.meaning.role === 'negation' && later.meaning.kind === 'without';
  return isLifted && !hasComma(text, hit.last, later.first) && sameSentence(text, hit, later)
    ? 'exception'
    : 'prohibition';
}

function sameSentence(text: ReadingText, a: Hit, b: Hit): boolean {
  return text.sentences[a.first] === text.sentences[b.first];
}

/** An exception takes something out of all that its sentence said before. */
function sentenceStart(text: ReadingText, hit: Hit): number {
  return text.sentences.indexOf(text.sentences[hit.first] ?? 0);
}

function scopeStart(text: ReadingText, hit: Hit): number {
  let at = hit.first;
  while (at > 0 && hit.first - at < longestTarget && text.sentences[at - 1] === text.sentences[hit.first]) {
    const before = tokenText(text, at - 1);
    if (backwardStops.has(before) || endsClause(text, at - 1, hit)) break;
    at--;
  }
  return at;
}

/** A comma ends the scope unless it opens a list that the negation closes (`steam, peroxide and EO are not permitted`). */
function endsClause(text: ReadingText, at: number, hit: Hit): boolean {
  if (tokenText(text, at) !== ',') return false;
  return !text.hits.some((other) => other.meaning.role === 'join' && other.first > at && other.last < hit.first);
}

function scopeEnd(text: ReadingText, hit: Hit): number {
  let at = hit.last;
  while (at + 1 < text.tokens.length && at - hit.last < longestTarget) {
    const next = at + 1;
    if (text.sentences[next] !== text.sentences[hit.last]) break;
    if (isForwardStop(text, next, hit)) break;
    at = next;
  }
  return at;
}

function isForwardStop(text: ReadingText, at: number, hit: Hit): boolean {
  if (tokenText(text, at) === ',') return at > hit.last + 1 && !continuesList(text, at);
  return text.hits.some((other) => {
    if (other.first !== at) return false;
    if (other.meaning.role === 'contrast') return true;
    return other.meaning.role === 'join' && other.meaning.join === 'then';
  });
}

/** `do not use saline, bleach or alcohol`: commas of a list do not end what is forbidden. */
function continuesList(text: ReadingText, comma: number): boolean {
  for (let at = comma + 1; at <= comma + 5; at++) {
    const word = tokenText(text, at);
    if (word === 'or' || word === 'nor' || word === 'oder' || word === 'ou' || word === 'ni') return true;
    if (word === '.' || word === ';') return false;
  }
  return false;
}

/** `n'est pas interdit` and `ne ... jamais` give one negation a clause, the first found. */
function dropDoubles(negations: readonly Negation[]): Negation[] {
  const kept: Negation[] = [];
  for (const negation of negations) {
    const before = kept.at(-1);
    const isDouble =
      before !== undefined &&
      before.kind === negation.kind &&
      before.target.start === negation.target.start &&
      before.target.end === negation.target.end;
    if (!isDouble) kept.push(negation);
  }
  return kept;
}
