import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Text } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { Site } from './site-limits.ts';

type Packaging = EntityOf['packaging'];

/** The packaging files that a step is for: those it names, all of them, or that of its procedure. */
export function packagesOfStep(
  step: ProcedureStep,
  procedure: EntityOf['procedure'],
  view: LibraryView,
): readonly Packaging[] {
  if (step.applies_to_all_packaging?.on === true) return view.all('packaging');
  const names = step.applies_to_packaging?.items ?? [step.packaging ?? procedure.packaging];
  return names.flatMap((name) => {
    const packaging = name === undefined ? undefined : view.get('packaging', name.text);
    return packaging === undefined ? [] : [packaging];
  });
}

/** What is decided for one packaging, and who decided it. */
export interface Decision {
  readonly words: readonly string[];
  readonly at: Place;
  /** `its own statement`, or `the site (policy P-15)`. */
  readonly who: string;
  readonly says: readonly Saying[];
}

/** Where indicators go: as the packaging's own file states it, else as the site decided for its type. */
export function indicatorPlaces(packaging: Packaging, site: Site | undefined): Decision | undefined {
  const { indicator_places: places, indicator_src: src } = packaging;
  if (places !== undefined && places.items.length > 0)
    return decision(places.items, places.at, ownWord, sayingsOf(packaging, src));
  const chosen = site?.indicator_places?.items.find((one) => one.packaging_type?.text === packaging.type?.text);
  if (chosen?.places === undefined || packaging.type === undefined) return undefined;
  return decision(chosen.places.items, chosen.at, siteWord(chosen.src), []);
}

/** Where the thermometer is pointed: as the packaging's own file states it, else as the site decided for its type. */
export function coolAim(packaging: Packaging, site: Site | undefined): Decision | undefined {
  const { cool_aim: aim, cool_aim_src: src } = packaging;
  if (aim !== undefined) return decision([aim], aim.at, ownWord, sayingsOf(packaging, src));
  const chosen = site?.cool_aims?.items.find((one) => one.packaging_type?.text === packaging.type?.text);
  if (chosen?.aim === undefined || packaging.type === undefined) return undefined;
  return decision([chosen.aim], chosen.at, siteWord(chosen.src), []);
}

const ownWord = 'its own instruction';

function siteWord(src: Text | undefined): string {
  return src === undefined ? 'the site, without a source' : `the site (${src.text})`;
}

function decision(words: readonly Text[], at: Place, who: string, says: readonly Saying[]): Decision {
  return { words: words.map((word) => word.text), at, who, says };
}
