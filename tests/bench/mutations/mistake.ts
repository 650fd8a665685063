import type { Edit } from '../../../server/src/base/problem.ts';
import type { Span } from '../../../server/src/base/span.ts';
import { span } from '../../../server/src/base/span.ts';
import { isSafeBare } from '../../../server/src/syntax/edits.ts';
import { quoteScalar } from '../../../server/src/syntax/quote.ts';
import type { MapTree, Tree } from '../../../server/src/syntax/tree.ts';
import type { Department, Site } from './rule-files.ts';
import { entryOf } from './rule-files.ts';

/** One thing that a tired person could have written instead. */
export interface Mistake {
  readonly edits: readonly Edit[];
  /** What stood there and what stands there now, short enough for a list. */
  readonly was: string;
  readonly becomes: string;
}

/** A way to slip. `mistakes` gives all that can be made at one value. */
export interface MistakeKind {
  readonly id: string;
  readonly what: string;
  /** A typing slip may leave text that can't be read; every other mistake leaves a file that reads well. */
  readonly leaves: 'readable' | 'anything';
  /** Says why no check of the library could notice: counted as unseen all the same. */
  readonly unnoticeable?: string;
  readonly mistakes: (site: Site, department: Department) => readonly Mistake[];
}

export function replaced(site: Site, becomes: string): Mistake {
  return { edits: [{ span: site.value.span, text: written(becomes) }], was: shown(site, site.value), becomes };
}

/** The value in other words of the file's own language, braces and all. */
export function rewritten(site: Site, becomes: string): Mistake {
  return { edits: [{ span: site.value.span, text: becomes }], was: shown(site, site.value), becomes };
}

export function renamedKey(site: Site, becomes: string): readonly Mistake[] {
  const key = entryOf(site)?.key;
  return key === undefined ? [] : [{ edits: [{ span: key.span, text: becomes }], was: key.text, becomes }];
}

function written(text: string): string {
  return isSafeBare(text) ? text : quoteScalar(text);
}

/** Takes the entry or the item out. Nothing when it is the only one, or when the lines around it would lose their indent. */
export function removed(site: Site): readonly Mistake[] {
  const { text } = site.of;
  const parts = partsOf(site.holder);
  const own = parts[site.index];
  if (own === undefined || parts.length < 2) return [];
  const was = clipped(text.slice(own.start, own.end));
  if (/[{[]/.test(text[site.holder.span.start] ?? '')) {
    const next = parts[site.index + 1];
    const before = parts[site.index - 1];
    const range = next === undefined ? span(before?.end ?? own.start, own.end) : span(own.start, next.start);
    return [{ edits: [{ span: range, text: '' }], was, becomes: '(nothing)' }];
  }
  const lines = wholeLines(text, own, site.holder.node);
  return lines === undefined ? [] : [{ edits: [{ span: lines, text: '' }], was, becomes: '(nothing)' }];
}

/** The lines of an entry or item between line starts; undefined when something else stands before it on its line. */
function wholeLines(text: string, own: Span, holder: 'map' | 'list'): Span | undefined {
  const lineStart = text.lastIndexOf('\n', own.start - 1) + 1;
  const before = text.slice(lineStart, own.start);
  if (!(holder === 'map' ? /^ *$/ : /^ *- +$/).test(before)) return undefined;
  const lineEnd = text[own.end - 1] === '\n' ? own.end : text.indexOf('\n', own.end) + 1;
  return lineEnd === 0 ? undefined : span(lineStart, lineEnd);
}

function partsOf(holder: Site['holder']): readonly Span[] {
  if (holder.node === 'list') return holder.items.map((item) => item.span);
  return holder.entries.map(({ key, value }) => span(key.span.start, Math.max(key.span.end, value.span.end)));
}

/** The item changes places with the next one. */
export function swappedWithNext(site: Site): readonly Mistake[] {
  if (site.holder.node !== 'list') return [];
  const next = site.holder.items[site.index + 1];
  if (next === undefined) return [];
  const { text } = site.of;
  const cut = (tree: Tree): string => text.slice(tree.span.start, tree.span.end).trimEnd();
  const at = (tree: Tree) => span(tree.span.start, tree.span.start + cut(tree).length);
  const edits = [
    { span: at(site.value), text: cut(next) },
    { span: at(next), text: cut(site.value) },
  ];
  return [{ edits, was: `${clipped(cut(site.value))}, then ${clipped(cut(next))}`, becomes: 'the other way round' }];
}

export function withoutKey(site: Site, map: MapTree, key: string): readonly Mistake[] {
  const index = map.entries.findIndex((entry) => entry.key.text === key);
  const entry = map.entries[index];
  if (entry === undefined) return [];
  return removed({ ...site, holder: map, index, value: entry.value });
}

export function shown({ of }: Site, tree: Tree): string {
  return clipped(of.text.slice(tree.span.start, tree.span.end));
}

function clipped(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 90 ? `${line.slice(0, 87)}...` : line;
}
