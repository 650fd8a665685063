import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { checkEscapes, reportSwallowed, reportTextAfter, reportUnclosedQuote } from './quote-traps.ts';
import { endOf, type Reading, type Within } from './reading.ts';
import { columnOf, fixQuote, lineRest } from './repairs.ts';
import type { ScalarTree, Tree } from './tree.ts';
import { reportSign, walkEnd } from './trivia.ts';
import { shown } from './words.ts';

/** `word:value` at the start of a text, web addresses and times of day excepted. The key is group 1. */
export const GLUED_COLON = /^([A-Za-z_][\w-]*):(?!\/\/)\S/;
/** `-word` at the start of a text; a minus in front of a digit is a number. */
export const GLUED_DASH = /^-[^\s\d.-]/;

/** What a bare text must not look like. Gives back the tree to use. */
export function checkPlain(reading: Reading, token: CST.FlowScalar, tree: ScalarTree, within: Within): Tree {
  const source = token.source;
  const first = source.charCodeAt(0);
  if (first === 64 || first === 96 || first === 37 || first === 124 || first === 62 || first === 44) {
    reportSign(reading, token.offset);
    return tree;
  }
  if (within.begins !== 'in-brackets') {
    if (source.includes('\n')) checkJoinedLines(reading, token, within);
    else if (within.begins === 'own-line') checkGluedStart(reading, token);
  }
  checkGluedHash(reading, tree.span.end, tree);
  return tree;
}

/** Lines of a text over several lines that were meant as items or keys of their own. */
function checkJoinedLines(reading: Reading, token: CST.FlowScalar, within: Within): void {
  if (GLUED_DASH.test(token.source) && within.begins === 'own-line') {
    reportGluedDashes(reading, token);
    return;
  }
  const lines = token.source.split('\n', 2_000);
  let offset = token.offset;
  for (const [index, line] of lines.entries()) {
    const trimmed = line.trimStart();
    const at = offset + line.length - trimmed.length;
    if (index > 0 && /^-(?:\s|$)/.test(trimmed)) {
      reportJoinedDash(reading, token, at, within);
      return;
    }
    if (index === 0 || GLUED_COLON.test(trimmed.slice(0, 200))) {
      if (within.begins === 'own-line' && reportGluedColon(reading, at, trimmed)) return;
    }
    offset += line.length + 1;
  }
}

function checkGluedStart(reading: Reading, token: CST.FlowScalar): void {
  if (GLUED_DASH.test(token.source)) reportGluedDashes(reading, token);
  else reportGluedColon(reading, token.offset, token.source);
}

function reportJoinedDash(reading: Reading, token: CST.FlowScalar, at: number, within: Within): void {
  const whole = lineRest(reading.text, at);
  const head = token.source.split('\n', 1)[0] ?? '';
  if (within.begins !== 'after-dash') {
    const message = `This line with a dash was read as part of the text ${shown(head)} above it. Start a list on the line after its key, or put the whole text in quotes.`;
    reading.sink.report('dash-joined-to-text', whole, message);
    return;
  }
  const extra = columnOf(reading.text, at) - within.indent;
  const message = `This line with a dash was read as part of the text ${shown(head)} above it, because it is indented further than the list. Line its dash up with the others.`;
  const edits = extra > 0 ? [{ span: span(at - extra, at), text: '' }] : [];
  reading.sink.report('dash-joined-to-text', whole, message, {
    fixes: [{ title: 'Line the dash up with the list', edits }],
  });
}

function reportGluedDashes(reading: Reading, token: CST.FlowScalar): void {
  const edits = [];
  let offset = token.offset;
  for (const line of token.source.split('\n', 2_000)) {
    const trimmed = line.trimStart();
    const dash = offset + line.length - trimmed.length + 1;
    if (GLUED_DASH.test(trimmed)) edits.push({ span: span(dash, dash), text: ' ' });
    offset += line.length + 1;
  }
  const message = `Put a space after the dash in ${shown(token.source)}. Without it, the list is read as one piece of text.`;
  const fix = { title: 'Put a space after each dash', edits };
  reading.sink.report('dash-without-space', span(token.offset, endOf(token)), message, { fixes: [fix] });
}

