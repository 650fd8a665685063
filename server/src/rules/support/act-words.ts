import type { Phrase } from './wording.ts';

/*
 * What pages and files call the acts of cleaning by hand, one row an act. An educator may read and lengthen this list; how it is read is
 * told in wording.ts.
 */
export const actWords: readonly (readonly Phrase[])[] = [
  [['wipe*'], ['wiping'], ['abwischen'], ['wischen'], ['essuyer']],
  [['brush'], ['brushing'], ['scrub*'], ['bürsten'], ['abbürsten'], ['brosser'], ['écouvillonner']],
  [['flush*'], ['rinse*'], ['rinsing'], ['irrigat*'], ['spülen'], ['durchspülen'], ['abspülen'], ['rincer']],
  [['soak*'], ['immers*'], ['einlegen'], ['eintauchen'], ['tremper'], ['immerger']],
  [['actuat*'], ['open', 'close'], ['bewegen'], ['actionner']],
];
