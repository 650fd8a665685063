import type { Library } from '../../library/library.ts';
import type { LibraryView } from '../../library/view.ts';
import { explanationOfSet } from '../../route/explanation.ts';
import { overlaid } from '../../route/overlay.ts';
import { lettersOfSet } from '../../route/questions.ts';
import { imaginedCaution, libraryCautions } from '../words/cautions.ts';
import { choicesFor, imaginedWords, overlayFor } from './imagined.ts';
import type { SetSheet } from './sheet-model.ts';
import { SheetPlaces } from './sheet-places.ts';
import { sectionsOf } from './sheet-sections.ts';
import { sheetCautions, statusMark, statusWords } from './sheet-words.ts';

/**
 * Part `set-sheet`: the sheet of one set as data. Draws nothing, and judges nothing that `route` does not.
 */

/** A library that can also be looked at as it would be: `viewOf` gives the same answers over another one. */
export interface Imaginable {
  readonly library: Library;
  view(): LibraryView;
  viewOf(library: Library): LibraryView;
}

/**
 * The sheet of one set with these changes imagined (keys as in imagined.ts; what the set does not offer is passed over). No file is
 * touched. Undefined when no readable file holds the set.
 */
export function setSheet(from: Imaginable, id: string, keys: ReadonlySet<string>): SetSheet | undefined {
  const real = from.view();
  const set = real.get('set', id);
  if (set === undefined) return undefined;
  const choices = choicesFor(set, real, keys);
  const imagined = imaginedWords(choices);
  const { view, problems } =
    imagined.length === 0 ? { view: real, problems: [] } : asIfChanged(from, overlayFor(set, choices, real));
  const explanation = view.ask(explanationOfSet, id);
  if (explanation === undefined) return undefined;
  const places = new SheetPlaces(view);
  const { status } = explanation.route;
  return {
    set: id,
    name: set.name?.text ?? id,
    ...(set.id && { place: places.at(set.id.at) }),
    mark: statusMark[status],
    status: statusWords[status],
    imagined,
    problems,
    choices,
    sections: sectionsOf(explanation, view.ask(lettersOfSet, id), places),
    cautions: [...(imagined.length === 0 ? [] : [imaginedCaution]), ...sheetCautions, ...libraryCautions(view)],
    places: places.list,
  };
}

function asIfChanged(
  from: Imaginable,
  overlay: Parameters<typeof overlaid>[1],
): { view: LibraryView; problems: readonly string[] } {
  const { library, problems } = overlaid(from.library, overlay);
  return { view: from.viewOf(library), problems };
}
