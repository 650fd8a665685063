import type { IsoDate } from '../base/brand.ts';

/** Today's date where the computer stands. The only place that asks the clock for a day. */
export function todayByClock(): IsoDate {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}` as IsoDate;
}
