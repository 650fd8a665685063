import { type Extent, type FarthestPlaces, farthestOnLevel } from './farthest-places.ts';
import { entriesOf, type PackageReason, type Point, type Size, type SterilePackage } from './package-entries.ts';
import { type Answer, answer } from './physics.ts';

/*
 * Where an internal indicator is hardest to reach: the places of a package farthest from where the sterilant enters. Geometry
 * only; what the maker of the packaging or the device says wins over it (stated-or-computed.ts).
 */

/**
 * Plain names of computed places. The first three are spelled as packaging files spell them. `inside-visible`: the level is
 * equally far throughout, so any place where the indicator can be seen will do.
 */
export type PlaceName =
  | 'geometric-centre-per-level'
  | 'two-opposed-corners-per-level'
  | 'inside-visible'
  | 'two-corners-of-one-side-per-level'
  | 'one-corner-per-level'
  | 'other-places-per-level';

export interface LevelPlaces {
  /** 1 is the lowest. */
  readonly level: number;
  readonly name: PlaceName;
  /** Where to put indicators, left to right, front to back. */
  readonly places: readonly Point[];
  /** As far away as `places`, but left out because those already stand for them. */
  readonly equallyFar: readonly Point[];
  readonly extent: Extent;
  /** From these places to the nearest entry, straight. */
  readonly distanceMm: number;
}

export interface IndicatorGeometry {
  /** The name when all levels have the same, else `other-places-per-level`. */
  readonly name: PlaceName;
  readonly levels: readonly LevelPlaces[];
}

/** The farthest places on the middle plane of each level. Obstacles between levels are ignored. */
export function indicatorGeometry(pack: SterilePackage): Answer<IndicatorGeometry, PackageReason> {
  const entries = entriesOf(pack);
  if (!entries.ok) return entries;
  const levels: LevelPlaces[] = [];
  for (let level = 1; level <= pack.levels; level++) {
    const zMm = ((level - 0.5) * pack.size.heightMm) / pack.levels;
    levels.push(nameLevel(level, farthestOnLevel(pack.size, zMm, entries.value), pack.size));
  }
  const first = levels[0]?.name ?? 'other-places-per-level';
  return answer({ name: levels.every((one) => one.name === first) ? first : 'other-places-per-level', levels });
}

function nameLevel(level: number, found: FarthestPlaces, size: Size): LevelPlaces {
  const { places, distanceMm, extent } = found;
  const named = (name: PlaceName, chosen: readonly Point[]): LevelPlaces => ({
    level,
    name,
    places: chosen,
    equallyFar: places.filter((place) => !chosen.includes(place)),
    extent,
    distanceMm,
  });
  if (extent === 'whole-level') return named('inside-visible', places);
  if (places.length === 1 && places.every((place) => isCentre(place, size)))
    return named('geometric-centre-per-level', places);
  if (!places.every((place) => isCorner(place, size))) return named('other-places-per-level', places);
  if (places.length === 1) return named('one-corner-per-level', places);
  const opposed = opposedPair(places);
  if (opposed !== undefined) return named('two-opposed-corners-per-level', opposed);
  return named('two-corners-of-one-side-per-level', places);
}

/** Of equally far corners, the first from the left and front that has its opposite among them, and that opposite. */
function opposedPair(corners: readonly Point[]): readonly [Point, Point] | undefined {
  for (const corner of corners)
    for (const other of corners) if (other.xMm > corner.xMm && other.yMm !== corner.yMm) return [corner, other];
  return undefined;
}

const NEAR_MM = 0.2;

function isCentre(place: Point, size: Size): boolean {
  const offX = Math.abs(place.xMm - size.lengthMm / 2);
  return offX <= NEAR_MM && Math.abs(place.yMm - size.widthMm / 2) <= NEAR_MM;
}

function isCorner(place: Point, size: Size): boolean {
  return atEnd(place.xMm, size.lengthMm) && atEnd(place.yMm, size.widthMm);
}

function atEnd(value: number, end: number): boolean {
  return value <= NEAR_MM || value >= end - NEAR_MM;
}
