import { readTree } from '../../server/src/syntax/read.ts';
import type { MapTree, Tree } from '../../server/src/syntax/tree.ts';
import { encode, instruction, withPages } from './encoding.ts';

/**
 * An instruction with what each of its sentences means to a person who knows the trade. A line is a line of the page; one that begins with `+`
 * goes on in the line above. A line that begins with a sign and two blanks before it is a field of the sentence above: `=` meant and proposed, `-` meant and left to
 * the reader, `!` proposed though nobody meant it, `?` either way; `…` stands for whatever words the page has, `|` between fields that
 * say the same. A sentence without such a line means no field.
 */
export interface Meant {
  readonly page: string;
  readonly sentences: readonly { readonly words: string; readonly fields: readonly Field[] }[];
}

export interface Field {
  readonly sign: '=' | '-' | '!' | '?';
  /** Any one of these. */
  readonly ways: readonly string[];
}

export type Verdict = 'right' | 'open' | 'wrong';

/** What a sentence became by Enter alone: `missing` of what is meant, and what nobody meant. */
export interface Outcome {
  readonly words: string;
  readonly verdict: Verdict;
  readonly missing: readonly string[];
  readonly extra: readonly string[];
  /** As the data have it: what is known to be missing, and to be there without being meant. */
  readonly toldMissing: readonly string[];
  readonly toldExtra: readonly string[];
}

export function meantOf(name: string): Meant {
  const page: string[] = [];
  const sentences: { words: string; fields: Field[] }[] = [];
  for (const line of instruction(name).trimEnd().split('\n')) {
    const [, sign, field = ''] = /^ {2}([=!?-]) (.+)$/.exec(line) ?? [];
    if (isSign(sign)) {
      sentences.at(-1)?.fields.push({ sign, ways: field.split(' | ') });
      continue;
    }
    const words = line.replace(/^\+ /, '');
    page.push(words === line ? line : `${page.pop() ?? ''} ${words}`);
    if (words.trim() !== '') sentences.push({ words, fields: [] });
  }
  return { page: page.join('\n'), sentences };
}

function isSign(sign: string | undefined): sign is Field['sign'] {
  return sign === '=' || sign === '-' || sign === '!' || sign === '?';
}

/** Every sentence of the page by its first choice, as Enter takes it. */
export function outcomesOf({ page, sentences }: Meant): readonly Outcome[] {
  const { log } = encode(withPages(page), () => undefined);
  const left = [...sentences];
  return log
    .filter(({ quote }) => quote !== '')
    .map(({ quote, before, after }) => {
      const meant = takeMeant(left, quote).flatMap(({ fields }) => fields);
      return judged(quote, meant, difference(leavesIn(after), leavesIn(before)));
    });
}

function takeMeant(left: Meant['sentences'][number][], quote: string): Meant['sentences'] {
  const said = plain(quote);
  const from = left.findIndex(({ words }) => said.includes(plain(words)) || plain(words).includes(said));
  if (from === -1) return [];
  let to = from;
  while (to < left.length && said.includes(plain(left[to]?.words ?? ''))) to++;
  return left.splice(0, Math.max(to, from + 1)).slice(from);
}

function judged(words: string, fields: readonly Field[], got: readonly string[]): Outcome {
  const isGot = ({ ways }: Field): boolean => ways.some((way) => got.some((one) => alike(way, one)));
  const meant = fields.filter(({ sign }) => sign !== '!');
  const ways = meant.flatMap((field) => field.ways);
  const missing = meant.filter((field) => field.sign !== '?' && !isGot(field));
  const extra = got.filter((one) => !ways.some((way) => alike(way, one) || way.startsWith(`${one}.`)));
  const told = (sign: Field['sign']): readonly string[] => fields.filter((one) => one.sign === sign).map(inWords);
  return {
    words,
    verdict: extra.length > 0 ? 'wrong' : missing.length > 0 ? 'open' : 'right',
    missing: missing.map(inWords),
    extra,
    toldMissing: told('-'),
    toldExtra: told('!'),
  };
}

function inWords({ ways }: Field): string {
  return ways.join(' | ');
}

function alike(meant: string, got: string): boolean {
  return meant.endsWith('…') ? got.startsWith(meant.slice(0, -1)) : meant === got;
}

function plain(words: string): string {
  return words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}

function difference(after: readonly string[], before: readonly string[]): readonly string[] {
  const left = [...before];
  return after.filter((one) => {
    const at = left.indexOf(one);
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

const notFields = new Set(['statements', 'sources', 'src', 'as_written', 'note']);
const structure = new Set(['all_of', 'any_of', 'steps']);

/** Each value of the file with the names above it; a stage, a step and a prohibition are called by what they are. */
function leavesIn(text: string): readonly string[] {
  const { tree } = readTree(text);
  return tree === undefined ? [] : leavesOf(tree, []).map((leaf) => leaf.replace(/^cleaning\.?/, ''));
}

function leavesOf(tree: Tree, names: readonly string[]): readonly string[] {
  switch (tree.node) {
    case 'map':
      return leavesOfMap(tree, names);
    case 'list':
      return names.at(-1) === 'between'
        ? [`${names.join('.')} ${tree.items.map((item) => ('text' in item ? item.text : '')).join(' ')}`]
        : tree.items.flatMap((item) => leavesOf(item, names));
    case 'scalar':
      return [`${names.join('.')} ${tree.text}`];
    case 'empty':
      return [];
  }
}

function leavesOfMap(tree: MapTree, names: readonly string[]): readonly string[] {
  const isCalled = (key: string): boolean => names.length > 0 && ['stage', 'do', 'what'].includes(key);
  const called = tree.entries.flatMap(({ key, value }) =>
    isCalled(key.text) && value.node === 'scalar' ? [value.text] : [],
  );
  const around = [...names, ...called];
  const own = called.length > 0 && !tree.entries.some(({ key }) => key.text === 'stage') ? [around.join('.')] : [];
  return own.concat(
    tree.entries.flatMap(({ key, value }) => {
      if (notFields.has(key.text) || isCalled(key.text) || (key.text === 'id' && names.length > 0)) return [];
      return leavesOf(value, structure.has(key.text) ? around : [...around, key.text]);
    }),
  );
}
