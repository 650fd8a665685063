import type { LibraryView } from '../../library/view.ts';
import { libraryNotes } from '../card/foot.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';

/** Under every answer on paper or on a screen: what it is not. */
const cautions: readonly string[] = [
  'The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.',
  'Consistent with the encoded instruction: no more than that is said. No load is released, and what happened in a cycle is not seen.',
  'Silence in a document is shown as silence and never filled in. Figures that depend on altitude hold for this site only.',
  'Suspected prion disease, implants in an emergency, recalls: stop and call infection prevention.',
  'A print is out of date as soon as the library changes. No patient data belongs on it.',
];

export function cautionParts(view: LibraryView, more: readonly string[] = []): readonly Part[] {
  const notes = libraryNotes(view);
  return [
    ...more.map((caution): Part => ({ is: 'small', line: [caution] })),
    { is: 'cautions', items: [...cautions.map((caution): Line => [caution]), ...notes] },
  ];
}
