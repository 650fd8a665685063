import type { Printing } from '../amounts.ts';
import { memberTitle } from '../card/cleaning.ts';
import { stageLines } from '../card/cleaning-stages.ts';
import { cardSource } from '../card/source.ts';
import type { Line } from '../piece.ts';
import { plain } from '../piece.ts';
import type { Ground } from './ground.ts';
import type { Random } from './random.ts';

/** What to watch at the bench: the steps of members that have any of their own, as the card prints them. */
export function practicalChecklist({ sets, printing }: Ground, random: Random, count: number): readonly Line[] {
  const lines = new Map<string, Line>();
  for (const { set } of sets) for (const line of linesOf(set, printing)) lines.set(plain(line), line);
  return random.shuffled([...lines.values()]).slice(0, count);
}

function linesOf(set: Ground['sets'][number]['set'], printing: Printing): readonly Line[] {
  return cardSource(set, printing).members.flatMap((member) => {
    const title = memberTitle(member, set)[0] ?? '';
    return stageLines(member, printing).map((line): Line => [title, ': ', ...line]);
  });
}
