import { type Span, span } from '../base/span.ts';
import type { Reading } from './reading.ts';
import { shown } from './words.ts';

/** Names given to pieces of text (`&name`) and used elsewhere (`*name`): one problem for each name, with every place. */
export function reportNames(reading: Reading): void {
  if (reading.anchors.length === 0 && reading.aliases.length === 0) return;
  const uses = new Map<string, Span[]>();
  for (const { name, span: at } of reading.aliases) {
    const places = uses.get(name);
    if (places === undefined) uses.set(name, [at]);
    else places.push(at);
  }
  const named = new Set<string>();
  for (const { name, span: at } of reading.anchors) {
    reportAnchor(reading, name, at, named.has(name) ? [] : (uses.get(name) ?? []));
    named.add(name);
  }
  for (const [name, places] of uses) if (!named.has(name)) reportAlias(reading, name, places);
}

function reportAnchor(reading: Reading, name: string, at: Span, uses: readonly Span[]): void {
  let end = at.end;
  while (reading.text[end] === ' ') end++;
  const used = uses.length === 0 ? '' : ` and repeated with *${name}`;
  const message = `A piece of text is named here with &${name}${used}. Names are not allowed: delete &${name} and write the value out wherever it counts. If the sign is part of the text, put the text in quotes.`;
  const fixes =
    uses.length === 0
      ? [{ title: `Delete ${shown(`&${name}`)}`, edits: [{ span: span(at.start, end), text: '' }] }]
      : [];
  reading.sink.report('anchor-not-allowed', at, message, { fixes, related: relatedTo(uses) });
}

function reportAlias(reading: Reading, name: string, places: readonly Span[]): void {
  const [first, ...others] = places;
  if (first === undefined) return;
  const message = `*${name} would repeat a piece of text from another place, which is not allowed. Write the value out here. If the star is part of the text, put the text in quotes.`;
  reading.sink.report('alias-not-allowed', first, message, { related: relatedTo(others) });
}

function relatedTo(places: readonly Span[]): { span: Span; note: string }[] {
  return places.slice(0, 20).map((place) => ({ span: place, note: 'repeated here' }));
}
