/** Whole days from one ISO date to a later one; NaN when either is not a date. Pure arithmetic on the calendar: no clock. */
export function daysBetween(from: string, to: string): number {
  return (Date.parse(`${from.slice(0, 10)}T00:00:00Z`) - Date.parse(`${to.slice(0, 10)}T00:00:00Z`)) / -86_400_000;
}
