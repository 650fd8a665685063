import type { MapEntry, MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';

/** A statement of the file, and whether anything was made of it. */
export interface Sentence {
  readonly id: string;
  readonly offset: number;
  readonly node: MapTree;
  readonly quote: string;
  readonly section: string;
  readonly page: string;
  readonly lang: string;
  readonly state: 'fields' | 'nothing' | 'open';
}

/** The statements in their order: a field cites them, a person has noted that they need none, or they are open. */
export function sentencesOf(root: MapTree): readonly Sentence[] {
  const statements = valueUnder(root, 'statements');
  if (statements?.node !== 'map') return [];
  const cited = new Set<string>();
  for (const { key, value } of root.entries) if (key.text !== 'statements') collect(value, key.text, cited);
  return statements.entries.flatMap((entry) => sentenceOf(entry, cited));
}

function sentenceOf({ key, value }: MapEntry, cited: ReadonlySet<string>): readonly Sentence[] {
  if (value.node !== 'map') return [];
  const text = (name: string): string => {
    const found = valueUnder(value, name);
    return found?.node === 'scalar' ? found.text : '';
  };
  const quote = text('quote');
  if (quote === '') return [];
  const isNoted = valueUnder(value, 'not_needed') !== undefined;
  const state = cited.has(key.text) ? 'fields' : isNoted ? 'nothing' : 'open';
  const { section, page, lang } = { section: text('section'), page: text('page'), lang: text('lang') };
  return [{ id: key.text, offset: key.span.start, node: value, quote, section, page, lang, state }];
}

function collect(tree: Tree, key: string, cited: Set<string>): void {
  if (tree.node === 'map') for (const entry of tree.entries) collect(entry.value, entry.key.text, cited);
  else if (tree.node === 'list') for (const item of tree.items) collect(item, key, cited);
  else if (tree.node === 'scalar' && key === 'src') cited.add(tree.text);
}
