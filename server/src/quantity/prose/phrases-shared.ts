import type { PhraseList } from './meaning.ts';

/** Signs and abbreviations that all three languages print. */
export const sharedPhrases: PhraseList = [
  [{ role: 'bound', bound: 'at_least', place: 'before-number' }, '≥, > =, = >, ⩾'],
  [{ role: 'bound', bound: 'at_most', place: 'before-number' }, '≤, < =, = <, ⩽'],
  [{ role: 'compare', side: 'over', place: 'word' }, '>'],
  [{ role: 'compare', side: 'under', place: 'word' }, '<'],
  [{ role: 'bound', bound: 'about', place: 'before-number' }, '~, ≈, ≃, ∼, ca, circa'],
  [{ role: 'bound', bound: 'at_least', place: 'either' }, 'minimum, mini'],
  [{ role: 'bound', bound: 'at_most', place: 'either' }, 'maximum, max, maxi'],
  [{ role: 'join', join: 'and' }, '&, +'],
  [
    { role: 'reference' },
    'iso, en, din, iec, ansi, aami, astm, ref, fig, figs, no, nr, lot, sn, section, version, art',
  ],
  [{ role: 'flag', flag: 'prion' }, 'prion*, tse, cjd, vcjd, creutzfeldt*'],
  [{ role: 'stage', stage: 'iuss' }, 'iuss, flash'],
  [{ role: 'stage', stage: 'vh2o2' }, 'h2o2, vh2o2, h₂o₂, plasma*'],
  [{ role: 'stage', stage: 'eo' }, 'eo, eto, eog'],
  [{ role: 'stage', stage: 'container' }, 'container*'],
];
