import type { Phrase } from './wording.ts';

/*
 * What pages call the sorts of packaging. An educator may read and lengthen this list; how it is read is told in wording.ts. One word may
 * stand for several sorts: a page that says "wrapped" leaves open how many sheets, and "emballage" is a wrap or a pouch.
 */
const wrap: readonly Phrase[] = [
  ['wrap*'],
  ['double', 'wrap*'],
  ['vlies*'],
  ['sterilisiervlies'],
  ['emballage*'],
  ['non', 'tissé'],
];
const pouch: readonly Phrase[] = [
  ['pouch*'],
  ['peel*'],
  ['klarsichtbeutel*'],
  ['beutel*'],
  ['sachet*'],
  ['envelope*'],
  ['emballage*'],
];
const container: readonly Phrase[] = [['container*'], ['rigid'], ['conteneur*'], ['sterilcontainer*']];

export const packagingWords: ReadonlyMap<string, readonly Phrase[]> = new Map([
  ['wrap', wrap],
  ['double-wrap', wrap],
  ['case-wrapped', wrap],
  ['pouch', pouch],
  ['double-pouch', pouch],
  ['non-cellulose-pouch', pouch],
  ['rigid-container', container],
  ['iuss-container', container],
]);

/**
 * Names of one sort that hold the name of another: where the page has only these, the other is not meant. The words that stand for the
 * special sort come first, then the sorts whose plain name is part of it.
 */
export const specialPackaging: readonly { readonly words: readonly Phrase[]; readonly hides: readonly string[] }[] = [
  {
    words: [
      ['non', 'cellulose'],
      ['cellulose', 'free'],
      ['ohne', 'zellulose'],
      ['zellulosefrei*'],
      ['sans', 'cellulose'],
    ],
    hides: ['pouch'],
  },
  {
    words: [
      ['container*', 'immediate', 'use'],
      ['iuss', 'container*'],
    ],
    hides: ['rigid-container'],
  },
];
