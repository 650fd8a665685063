import type { LibraryView } from '../../library/view.ts';

/** What every answer in the editor says beside what it shows: that it is no instruction, and never a permission. */
export const indexCaution = "The manufacturer's current document is the instruction; this is an index to it.";

/** Beside what was only tried out. */
export const imaginedCaution =
  'What is only imagined here was asked of no maker: it is no permission. Ask, and have the cycle qualified, before anything is changed.';

/** What the library says of itself, such as that all of it is invented. */
export function libraryCautions(view: LibraryView): readonly string[] {
  const [library] = view.all('library');
  return (library?.notes?.items ?? []).map((note) => note.text);
}
