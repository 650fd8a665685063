import type { EntityOf } from '../../model/entities.generated.ts';
import type { BoundWord, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { isRequirement, nodesIn } from '../../model/walk.ts';
import type { Printing } from '../amounts.ts';
import { citationLine } from '../card/foot.ts';
import type { Line } from '../piece.ts';
import { quoteOf } from '../sayings.ts';
import type { PosterBody } from './poster.ts';

/** Which encoded bound each row of the poster is about, in the order of its rows. */
const rowsOf: readonly (readonly BoundWord[])[] = [
  ['at_least'],
  ['at_most'],
  ['between'],
  ['exactly', 'stated'],
  ['about'],
];

/** What each small word means, with a sentence from our own files where it stands. */
export function boundWords(printing: Printing): PosterBody {
  const { bounds } = printing.words.poster;
  const devices = printing.view.all('device');
  const rows = bounds.rows.map(({ words, means, wrong }, index): readonly Line[] => [
    [words],
    [means],
    [wrong],
    exampleOf(rowsOf[index] ?? [], devices, printing),
  ]);
  return { table: { head: [...bounds.head, bounds.example], rows } };
}

/** The shortest sentence that is cited by a requirement with one of these words, the first by files' order. */
function exampleOf(words: readonly BoundWord[], devices: readonly EntityOf['device'][], printing: Printing): Line {
  let best: Line = [];
  let length = 90;
  for (const device of devices) {
    for (const node of nodesIn(device)) {
      if (!isRequirement(node) || !hasOnly(node, words)) continue;
      const [saying] = sayingsOf(device, node.src);
      if (saying === undefined || saying.quote === '' || saying.quote.length >= length) continue;
      best = ['“', quoteOf(saying), '” (', ...citationLine(saying, printing), ')'];
      length = saying.quote.length;
    }
  }
  return best;
}

function hasOnly(requirement: Requirement, words: readonly BoundWord[]): boolean {
  const all: readonly BoundWord[] = ['at_least', 'at_most', 'between', 'exactly', 'stated', 'about'];
  const written = all.filter((word) => requirement[word] !== undefined);
  return written.length === 1 && written.every((word) => words.includes(word));
}
