import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { endOf, type MapWork, type Reading } from './reading.ts';
import { columnOf, lineRest, reindent } from './repairs.ts';
import { GLUED_COLON, GLUED_DASH } from './text-traps.ts';
import type { ListTree } from './tree.ts';
import { shown } from './words.ts';

/** A line that starts with a question mark makes a key of whatever follows. */
export function reportComplexLine(reading: Reading, at: number): void {
  const message =
    'A line that starts with a question mark and a space makes a key of what follows, which is not allowed. Write key: value; if it is text, put it in quotes.';
  reading.sink.report('complex-key-not-allowed', lineRest(reading.text, at), message);
}

/** A key in another column than the keys it belongs to. */
export function reportUnevenKey(work: MapWork, key: CST.Token): void {
  const { reading, map } = work;
  if (!('indent' in key) || key.indent === map.indent || key.offset === map.offset) return;
  const columns = columnOf(reading.text, map.offset);
  const message = `This key starts in column ${columnOf(reading.text, key.offset) + 1}, but the keys it stands among start in column ${columns + 1}. Line it up with the keys it belongs to.`;
  reading.sink.report('uneven-indent', span(key.offset, key.offset + 1), message);
}

/**
 * Lines among keys that have no colon. Without a `sign` (a colon) the whole token is one; with a sign only the lines above the last.
 * Gives back the token of the key that is left.
 */
export function rescueKeyless(
  work: MapWork,
  token: CST.Token,
  sign: CST.SourceToken | undefined,
): CST.Token | undefined {
  if (sign === undefined) {
    if (token.type === 'block-seq' && adoptItems(work, token)) return undefined;
    reportKeyless(work, token);
    return undefined;
  }
  if (token.type !== 'scalar' || !token.source.includes('\n')) return token;
  reportKeyless(work, { ...token, source: token.source.slice(0, token.source.indexOf('\n')).trimEnd() });
  const lastLine = token.source.slice(token.source.lastIndexOf('\n') + 1);
  const word = lastLine.trimStart();
  return { ...token, offset: endOf(token) - word.length, source: word, indent: work.map.indent };
}

/** Dashes further left than the list above them: they are its items. */
function adoptItems(work: MapWork, token: CST.BlockSequence): boolean {
  const { reading, map, entries } = work;
  const last = entries.at(-1);
  if (last === undefined || last.value.node !== 'list') return false;
  const list: ListTree = last.value;
  const columns = columnOf(reading.text, list.span.start);
  const message = `This line starts in column ${columnOf(reading.text, token.offset) + 1}, but the list it belongs to has its dashes in column ${columns + 1}. Line the dashes up.`;
  const edits = [reindent(reading.text, token.offset, columns)];
  const fixes = token.items.length === 1 ? [{ title: 'Line the dash up with the others', edits }] : [];
  reading.sink.report('uneven-indent', span(token.offset, token.offset + 1), message, { fixes });
  const rest = reading.compose(token, { indent: map.indent, flow: 'block', begins: 'own-line' });
  const more = rest.node === 'list' ? rest.items : [];
  entries[entries.length - 1] = {
    key: last.key,
    value: { ...list, span: span(list.span.start, rest.span.end), items: [...list.items, ...more] },
  };
  return true;
}

/** A dash or a colon without its space, or text that belongs to nothing. */
function reportKeyless(work: MapWork, token: CST.Token): void {
  const { sink, text } = work.reading;
  if (!('source' in token)) {
    const message = 'This list belongs to no key. Write a key with a colon on the line above it.';
    sink.report('key-without-colon', span(token.offset, token.offset + 1), message);
    return;
  }
  const at = span(token.offset, Math.max(token.offset + 1, endOf(token)));
  const source = token.source.slice(0, 200);
  const glued = token.type === 'scalar' ? GLUED_COLON.exec(source) : null;
  const above = work.entries.at(-1)?.value;
  if (
    above?.node === 'scalar' &&
    above.style === 'block' &&
    columnOf(text, at.start) > columnOf(text, work.map.offset)
  ) {
    const message = `${shown(source)} stands further left than the first line of the text block above it, so it is not part of the block. Indent every line of the block at least as far as its first line.`;
    sink.report('text-block-uneven', at, message);
  } else if (token.type === 'scalar' && GLUED_DASH.test(source)) {
    const message = `Put a space after the dash in ${shown(source)}. Without it, this line is not an item of the list.`;
    sink.report('dash-without-space', at, message, spaceAt(at.start + 1, 'dash'));
  } else if (glued !== null) {
    const message = `Put a space after the colon in ${shown(source)}. Without it, this line has no key and no value.`;
    sink.report('colon-without-space', at, message, spaceAt(at.start + (glued[1] ?? '').length + 1, 'colon'));
  } else {
    const columns = columnOf(text, work.map.offset);
    const message = `${shown(source)} has no colon, so it belongs to nothing. Write it as a key with a value, or, if it continues the text above, indent it further than column ${columns + 1}.`;
    sink.report('key-without-colon', at, message);
  }
}

function spaceAt(at: number, after: string) {
  return { fixes: [{ title: `Put a space after the ${after}`, edits: [{ span: span(at, at), text: ' ' }] }] };
}
