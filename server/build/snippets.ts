import { kinds } from '../src/schema/kinds.ts';
import type { SchemaPart } from '../src/schema/shape.ts';
import beginnings from './snippet-beginnings.json' with { type: 'json' };

/** Fields that a new file of a kind is begun with, in the order of the work, and what stands there first. `$` marks places to fill;
 * those of numbers are empty, since a number that nobody wrote would look like one that somebody read. */
const fieldsOf: Readonly<Record<string, readonly string[] | undefined>> = beginnings;

interface Snippet {
  readonly prefix: string;
  readonly description: string;
  readonly body: readonly string[];
}

/** Snippets for the editor: one a kind, and one for each way in which a page words a number. */
export function snippets(schemas: ReadonlyMap<string, SchemaPart>): string {
  const all: Record<string, Snippet> = {};
  for (const kind of kinds) {
    const schema = schemas.get(kind);
    const known = new Set(Object.keys(schema?.properties ?? {}));
    const fields = (fieldsOf[kind] ?? []).filter(
      (line) => line.startsWith(' ') || known.has(line.slice(0, line.indexOf(':'))),
    );
    all[`New ${kind} file`] = {
      prefix: kind,
      description: schema?.description ?? '',
      body: [`kind: ${kind}`, `id: ${place(1, 'name-of-its-own')}`, ...fields, '$0'],
    };
  }
  for (const [word, meaning] of boundWords(schemas)) {
    const value =
      word === 'between'
        ? `[${place(1, 'lowest with unit')}, ${place(2, 'highest with unit')}]`
        : place(1, 'number with unit');
    all[`Value: ${word}`] = {
      prefix: word,
      description: meaning,
      body: [`{${word}: ${value}, src: ${place(3, 's1')}}`],
    };
  }
  return `${JSON.stringify(all, undefined, 2)}\n`;
}

function boundWords(schemas: ReadonlyMap<string, SchemaPart>): readonly (readonly [string, string])[] {
  const requirement = schemas.get('values')?.$defs?.time?.properties ?? {};
  return ['at_least', 'at_most', 'between', 'exactly', 'stated', 'about'].flatMap((word) => {
    const part = requirement[word];
    return part === undefined ? [] : [[word, part.description ?? ''] as const];
  });
}

/** A place to fill in a snippet, with the words that stand there first. */
function place(number: number, words: string): string {
  return `$\{${number}:${words}}`;
}
