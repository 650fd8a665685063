import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import type { Reading } from './reading.ts';
import { endOf } from './reading.ts';
import { lineRest } from './repairs.ts';
import { GLUED_COLON } from './text-traps.ts';
import type { Tree } from './tree.ts';
import { reportUnexpected, walkEnd, walkTrivia } from './trivia.ts';
import { shown } from './words.ts';

/** The whole file: directives, the one document, and whatever must not stand around it. */
export function readStream(reading: Reading, tokens: Iterable<CST.Token>): Tree | undefined {
  let tree: Tree | undefined;
  let documents = 0;
  for (const token of tokens) {
    if (token.type === 'document') {
      documents++;
      if (documents === 1) tree = readDocument(reading, token);
      else if (documents === 2) reportSecond(reading, token);
    } else readAround(reading, token, documents);
  }
  if (documents === 0 || tree === undefined) {
    if (!reading.sink.has('unfinished-merge')) reportEmpty(reading);
    return undefined;
  }
  checkTop(reading, tree);
  return tree;
}

function readDocument(reading: Reading, token: CST.Document): Tree | undefined {
  const { sign, hasNewline } = walkTrivia(reading, token.start, 'doc-start');
  const { value } = token;
  if (sign !== undefined && !hasNewline && (value?.type === 'block-map' || value?.type === 'block-seq')) {
    reportUnexpected(reading, sign);
  }
  const tree = value === undefined ? undefined : reading.compose(value, { indent: -1, flow: 'block', begins: 'top' });
  walkEnd(reading, token.end);
  return tree?.node === 'empty' ? undefined : tree;
}

function readAround(reading: Reading, token: CST.Token, documents: number): void {
  switch (token.type) {
    case 'directive':
      reportDirective(reading, token);
      break;
    case 'error':
      reportStray(reading, token);
      break;
    case 'doc-end':
      if (documents > 0) walkEnd(reading, token.end);
      break;
    default:
  }
}

function reportDirective(reading: Reading, token: CST.Directive): void {
  const at = span(token.offset, endOf(token));
  let end = at.end;
  while (reading.text[end] === '\r' || reading.text[end] === '\n') end++;
  const message = `${shown(token.source)} changes how programs read the whole file, which is not allowed. Delete the line.`;
  reading.sink.report('directive-not-allowed', at, message, {
    fixes: [{ title: 'Delete the line', edits: [{ span: span(at.start, end), text: '' }] }],
  });
}

/** A closing bracket that closes nothing ends the reading of the file, so it is blanked and the file read again. */
function reportStray(reading: Reading, token: CST.ErrorToken): void {
  if (token.source !== ']' && token.source !== '}') {
    if (reading.blanks.length === 0) reportUnexpected(reading, token);
    return;
  }
  if (reading.blanks.some(({ at }) => reading.text[at] === ']' || reading.text[at] === '}')) return;
  const at = span(token.offset, token.offset + 1);
  const message = `The ${token.source} here closes nothing. Delete it, write the opening bracket, or put the text in quotes.`;
  const fixes = [{ title: `Delete the ${token.source}`, edits: [{ span: at, text: '' }] }];
  const end = reading.text.length;
  reading.blanks.push({
    at: token.offset,
    report: (sink) => {
      sink.report('stray-bracket', at, message, { fixes });
      if (sink === reading.sink) sink.expectEchoes(span(at.start, end));
    },
  });
}

function reportSecond(reading: Reading, token: CST.Document): void {
  const marker = token.start[0];
  const at =
    marker?.type === 'doc-start'
      ? span(marker.offset, endOf(marker))
      : lineRest(reading.text, token.value?.offset ?? token.offset);
  const message =
    'A second document starts here; most programs read the first one only. Move it to a file of its own, or delete the line of dots or dashes.';
  reading.sink.report('second-document', at, message);
}

function reportEmpty(reading: Reading): void {
  const message = 'This file says nothing yet. Start with two lines: kind: and id:, each with its value.';
  reading.sink.report('empty-file', span(0, 0), message);
}

/** The top of a rule file is keys with values. */
function checkTop(reading: Reading, tree: Tree): void {
  if (tree.node === 'list') {
    const at = span(tree.span.start, tree.span.start + 1);
    const message = 'This file is a list. A rule file has keys at the top: kind, id, and what else the kind asks for.';
    reading.sink.report('list-instead-of-keys', at, message);
  } else if (tree.node === 'scalar') {
    const match = tree.style === 'plain' ? GLUED_COLON.exec(tree.text.slice(0, 200)) : null;
    if (match !== null) reportGlued(reading, tree.span.start, tree.span.start + (match[1] ?? '').length, tree.text);
    else {
      const message = `This file is one piece of text, ${shown(tree.text)}. A rule file has keys with values; each key is followed by a colon and a space.`;
      reading.sink.report('text-instead-of-keys', lineRest(reading.text, tree.span.start), message);
    }
  }
}

function reportGlued(reading: Reading, start: number, colon: number, text: string): void {
  const message = `Put a space after the colon in ${shown(text)}. Without it, the whole file is one piece of text.`;
  const fix = { title: 'Put a space after the colon', edits: [{ span: span(colon + 1, colon + 1), text: ' ' }] };
  reading.sink.report('colon-without-space', lineRest(reading.text, start), message, { fixes: [fix] });
}