function reportGluedColon(reading: Reading, at: number, line: string): boolean {
  const match = GLUED_COLON.exec(line.slice(0, 200));
  if (match === null) return false;
  const colon = at + (match[1] ?? '').length;
  const message = `Put a space after the colon in ${shown(line)}. Without it, key and value are one piece of text.`;
  const fix = { title: 'Put a space after the colon', edits: [{ span: span(colon + 1, colon + 1), text: ' ' }] };
  reading.sink.report('colon-without-space', lineRest(reading.text, at), message, { fixes: [fix] });
  return true;
}

/**
 * `AB #12`: what follows the number sign is read as a comment. Reported when the sign touches what follows it: a digit always, a
 * letter when only one space stands before the sign. `# a comment` never is.
 */
export function checkGluedHash(reading: Reading, end: number, tree: Tree): void {
  const { text } = reading;
  let at = end;
  while (text.charCodeAt(at) === 32) at++;
  if (text.charCodeAt(at) !== 35 || at === end) return;
  const next = text[at + 1] ?? '\n';
  const isDigit = next >= '0' && next <= '9';
  if (!isDigit && (at - end !== 1 || !/[\p{L}]/u.test(next))) return;
  const whole = lineRestWithHash(text, tree.node === 'scalar' ? tree.span.start : at);
  const kept = tree.node === 'scalar' ? `only ${shown(tree.text)} is kept` : 'nothing is kept';
  const message = `What follows the number sign is read as a comment, so ${kept}. If it is part of the text, put the whole text in quotes; if it is a comment, put a space after the number sign.`;
  const comment = {
    title: 'It is a comment: put a space after the number sign',
    edits: [{ span: span(at + 1, at + 1), text: ' ' }],
  };
  reading.sink.report('text-cut-at-hash', whole, message, { fixes: [fixQuote(text, whole), comment] });
}

function lineRestWithHash(text: string, start: number) {
  let end = text.indexOf('\n', start);
  if (end < 0) end = text.length;
  while (end > start && /\s/.test(text[end - 1] ?? '')) end--;
  return span(start, end);
}

/** Quoted text: never closed, text behind it, escapes that are none, lines that look like keys. */
export function checkQuoted(
  reading: Reading,
  token: CST.FlowScalar,
  tree: ScalarTree,
  ending: 'closed' | 'unclosed',
): void {
  if (token.source.includes('\n')) reading.textRanges.push(tree.span);
  if (ending === 'unclosed') {
    reportUnclosedQuote(reading, token);
    return;
  }
  if (token.end?.some((part) => part.type !== 'space' && part.type !== 'comment' && part.type !== 'newline')) {
    reportTextAfter(reading, token);
  } else walkEnd(reading, token.end);
  if (token.type === 'double-quoted-scalar' && token.source.includes('\\')) checkEscapes(reading, token);
  if (token.source.includes('\n')) reportSwallowed(reading, token);
}

/** `|` and `>` blocks: an indent fixed by number, a table whose lines would be joined. */
export function checkBlockText(reading: Reading, token: CST.BlockScalar, tree: ScalarTree): void {
  const header = token.props[0];
  if (header === undefined || !('source' in header)) return;
  if (/\d/.test(header.source)) {
    const message =
      'The number after the text-block sign fixes the indent by hand. Leave it out; indent the lines evenly instead.';
    reading.sink.report('text-block-number', span(header.offset, endOf(header)), message);
  }
  if (!header.source.startsWith('>')) return;
  const rows = token.source
    .slice(0, 20_000)
    .split('\n')
    .filter((line) => /\S(?: {3}|\t|\s\|\s)\s*\S/.test(line.slice(0, 500)));
  if (rows.length < 2) return;
  const fix = { title: 'Keep the lines apart', edits: [{ span: span(header.offset, header.offset + 1), text: '|' }] };
  const message =
    'This text block joins its lines into one, and they look like rows of a table. Start the block with | to keep the lines apart.';
  reading.sink.report('folded-table', tree.span, message, { fixes: [fix] });
}
