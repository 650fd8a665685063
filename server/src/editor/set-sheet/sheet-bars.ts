import type { Bars, Stretch } from '../../panel/set-sheet.ts';
import type { NearMissRow } from '../../route/model.ts';
import { outermost } from '../../route/nearness.ts';
import type { SheetPlaces } from './sheet-places.ts';
import { markOf, parameterWords } from './sheet-words.ts';

/** Room to the left and right of the outermost numbers, as a share of what lies between them. */
const margin = 0.15;

/** By how much each cycle misses a number, drawn on one scale a number. */
export function nearMissBars(rows: readonly NearMissRow[], places: SheetPlaces): readonly Bars[] {
  return rows.map((row) => {
    const scale = scaleOf(row);
    const band = row.allowed === undefined ? undefined : scale?.(row.allowed);
    return {
      title: `${places.called(row.who)}: ${parameterWords(row.parameter)}`,
      required: row.required,
      place: places.said(row.says, row.at),
      ...(band && { band }),
      rows: row.cycles.map(({ cycle, given, gap, outcome, givenRange }) => {
        const stretch = givenRange === undefined ? undefined : scale?.(givenRange);
        return { name: cycle, given, gap, mark: markOf[outcome], ...(stretch && { stretch }) };
      }),
    };
  });
}

type Scale = (interval: { readonly low: number; readonly high: number }) => Stretch;

/** Undefined where there is nothing to draw: no number at all. */
function scaleOf({ allowed, cycles }: NearMissRow): Scale | undefined {
  const ends = outermost([allowed, ...cycles.map(({ givenRange }) => givenRange)]);
  if (ends === undefined) return undefined;
  const { low, high } = ends;
  const room = high > low ? (high - low) * margin : Math.max(Math.abs(high) * margin, 1);
  const start = low - room;
  const width = high - low + 2 * room;
  const share = (value: number): number =>
    Number.isFinite(value) ? Math.round(((value - start) / width) * 1000) / 1000 : value > 0 ? 1 : 0;
  return (interval) => ({ from: share(interval.low), to: share(interval.high) });
}
