import type { CST } from 'yaml';
import { CST as Cst } from 'yaml';
import { isAscii } from '../base/ascii.ts';
import { span } from '../base/span.ts';
import { isUnseen, latinized, withoutUnseen } from './characters.ts';
import { checkEscapes } from './quote-traps.ts';
import { endOf, type Reading } from './reading.ts';
import type { EmptyTree, ScalarStyle, ScalarTree } from './tree.ts';
import { reportSign } from './trivia.ts';
import { shown } from './words.ts';

/** The empty value after a key's colon. */
export function emptyTree(colon: { readonly offset: number }): EmptyTree {
  return { node: 'empty', span: span(colon.offset + 1, colon.offset + 1) };
}

/** A key as a scalar. Hidden characters (reported elsewhere) are left out, so that the key is still the one that was meant. */
export function keyTree(token: CST.FlowScalar, text: string, style: ScalarStyle): ScalarTree {
  const clean = hasUnseen(text) ? withoutUnseen(text) : text;
  return { node: 'scalar', span: span(token.offset, endOf(token)), text: clean, style };
}

function hasUnseen(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) > 127 && isUnseen(text.charCodeAt(at))) return true;
  return false;
}

/** A value without a usable key: its faults are still worth saying, but names used in it belong to the fault of the key. */
export function dropValue(reading: Reading, value: CST.Token | undefined): void {
  if (value === undefined) return;
  const known = reading.aliases.length;
  reading.compose(value, { indent: -1, flow: 'block', begins: 'after-key' });
  reading.aliases.length = known;
}

/** The key of one entry, or undefined when there is none that can be used (reported). */
export function readKey(
  reading: Reading,
  token: CST.Token | undefined,
  colon: CST.SourceToken,
  form: 'plain' | 'complex',
): ScalarTree | undefined {
  if (--reading.keysLeft < 0) {
    reportTooMany(reading, colon.offset);
    return undefined;
  }
  if (token === undefined || (token.type === 'scalar' && token.source === '')) {
    if (form === 'plain') reportMissing(reading, colon);
    return undefined;
  }
  if (token.type === 'alias') {
    reading.aliases.push({ name: token.source.slice(1), span: span(token.offset, endOf(token)) });
    return undefined;
  }
  if (token.type === 'scalar' || token.type === 'single-quoted-scalar' || token.type === 'double-quoted-scalar') {
    return scalarKey(reading, token);
  }
  reportComplex(reading, token);
  return undefined;
}

function reportMerge(reading: Reading, key: CST.FlowScalar): void {
  const message =
    'Values cannot be pulled in with <<. Write the keys that you need here, each with its own value and source.';
  reading.sink.report('merge-key-not-allowed', span(key.offset, endOf(key)), message);
}

function scalarKey(reading: Reading, token: CST.FlowScalar): ScalarTree | undefined {
  if (token.source.length > reading.limits.keyLength) {
    const message = `This key has ${token.source.length} characters. A key is one short word; if this is text, put it in quotes behind a key.`;
    reading.sink.report('key-too-long', span(token.offset, token.offset + 1), message);
  }
  if (token.source.includes('\n')) {
    const message = 'A key stands on one line. If this is text, put it in quotes behind a key.';
    reading.sink.report('complex-key-not-allowed', span(token.offset, token.offset + 1), message);
  }
  if (token.type === 'scalar' && token.source === '<<') {
    reportMerge(reading, token);
    return undefined;
  }
  if (token.type !== 'scalar') {
    if (token.type === 'double-quoted-scalar' && token.source.includes('\\')) checkEscapes(reading, token);
    const text = Cst.resolveAsScalar({ ...token, end: [] }, false, () => {}).value;
    return keyTree(token, text, token.type === 'single-quoted-scalar' ? 'single-quoted' : 'double-quoted');
  }
  const key = keyTree(token, token.source, 'plain');
  const first = token.source[0] ?? '';
  if ('@`%|>,'.includes(first)) reportSign(reading, token.offset);
  else if (!isAscii(token.source)) checkLetters(reading, key);
  return key;
}

/** Cyrillic or Greek letters in a key that otherwise is Latin. */
function checkLetters(reading: Reading, key: ScalarTree): void {
  const latin = latinized(key.text);
  if (latin === key.text || !isAscii(latin)) return;
  const fix = { title: `Write ${shown(latin)} in Latin letters`, edits: [{ span: key.span, text: latin }] };
  const message = `The key ${shown(key.text)} holds letters of another alphabet that look like Latin ones, so it is a different word. Type it again.`;
  reading.sink.report('look-alike-character', key.span, message, { fixes: [fix] });
}

function reportTooMany(reading: Reading, at: number): void {
  if (reading.sink.has('too-many-keys')) return;
  const message = `This file has more than ${reading.limits.keys} keys; the rest is not read. One file describes one thing.`;
  reading.sink.report('too-many-keys', span(at, at + 1), message);
}

function reportMissing(reading: Reading, colon: CST.SourceToken): void {
  const message = 'There is a colon here with no key in front of it. Write the key, or put the text in quotes.';
  reading.sink.report('key-missing', span(colon.offset, colon.offset + 1), message);
}

function reportComplex(reading: Reading, token: CST.Token): void {
  const message =
    'A list or a block stands here where a key is needed. Write one plain word as the key; if this is text, put it in quotes.';
  const end = 'source' in token ? endOf(token) : token.offset + 1;
  reading.sink.report('complex-key-not-allowed', span(token.offset, Math.max(end, token.offset + 1)), message);
}
