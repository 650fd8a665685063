import { hasCells } from '../../quantity/prose/table-rows.ts';
import { withoutStop } from './cited-fields.ts';

/** Parts of a sentence that may stand in a field of free words, those first that say what the field asks for. */

/** What a field asks for by its key, and the words that begin it in a sentence. */
const kept =
  /(?<!\p{L})(?:(?:do not|don.t|never|not) (?:use|apply|clean with|expose (?:it )?to)|avoid|keine?n?|n.utilisez (?:pas|jamais)(?: de)?|éviter)\s+/giu;
const openings: Readonly<Record<string, RegExp>> = {
  avoid: kept,
  not: kept,
  before: /(?<!\p{L})(?:before|prior to|vor|bevor|avant(?: de| d.)?)\s+/giu,
  endpoint: /(?<!\p{L})(?:until|till|bis|jusqu.à ce qu[e’']|jusqu.à)\s+/giu,
  until: /(?<!\p{L})(?:until|till|bis|jusqu.à ce qu[e’']|jusqu.à)\s+/giu,
  when: /(?<!\p{L})(?:when|if|wenn|falls|si|lorsqu[e’'])\s+/giu,
};

const shortest = 2;
const longest = 200;

/** `path` and `titles` are those of the field; the sentence as a whole comes last. */
export function phrasesFor(path: string, titles: readonly string[], quote: string): readonly string[] {
  const whole = withoutStop(quote);
  const asked = openings[path.replace('[]', '').split('.').at(-1) ?? ''];
  const clauses = asked === undefined ? [] : clausesBehind(whole, asked);
  const behind = asked === kept ? clauses.flatMap((clause) => [...clause.split(/ or | oder | ou /u), clause]) : clauses;
  const named = asked === undefined ? [...beforeHead(whole, titles.at(-1)), ...besideGroup(whole, titles)] : [];
  const all = [...behind, ...named, ...cellsOf(whole), ...partsOf(whole), whole].map((text) => text.trim());
  const fitting = all.filter((text) => text.length > shortest && text.length <= longest);
  return [...new Set(fitting)].toSorted((a, b) => Number(a === whole) - Number(b === whole));
}

/** `until no residue can be seen`: to the end of its clause. */
function clausesBehind(whole: string, opening: RegExp): readonly string[] {
  return [...whole.matchAll(opening)].map(({ index, 0: word }) => {
    const rest = whole.slice(index + word.length);
    const end = rest.search(/[;.](?:\s|$)|,\s|\s\(/u);
    return end < 0 ? rest : rest.slice(0, end);
  });
}

/** Words that are no part of a name: what stands behind them begins it. */
const small: ReadonlySet<string> = new Set(
  `the a an of to in on with by for from at and or is are be must use using only each all any their its into through der die das den dem des ein eine einer einem
  einen mit in im von zum zur und oder für auf an le la les un une des du de d et ou avec dans pour par sur au aux`.split(
    /\s+/,
  ),
);

/** `MIS rack` for a rack: the word that names the field, with the words before it. */
function beforeHead(whole: string, title = ''): readonly string[] {
  const [head] = /\p{L}{3,}$/u.exec(title.toLowerCase()) ?? [];
  if (head === undefined) return [];
  return wordsBefore(whole, head).flatMap((words) => (words.length === 0 ? [] : [`${words.join(' ')} ${head}`]));
}

/** `medical` for the grade of air in `medical compressed air`: what the word of the group is described by. */
function besideGroup(whole: string, titles: readonly string[]): readonly string[] {
  const [group] = /\p{L}{3,}$/u.exec(titles.at(-2)?.toLowerCase() ?? '') ?? [];
  if (titles.length < 2 || group === undefined) return [];
  return wordsBefore(whole, group).flatMap((words) => [...words, ...(words.length > 1 ? [words.join(' ')] : [])]);
}

/** The words right before each place where a word stands, as far back as a name goes. */
function wordsBefore(whole: string, head: string): readonly (readonly string[])[] {
  const words = whole.split(/\s+/);
  return words.flatMap((word, at) => {
    if (word.toLowerCase().replace(/[^\p{L}]+$/u, '') !== head) return [];
    const before = words.slice(Math.max(0, at - 3), at);
    const from = before.findLastIndex((one) => small.has(one.toLowerCase()) || /[,;:.()\d]/u.test(one));
    return [before.slice(from + 1)];
  });
}

/** The cells of a row of a table, and what stands in them between commas. */
function cellsOf(whole: string): readonly string[] {
  if (!hasCells(whole)) return [];
  return whole
    .split(/\s{2,}|\s\|\s/u)
    .flatMap((cell) => cell.split(/,\s+/u))
    .filter((cell) => !noName.test(cell))
    .slice(1);
}

/** A value, a heat in a word, or when it is done. */
const noName = /^(?:\d|cold$|warm$|hot$|kalt$|heiß$|froid$|chaud$|if |when |as |falls |wenn |si )/iu;

const begins =
  /(?:,|:|\b(?:if|when|until|that|for|to|with|in|from|by|before|wenn|falls|bis|für|mit|auf|vor|si|lorsque|pour|avec|avant))\s+/giu;

/** What stands behind the words that begin what is said. */
function partsOf(whole: string): readonly string[] {
  return [...whole.matchAll(begins)].map(({ index, 0: word }) => whole.slice(index + word.length)).slice(0, 5);
}
