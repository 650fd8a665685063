/** Rows of a list that go with typed words, those first that the words name. */

export interface Worded {
  readonly label: string;
  readonly description?: string | undefined;
  readonly detail?: string | undefined;
}

/** Each typed word must stand somewhere in a row; what stands in its label at the begin of a word counts most. The order is kept otherwise. */
export function rankedBy<T extends Worded>(typed: string, rows: readonly T[]): readonly T[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const scored = rows.flatMap((row) => {
    const scores = words.map((word) => scoreOf(word, row));
    return scores.every((score) => score > 0) ? [{ row, score: scores.reduce((sum, one) => sum + one, 0) }] : [];
  });
  return scored.toSorted((a, b) => b.score - a.score).map(({ row }) => row);
}

function scoreOf(word: string, { label, description = '', detail = '' }: Worded): number {
  const [own, beside] = [label.toLowerCase(), `${description} ${detail}`.toLowerCase()];
  if (beginsWordIn(own, word)) return own.startsWith(word) ? 5 : 4;
  if (own.includes(word)) return 2;
  return beginsWordIn(beside, word) ? 2 : beside.includes(word) ? 1 : 0;
}

function beginsWordIn(text: string, word: string): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1))
    if (at === 0 || !/[\p{L}\p{N}]/u.test(text[at - 1] ?? '')) return true;
  return false;
}
