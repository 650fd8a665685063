import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { endOf, type Reading, type Within } from './reading.ts';
import { columnOf, fixQuote, lineRest, reindent } from './repairs.ts';
import type { MapEntry, ScalarTree, Tree } from './tree.ts';
import { reportSign, reportUnexpected } from './trivia.ts';
import { shown } from './words.ts';

/** A value on its key's line. A list that starts there cannot be read. */
export function valueOnKeyLine(reading: Reading, value: CST.Token, within: Within): Tree {
  if (value.type !== 'error') return reading.compose(value, within);
  const at = value.offset;
  if (value.source === '-') {
    const whole = lineRest(reading.text, at);
    const message =
      'A list cannot start on the line of its key. Start it on the next line; if the dash is part of the text, put the text in quotes.';
    reading.sink.report('dash-after-colon', whole, message, { fixes: [fixQuote(reading.text, whole)] });
    return rawText(reading, at);
  }
  reportUnexpected(reading, value);
  return { node: 'empty', span: span(at, at) };
}

function rawText(reading: Reading, start: number): ScalarTree {
  const whole = lineRest(reading.text, start);
  return { node: 'scalar', span: whole, text: reading.text.slice(whole.start, whole.end), style: 'plain' };
}

/**
 * After `key:` on the same line stands something with a colon of its own. Either text with a colon in it, or the next lines are
 * indented too far and so became part of the text. What was meant is given back: the value, and the keys that belong beside it.
 */
export function splitValue(
  reading: Reading,
  map: CST.BlockMap,
  key: ScalarTree,
  value: CST.BlockMap,
): { readonly value: Tree; readonly siblings: readonly MapEntry[] } {
  const first = value.items[0];
  const firstKey = first?.key;
  if (firstKey?.type === 'scalar' && firstKey.source.includes('\n'))
    return splitJoined(reading, map, key, value, firstKey);
  const tree = rawText(reading, value.offset);
  const rest = { ...value, items: value.items.slice(1) };
  const siblings = rest.items.length === 0 ? [] : entriesOf(reading, rest);
  if (first?.start.some((token) => token.type === 'explicit-key-ind')) {
    reportSign(reading, value.offset);
    return { value: tree, siblings };
  }
  const message = `The text ${shown(tree.text)} has a colon and a space in it, which looks like another key. Put the whole text in quotes.`;
  reading.sink.report('colon-in-text', tree.span, message, { fixes: [fixQuote(reading.text, tree.span)] });
  return { value: tree, siblings };
}

function splitJoined(
  reading: Reading,
  map: CST.BlockMap,
  key: ScalarTree,
  value: CST.BlockMap,
  firstKey: CST.FlowScalar,
): { readonly value: Tree; readonly siblings: readonly MapEntry[] } {
  const lastBreak = firstKey.source.lastIndexOf('\n');
  const indent = firstKey.source.slice(lastBreak + 1).length - firstKey.source.slice(lastBreak + 1).trimStart().length;
  const start = firstKey.offset + lastBreak + 1 + indent;
  const word = firstKey.source.slice(lastBreak + 1).trim();
  const columns = columnOf(reading.text, map.offset);
  const message = `${shown(word)} is indented further than ${shown(key.text)}, so it was read as part of the text above it. Line it up with ${shown(key.text)}; if it is part of the text, put the text in quotes.`;
  const fix = { title: `Line it up with ${shown(key.text)}`, edits: [reindent(reading.text, start, columns)] };
  reading.sink.report('key-joined-to-text', span(start, endOf(firstKey)), message, { fixes: [fix] });
  const head = firstKey.source.slice(0, lastBreak).trimEnd();
  const textValue = reading.compose(
    { ...firstKey, source: head, end: [] },
    { indent: map.indent, flow: 'block', begins: 'after-key' },
  );
  const moved: CST.FlowScalar = { ...firstKey, offset: start, source: word };
  const [firstItem, ...others] = value.items;
  const item =
    firstItem === undefined || firstItem.sep === undefined ? undefined : { ...firstItem, start: [], key: moved };
  const items = item === undefined ? others : [item, ...others];
  return { value: textValue, siblings: entriesOf(reading, { ...value, offset: start, items }) };
}

function entriesOf(reading: Reading, map: CST.BlockMap): readonly MapEntry[] {
  const tree = reading.compose(map, { indent: map.indent, flow: 'block', begins: 'own-line' });
  return tree.node === 'map' ? tree.entries : [];
}
