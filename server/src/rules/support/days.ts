import type { IsoDate } from '../../base/brand.ts';
import { Remembered } from '../../base/remembered.ts';
import type { QuantityValue } from '../../quantity/quantity.ts';

const millisecondsADay = 86_400_000;
const secondsADay = 86_400;

/** Whole days from the first day to the second; negative when the second is earlier. Times of day are left out. NaN for a date that does not exist. */
export function daysBetween(from: string, to: string): number {
  return Math.round((dayNumber(to) - dayNumber(from)) / millisecondsADay);
}

/** The day a period ends that began on `from`. Months and years are reckoned by the calendar: 31 January and one month is the last of February. */
export function dayAfter(from: string, period: Pick<QuantityValue, 'value' | 'amount' | 'unit'>): IsoDate | undefined {
  const months = monthsIn(period);
  const day =
    months === undefined
      ? dayNumber(from) + Math.round(period.value / secondsADay) * millisecondsADay
      : monthsAfter(from, months);
  return Number.isFinite(day) ? (new Date(day).toISOString().slice(0, 10) as IsoDate) : undefined;
}

function monthsIn({ amount, unit }: Pick<QuantityValue, 'amount' | 'unit'>): number | undefined {
  const months = unit === 'months' ? amount : unit === 'years' ? amount * 12 : undefined;
  return Number.isInteger(months) ? months : undefined;
}

function monthsAfter(from: string, months: number): number {
  const [year = Number.NaN, month = Number.NaN, day = Number.NaN] = from.slice(0, 10).split('-').map(Number);
  const lastDay = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return Date.UTC(year, month - 1 + months, Math.min(day, lastDay));
}

export function inDays(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

/** Files of one library share most of their days. */
const dayNumbers = new Remembered(10_000, (day: string) => Date.parse(`${day}T00:00:00Z`));

function dayNumber(date: string): number {
  return dayNumbers.of(date.slice(0, 10));
}
