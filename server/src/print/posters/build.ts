import { nameOfText } from '../../base/mix.ts';
import type { Printing } from '../amounts.ts';
import { libraryNotes } from '../card/foot.ts';
import { plain } from '../piece.ts';
import type { PosterId } from '../words/poster-words.ts';
import { boundWords } from './bound-words.ts';
import { dryBeforeSteam } from './dry-before-steam.ts';
import { immediateUse } from './immediate-use.ts';
import { aim, indicators } from './packagings.ts';
import type { Poster, PosterBody } from './poster.ts';
import { sameForAll } from './same-for-all.ts';
import { units } from './units.ts';

const makers: Readonly<Record<PosterId, (printing: Printing) => PosterBody>> = {
  indicators,
  aim,
  'dry-before-steam': dryBeforeSteam,
  'immediate-use': immediateUse,
  'same-for-all': sameForAll,
  'bound-words': boundWords,
  units,
};

export const posterIds = Object.keys(makers) as readonly PosterId[];

/** A poster of this department, from its rule files as they are. */
export function poster(id: PosterId, printing: Printing): Poster {
  const { poster: words } = printing.words;
  return {
    id,
    ...words.posters[id],
    figures: [],
    path: [],
    lines: [],
    exceptions: [],
    sources: [],
    cautions: words.cautions,
    notes: libraryNotes(printing.view),
    ...makers[id](printing),
  };
}

/** The same for everything that prints the same poster; the day of printing has no part in it. */
export function posterStamp({ figures, table, path, lines, exceptions, sources, loud, title, claim }: Poster): string {
  const text = [
    title,
    claim,
    ...figures.map(({ drawing, caption }) => `${drawing} ${plain(caption)}`),
    ...(table?.rows ?? []).map((row) => row.map(plain).join('|')),
    ...path.map((step) => `${step.ask} ${step.else}`),
    ...[...lines, ...exceptions, ...sources, loud ?? []].map(plain),
  ].join('\n');
  return nameOfText(text).slice(0, 6);
}
