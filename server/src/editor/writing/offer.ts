import type { Span } from '../../base/span.ts';
import type { Block } from './text-blocks.ts';

/** A piece of what is inserted: text as it is, or a hole that the writer fills. Holes never hold a decided value. */
export type Piece = string | Hole;

export interface Hole {
  readonly hole: 'number' | 'words' | 'rest';
  /** What may stand here, when it is one of a few. The first stands there at the start. */
  readonly choices?: readonly string[];
  /** The field it stands in, and the value behind it that it bounds: `time` and `2 min`. */
  readonly field?: string;
  readonly value?: string;
  /** Among the holes of all that is put in. */
  readonly at?: number;
}

/** One thing offered at a place: always right YAML at the right indent. */
export interface Offer {
  readonly label: string;
  /** A few words behind the label. */
  readonly detail: string;
  /** What it means. */
  readonly about: readonly Block[];
  readonly of: 'field' | 'word' | 'id' | 'statement' | 'value' | 'date' | 'file';
  readonly pieces: readonly Piece[];
  /** What is replaced. */
  readonly span: Span;
  /** What typed letters are compared with, when not the label. */
  readonly filter?: string;
  /** Offered values follow at once: the editor should ask again. */
  readonly goesOn?: true;
}

const newLine = /\n/g;

/** As a snippet with tab stops, for editors that know them. */
export function asSnippet(pieces: readonly Piece[], lineEnd: string): string {
  let stop = 0;
  const parts = pieces.map((piece) => {
    if (typeof piece === 'string') return escaped(piece.replace(newLine, lineEnd));
    if (piece.hole === 'rest') return '$0';
    stop++;
    return piece.choices === undefined ? `$${stop}` : `\${${stop}|${piece.choices.map(escapedChoice).join(',')}|}`;
  });
  return parts.join('');
}

/** As plain text: holes are empty, and one with choices holds the first of them. */
export function asPlain(pieces: readonly Piece[], lineEnd: string): string {
  const parts = pieces.map((piece) =>
    typeof piece === 'string' ? piece.replace(newLine, lineEnd) : (piece.choices?.[0] ?? ''),
  );
  return parts.join('').replace(loneUnit, '$1');
}

/** Behind a number that is not there yet most units are a text that says so; a percent sign by itself is no YAML. */
const loneUnit = /(: ) %/g;

export function hasHoles(pieces: readonly Piece[]): boolean {
  return pieces.some((piece) => typeof piece !== 'string');
}

function escaped(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}

function escapedChoice(text: string): string {
  return text.replace(/[\\$},|]/g, '\\$&');
}
