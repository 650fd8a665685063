import fc from 'fast-check';
import type { FileId } from '../../server/src/base/brand.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { testDay } from './examples.ts';

/** Pieces that change how a file is read, beside plain letters and numbers. */
const pieces = [
  '\n',
  '  ',
  ': ',
  '- ',
  '"',
  "'",
  '#',
  '{',
  '}',
  '[',
  ']',
  ',',
  '\t',
  '|',
  '>',
  '*a',
  '&a ',
  '!x ',
  '? ',
];
const odd = [
  '\u202e',
  '\u00a0',
  '\u2212',
  '\ud800',
  '\0',
  '°',
  'id',
  'at_least',
  '4 min',
  'src: s1',
  'silent',
  '\r\n',
  '---\n',
];

/** A cut, a piece put in, or another piece of the same file put somewhere else; places are parts of the length. */
export const cut = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(12),
  piece: fc.oneof(
    fc.constantFrom('', ...pieces, ...odd),
    fc.string({ unit: 'binary', maxLength: 8 }),
    fc.nat(99).map(String),
  ),
});

export interface Cut {
  readonly at: number;
  readonly length: number;
  readonly piece: string;
}

export function cutText(text: string, { at, length, piece }: Cut): string {
  const from = Math.floor(at * text.length);
  return text.slice(0, from) + piece + text.slice(from + length);
}

export function engineOf(texts: ReadonlyMap<FileId, string>): Engine {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of texts) engine.set(file, text);
  return engine;
}

/** Every finding of every file. */
export function everything(engine: Engine): readonly (readonly [FileId, readonly unknown[]])[] {
  return engine.library.files().map((file) => [file, engine.findings(file)] as const);
}

/** Which rules failed: always none, whatever the files hold. */
export function faultsOfOurs(engine: Engine): readonly string[] {
  return engine.library
    .files()
    .flatMap((file) => engine.findings(file))
    .filter(({ rule }) => rule === 'internal' || rule === 'reader-failed')
    .map(({ message }) => message);
}
