import type { IndicatorGeometry } from './indicator-places.ts';
import type { PackageReason } from './package-entries.ts';
import type { Answer } from './physics.ts';

/*
 * Which indicator place counts: what the maker of the device or of the packaging states, and only in their silence what geometry gives.
 */

/** One document's statement; `places` as it spells them, one or more. */
export interface StatedPlaces {
  readonly owner: 'device' | 'packaging';
  readonly places: readonly string[];
}

/** `why` is a plain sentence. `agreesWithGeometry` is undefined when the geometry could not be worked out. */
export type PlaceVerdict =
  | {
      readonly won: 'stated';
      readonly owners: readonly StatedPlaces['owner'][];
      readonly places: readonly string[];
      readonly agreesWithGeometry: boolean | undefined;
      readonly why: string;
    }
  | { readonly won: 'statements-differ'; readonly statements: readonly StatedPlaces[]; readonly why: string }
  | {
      readonly won: 'computed';
      readonly places: readonly string[];
      readonly geometry: IndicatorGeometry;
      readonly why: string;
    }
  | { readonly won: 'nothing'; readonly why: string };

/** Which statement or computation gives the indicator places, and why. Statements without a place count as silence. */
export function statedOrComputed(
  stated: readonly StatedPlaces[],
  geometry: Answer<IndicatorGeometry, PackageReason>,
): PlaceVerdict {
  const speaking = stated.filter((statement) => statement.places.length > 0);
  const first = speaking[0];
  if (first === undefined) return fromGeometry(geometry);
  if (speaking.some((statement) => !samePlaces(statement.places, first.places))) {
    const why = 'The documents name different places; geometry does not choose between them, their makers do.';
    return { won: 'statements-differ', statements: speaking, why };
  }
  const owners = (['device', 'packaging'] as const).filter((owner) => speaking.some((one) => one.owner === owner));
  const agreesWithGeometry = geometry.ok ? samePlaces(first.places, [geometry.value.name]) : undefined;
  return {
    won: 'stated',
    owners,
    places: first.places,
    agreesWithGeometry,
    why: whyStated(owners, agreesWithGeometry),
  };
}

function fromGeometry(geometry: Answer<IndicatorGeometry, PackageReason>): PlaceVerdict {
  if (!geometry.ok)
    return { won: 'nothing', why: `No document names a place, and none can be worked out: ${geometry.message}` };
  const why = 'No document names a place; these places are farthest from where the sterilant enters.';
  return { won: 'computed', places: [geometry.value.name], geometry: geometry.value, why };
}

function whyStated(owners: readonly StatedPlaces['owner'][], agrees: boolean | undefined): string {
  const who = owners.map((owner) => (owner === 'device' ? "the device's" : "the packaging's")).join(' and ');
  const start = `What ${who} document states wins over geometry`;
  if (agrees === undefined) return `${start}.`;
  return agrees ? `${start}, and geometry agrees.` : `${start}; geometry alone would give another place.`;
}

function samePlaces(a: readonly string[], b: readonly string[]): boolean {
  const left = new Set(a);
  const right = new Set(b);
  return left.size === right.size && [...left].every((place) => right.has(place));
}
