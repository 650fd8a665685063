/**
 * print/: what goes on paper or answers a person at the bench: cards, answers, posters, questions, the binder and the check of a logged
 * cycle. Pure data in, data, HTML or SVG out. It must not touch the disk, the clock or the network, must not judge anything itself (it
 * asks judge/ and route/), and never prints more than "consistent with the encoded instruction".
 */
import type { Place, Quantity, Text } from '../model/node.ts';
import { pathOf, rootOf } from '../model/node.ts';

/**
 * Something that was read from the library, ready to print. `from` names every field it rests on, so that a reader of the paper can be
 * led back to the file: `device/pale-forceps#limits.temp.at_most`.
 */
export interface Value {
  readonly text: string;
  readonly from: readonly string[];
  /** Set when it is no field itself: added up, counted, one of a run of numbers, or worked out by the formulas of physics. */
  readonly how?: 'sum' | 'count' | 'ordinal' | 'computed' | 'judged';
}

/**
 * Words that stand in no rule file, and who says them: a finding of the check, the person who asked, a log, the history of the files, the
 * print itself (its day, stamp, numbers of its own), a count over the library, a formula.
 */
export interface Told {
  readonly text: string;
  readonly told: 'check' | 'asked' | 'log' | 'history' | 'print' | 'tally' | 'formula';
}

/** Plain words, a value with its origin, or words that somebody else says. */
export type Piece = string | Value | Told;

/** One line on paper. */
export type Line = readonly Piece[];

/** `device/pale-forceps#limits.temp`: where a value stands in the library. */
export function originOf(place: Place): string {
  const { kind, id } = rootOf(place);
  return `${kind}/${id}#${pathOf(place)}`;
}

/** Any text of a rule file, as written. */
export function said(text: Pick<Text, 'text' | 'at'>): Value {
  return { text: text.text, from: [originOf(text.at)] };
}

/** The same value in other words, such as a term of a closed list in the language of the paper. */
export function saidAs(text: Pick<Text, 'at'>, words: string): Value {
  return { text: words, from: [originOf(text.at)] };
}

/** A quantity in words that the caller formed from it. */
export function amountAs(quantity: Pick<Quantity, 'at'>, words: string): Value {
  return { text: words, from: [originOf(quantity.at)] };
}

export function told(who: Told['told'], text: string): Told {
  return { text, told: who };
}

/** Words that the judgement formed from these places; numbers in them are theirs, their sum or their difference. */
export function judged(text: string, places: readonly (Place | undefined)[]): Value {
  const from = places.flatMap((place) => (place === undefined ? [] : [originOf(place)]));
  return { text, from: [...new Set(from)], how: 'judged' };
}

/** The words of a line without their origins. */
export function plain(line: Line): string {
  return line.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');
}

/** Lines with something between each two. */
export function joined(lines: readonly Line[], between: string): Line {
  const whole: Piece[] = [];
  for (const line of lines) {
    if (line.length === 0) continue;
    if (whole.length > 0) whole.push(between);
    whole.push(...line);
  }
  return whole;
}

/** A line as a list of one where there is something to say, else nothing: for building lists of lines. */
export function lineIf<Node>(node: Node | undefined, make: (node: Node) => Line): readonly Line[] {
  return node === undefined ? [] : [make(node)];
}
