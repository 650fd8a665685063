import type { DistanceToEntry, Point, Size } from './package-entries.ts';

/*
 * The places on one level that are farthest from every entry. The nearest entry decides; where whole areas are equally far from it,
 * the next nearest decides, and so on. Straight ways only: trays and contents in between are not modelled.
 */

/** Whether the places found are single places, or the middle of a line or area that is equally far, or of all the level. */
export type Extent = 'places' | 'part-of-level' | 'whole-level';

/** Equally far places, left to right and front to back. */
export interface FarthestPlaces {
  readonly places: readonly Point[];
  readonly distanceMm: number;
  readonly extent: Extent;
}

interface Candidate {
  readonly place: Point;
  /** Distances to all entries, nearest first. */
  readonly distances: readonly number[];
}

/** Cells along each side of the first grid; even, so that the centre and the corners are grid places. */
const CELLS = 20;
const SAME_MM = 1e-6;
const TIE_MM = 0.05;

/** Farthest places on the horizontal plane at `zMm`. `entries` is not empty. */
export function farthestOnLevel(size: Size, zMm: number, entries: readonly DistanceToEntry[]): FarthestPlaces {
  const grid = makeGrid(size, zMm, entries);
  const groups = joinNeighbours(localBest(grid, size));
  const extent = extentOf(Math.max(...groups.map((group) => group.length)));
  const refined = groups.map((group) => refine(middleOf(group), size, entries));
  const best = keepBest(refined, TIE_MM).map((candidate) => roundedCandidate(candidate, entries));
  const places = distinct(best.map((candidate) => candidate.place));
  return { places, distanceMm: Math.min(...best.map((candidate) => candidate.distances[0] ?? 0)), extent };
}

/** Up to nine neighbours are one place between grid points. */
function extentOf(largestGroup: number): Extent {
  if (largestGroup <= 9) return 'places';
  return largestGroup > ((CELLS + 1) * (CELLS + 1)) / 2 ? 'whole-level' : 'part-of-level';
}

type Grid = readonly (readonly Candidate[])[];

interface Cell {
  readonly column: number;
  readonly row: number;
  readonly candidate: Candidate;
}

function makeGrid(size: Size, zMm: number, entries: readonly DistanceToEntry[]): Grid {
  const columns: Candidate[][] = [];
  for (let column = 0; column <= CELLS; column++) {
    const rows: Candidate[] = [];
    for (let row = 0; row <= CELLS; row++) {
      const place = { xMm: gridLine(column, size.lengthMm), yMm: gridLine(row, size.widthMm), zMm };
      rows.push(measure(place, entries));
    }
    columns.push(rows);
  }
  return columns;
}

/** Measured from the nearer end, so that both halves of a package are exact mirror images. */
function gridLine(index: number, lengthMm: number): number {
  return index <= CELLS / 2 ? (index * lengthMm) / CELLS : lengthMm - ((CELLS - index) * lengthMm) / CELLS;
}

function measure(place: Point, entries: readonly DistanceToEntry[]): Candidate {
  return { place, distances: entries.map((distance) => distance(place)).sort((a, b) => a - b) };
}

/** Positive when `a` is farther: by its nearest entry, then its next nearest, and so on. */
function compareFar(a: Candidate, b: Candidate): number {
  for (const [index, distance] of a.distances.entries()) {
    const difference = distance - (b.distances[index] ?? 0);
    if (Math.abs(difference) > SAME_MM) return difference;
  }
  return 0;
}

/** Grid places with no farther neighbour, as long as a cell's diagonal could still lift them to the best. */
function localBest(grid: Grid, size: Size): Cell[] {
  const nearest = (candidate: Candidate): number => candidate.distances[0] ?? 0;
  let best = 0;
  for (const rows of grid) for (const candidate of rows) best = Math.max(best, nearest(candidate));
  const reach = Math.hypot(size.lengthMm, size.widthMm) / CELLS;
  const found: Cell[] = [];
  for (const [column, rows] of grid.entries())
    for (const [row, candidate] of rows.entries()) {
      if (nearest(candidate) < best - reach) continue;
      const beaten = neighbours(grid, column, row).some((other) => compareFar(other, candidate) > 0);
      if (!beaten) found.push({ column, row, candidate });
    }
  return found;
}

