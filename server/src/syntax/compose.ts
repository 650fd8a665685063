import { CST } from 'yaml';
import { span } from '../base/span.ts';
import { composeFlow } from './compose-flow.ts';
import { composeMap } from './compose-map.ts';
import { composeSeq } from './compose-seq.ts';
import { reportBlockInBrackets } from './flow-traps.ts';
import type { Reading, Within } from './reading.ts';
import { endOf } from './reading.ts';
import { checkBlockText, checkPlain, checkQuoted } from './text-traps.ts';
import type { EmptyTree, ScalarStyle, ScalarTree, Tree } from './tree.ts';
import { reportSign, reportUnexpected, walkEnd } from './trivia.ts';

/** Builds the tree of one token. Reports what is wrong with it; always gives a tree back. */
export function composeToken(reading: Reading, token: CST.Token, within: Within): Tree {
  switch (token.type) {
    case 'scalar':
    case 'single-quoted-scalar':
    case 'double-quoted-scalar':
      return composeScalar(reading, token, within);
    case 'block-scalar':
      return composeBlockText(reading, token);
    case 'alias':
      return composeAlias(reading, token);
    case 'block-map':
    case 'block-seq':
    case 'flow-collection':
      if (within.flow === 'flow' && token.type !== 'flow-collection') reportBlockInBrackets(reading, token);
      return composeNested(reading, token);
    default:
      if ('source' in token) reportUnexpected(reading, token);
      return emptyAt(token.offset);
  }
}

/** The empty place where a value would stand. */
export function emptyAt(offset: number): EmptyTree {
  return { node: 'empty', span: span(offset, offset) };
}

function composeNested(reading: Reading, token: CST.BlockMap | CST.BlockSequence | CST.FlowCollection): Tree {
  if (reading.depth >= reading.limits.depth) {
    const message = `Here are more than ${reading.limits.depth} levels inside each other, which no rule file needs. Look for a bracket or an indent gone wrong.`;
    if (!reading.sink.has('nested-too-deep')) {
      reading.sink.report('nested-too-deep', span(token.offset, token.offset + 1), message);
      reading.sink.expectEchoes(span(token.offset, reading.text.length));
    }
    return emptyAt(token.offset);
  }
  reading.depth++;
  try {
    if (token.type === 'block-map') return composeMap(reading, token);
    if (token.type === 'block-seq') return composeSeq(reading, token);
    return composeFlow(reading, token);
  } finally {
    reading.depth--;
  }
}

const STYLES = {
  scalar: 'plain',
  'single-quoted-scalar': 'single-quoted',
  'double-quoted-scalar': 'double-quoted',
} as const satisfies Record<CST.FlowScalar['type'] & `${string}scalar`, ScalarStyle>;

function composeScalar(reading: Reading, token: CST.FlowScalar, within: Within): Tree {
  if (token.type === 'alias') return composeAlias(reading, token);
  if (token.source === '') {
    walkEnd(reading, token.end);
    return emptyAt(token.offset);
  }
  const style = STYLES[token.type];
  if (style === 'plain') {
    walkEnd(reading, token.end);
    const text = token.source.includes('\n') ? flowText(token) : token.source;
    return checkPlain(reading, token, limited(reading, scalar(token, text, style)), within);
  }
  const unclosed = !isClosed(token);
  const whole = unclosed ? { ...token, source: `${token.source}${token.source[0]}` } : token;
  const tree = limited(reading, scalar(token, flowText(whole), style));
  checkQuoted(reading, token, tree, unclosed ? 'unclosed' : 'closed');
  return tree;
}

function scalar(token: CST.FlowScalar, text: string, style: ScalarStyle): ScalarTree {
  return { node: 'scalar', span: span(token.offset, endOf(token)), text, style };
}

/** The closing quote may also be a quote after a backslash, which closes nothing. */
function isClosed(token: CST.FlowScalar): boolean {
  const { source } = token;
  if (source.length < 2 || source[source.length - 1] !== source[0]) return false;
  if (token.type !== 'double-quoted-scalar') return true;
  let backslashes = 0;
  while (source[source.length - 2 - backslashes] === '\\') backslashes++;
  return backslashes % 2 === 0;
}

/** Folding and escapes resolved; faults of the escapes are reported by `checkQuoted` in our own words. */
function flowText(token: CST.FlowScalar): string {
  if (token.type === 'double-quoted-scalar' && !token.source.includes('\\') && !token.source.includes('\n')) {
    return token.source.slice(1, -1);
  }
  return CST.resolveAsScalar({ ...token, end: [] }, false, ignore).value;
}

function ignore(): void {}

function composeBlockText(reading: Reading, token: CST.BlockScalar): ScalarTree {
  const resolved = CST.resolveAsScalar(token, true, (offset, code) => reportBlockFault(reading, token, offset, code));
  const at = span(token.offset, Math.max(token.offset + 1, resolved.range[1]));
  reading.textRanges.push(at);
  const tree: ScalarTree = { node: 'scalar', span: at, text: resolved.value, style: 'block' };
  checkBlockText(reading, token, tree);
  return limited(reading, tree);
}

function reportBlockFault(reading: Reading, token: CST.BlockScalar, offset: number, code: string): void {
  if (code === 'UNEXPECTED_TOKEN') {
    reportSign(reading, token.offset);
    return;
  }
  const at = span(offset, offset + 1);
  if (code === 'MISSING_CHAR' && reading.text[offset] === '#') {
    reading.sink.report('comment-needs-space', at, 'A comment needs a space in front of its number sign.');
    return;
  }
  const message =
    'The lines of this text block do not start in one column. Indent every line of the block at least as far as its first line.';
  reading.sink.report('text-block-uneven', at, message);
}

/** `*name` was meant to repeat another piece of text. The text of the tree is what is written. */
function composeAlias(reading: Reading, token: CST.FlowScalar): ScalarTree {
  const at = span(token.offset, endOf(token));
  if (token.source === '*') reportSign(reading, token.offset);
  else {
    reading.aliases.push({ name: token.source.slice(1), span: at });
    walkEnd(reading, token.end);
  }
  return { node: 'scalar', span: at, text: token.source, style: 'plain' };
}

/** A text over the limit is reported and cut, so that nothing after this has to deal with it. */
function limited(reading: Reading, tree: ScalarTree): ScalarTree {
  const limit = reading.limits.textLength;
  if (tree.text.length <= limit) return tree;
  const message = `This text has ${tree.text.length} characters; at most ${limit} are read. Quote only the sentences that count.`;
  reading.sink.report('text-too-long', span(tree.span.start, tree.span.start + 1), message);
  return { ...tree, text: tree.text.slice(0, limit) };
}
