import type { SayingInFile } from '../check/finding.ts';
import type { KeptBack, PlacedFinding } from './model.ts';
import { settlerWords } from './words.ts';

/** `DW-1, revision C, page 4`: what is not known is left out, but for the page. */
export function citationWords({ doc, rev, page }: Pick<SayingInFile, 'doc' | 'rev' | 'page'>): string {
  const parts = [doc, rev === '' ? '' : `revision ${rev}`, page === '' ? 'no page given' : `page ${page}`];
  return parts.filter((part) => part !== '').join(', ');
}

/** `The instruction says: “...” (DW-1, revision C, page 4)`. */
export function sayingWords(saying: SayingInFile): string {
  const quote = saying.quote === '' ? '' : `“${saying.quote}” `;
  return `The instruction says: ${quote}(${citationWords(saying)})`;
}

/** What stands behind a finding, a line each: quotes, what we do, the gap, who can settle it. The words may hold anything. */
export function reasonWords({ finding }: PlacedFinding): readonly string[] {
  const { says, does, gap, settledBy } = finding;
  return [
    ...says.map(sayingWords),
    ...(does === undefined ? [] : [`We do: ${does}`]),
    ...(gap === undefined ? [] : [`Gap: ${gap}`]),
    `Who can settle it: ${settlerWords[settledBy]}`,
  ];
}

/** What keeps a finding back, with the reason that somebody gave. The words may hold anything. */
export function keptBackWords({ placed, by }: KeptBack): string {
  const { reason = '', owner, until } = placed.finding.excuse ?? {};
  const words = reason.trim().replace(/\s+/g, ' ');
  switch (by) {
    case 'settings':
      return `Switched off in the library’s own settings: ${words}`;
    case 'waiver':
      return `Covered by a waiver in force: ${words} (risk owner: ${owner ?? 'nobody'}; through ${until ?? 'no day'})`;
    case 'baseline':
      return 'Found already on the day on which the baseline was written.';
  }
}

/** Tells apart what has the same name, in order: `name`, `name 2`. */
export class DistinctNames {
  readonly #seen = new Map<string, number>();

  of(name: string): string {
    const count = (this.#seen.get(name) ?? 0) + 1;
    this.#seen.set(name, count);
    return count === 1 ? name : `${name} ${count}`;
  }
}