function neighbours(grid: Grid, column: number, row: number): Candidate[] {
  const around: Candidate[] = [];
  for (const rows of grid.slice(Math.max(0, column - 1), column + 2))
    for (const candidate of rows.slice(Math.max(0, row - 1), row + 2)) around.push(candidate);
  return around;
}

function joinNeighbours(cells: readonly Cell[]): Cell[][] {
  const left = new Map(cells.map((cell) => [cell.column * (CELLS + 1) + cell.row, cell]));
  const groups: Cell[][] = [];
  for (const start of cells) {
    if (!left.delete(start.column * (CELLS + 1) + start.row)) continue;
    const group = [start];
    for (const cell of group)
      for (let column = cell.column - 1; column <= cell.column + 1; column++)
        for (let row = Math.max(0, cell.row - 1); row <= Math.min(CELLS, cell.row + 1); row++) {
          const next = left.get(column * (CELLS + 1) + row);
          if (next !== undefined && left.delete(column * (CELLS + 1) + row)) group.push(next);
        }
    groups.push(group);
  }
  return groups;
}

/** The member nearest to the group's middle; of equals, the first from the left and the front. */
function middleOf(group: readonly Cell[]): Candidate {
  let column = 0;
  let row = 0;
  for (const cell of group) {
    column += cell.column / group.length;
    row += cell.row / group.length;
  }
  const away = (cell: Cell): number => (cell.column - column) ** 2 + (cell.row - row) ** 2;
  const sorted = [...group].sort((a, b) => away(a) - away(b) || a.column - b.column || a.row - b.row);
  return sorted[0]?.candidate ?? { place: { xMm: 0, yMm: 0, zMm: 0 }, distances: [] };
}

/** Looks around a grid place in ever finer grids. A place that nothing beats stays where it is. */
function refine(start: Candidate, size: Size, entries: readonly DistanceToEntry[]): Candidate {
  let best = start;
  let stepX = size.lengthMm / CELLS / 10;
  let stepY = size.widthMm / CELLS / 10;
  for (let round = 0; round < 4; round++) {
    const { xMm, yMm, zMm } = best.place;
    for (let right = -11; right <= 11; right++)
      for (let back = -11; back <= 11; back++) {
        const place = {
          xMm: between(xMm + right * stepX, size.lengthMm),
          yMm: between(yMm + back * stepY, size.widthMm),
          zMm,
        };
        const least = (best.distances[0] ?? 0) - SAME_MM;
        // Most places lose by their nearest entry alone; only the others are measured in full.
        if (entries.some((distance) => distance(place) < least)) continue;
        const candidate = measure(place, entries);
        if (compareFar(candidate, best) > 0) best = candidate;
      }
    stepX /= 10;
    stepY /= 10;
  }
  return best;
}

function between(value: number, end: number): number {
  return Math.max(0, Math.min(end, value));
}

/** Only the best by the nearest entry, of those only the best by the next, and so on; `slackMm` apart counts as equal. */
function keepBest(candidates: readonly Candidate[], slackMm: number): Candidate[] {
  let kept = [...candidates];
  const depth = candidates[0]?.distances.length ?? 0;
  for (let index = 0; index < depth; index++) {
    const best = Math.max(...kept.map((candidate) => candidate.distances[index] ?? 0));
    kept = kept.filter((candidate) => (candidate.distances[index] ?? 0) >= best - slackMm);
  }
  return kept;
}

function roundedCandidate({ place }: Candidate, entries: readonly DistanceToEntry[]): Candidate {
  const tenths = (value: number): number => Math.round(value * 10) / 10;
  return measure({ xMm: tenths(place.xMm), yMm: tenths(place.yMm), zMm: tenths(place.zMm) }, entries);
}

function distinct(places: readonly Point[]): Point[] {
  const sorted = [...places].sort((a, b) => a.xMm - b.xMm || a.yMm - b.yMm);
  return sorted.filter((place, index) => {
    const before = sorted[index - 1];
    return before === undefined || before.xMm !== place.xMm || before.yMm !== place.yMm;
  });
}
