import type { FileId, IsoDate } from '../../server/src/base/brand.ts';
import { Library } from '../../server/src/library/library.ts';
import { LibraryView, QueryAnswers } from '../../server/src/library/view.ts';
import { clashesOf } from '../../server/src/route/clash.ts';
import type { Clash, Repair } from '../../server/src/route/model.ts';
import { repairsFor } from '../../server/src/route/repairs.ts';
import type { Derivation } from '../../server/src/route/route.ts';
import { deriveSet } from '../../server/src/route/route.ts';

/** The day on which the demonstration department is looked at. */
export const demoDay = '2025-03-03' as IsoDate;

/** A library and a view on it, without any rules: no file is suspected of faults of transcription. */
export function viewOf(
  texts: Iterable<readonly [FileId, string]>,
  today: IsoDate = demoDay,
): { library: Library; view: LibraryView } {
  const library = new Library();
  for (const [file, text] of texts) library.set(file, text);
  return { library, view: new LibraryView(library, new Set(), new QueryAnswers(today)) };
}

/** The derivation of a set that must be there. */
export function derived(view: LibraryView, id: string): Derivation {
  const set = view.get('set', id);
  if (set === undefined) throw new Error(`there is no set ${id}`);
  return deriveSet(view, set);
}

/** Who and which parameter, for each atom of each clash. */
export function clashNames(derivation: Derivation): readonly (readonly string[])[] {
  return clashesOf(derivation).map((clash: Clash) => clash.atoms.map(({ who, parameter }) => `${who} ${parameter}`));
}

export function repairNames(derivation: Derivation): readonly string[] {
  return repairsFor(derivation).map(({ effect, kind, about }: Repair) => `${effect} ${kind} ${about.join(' ')}`);
}
