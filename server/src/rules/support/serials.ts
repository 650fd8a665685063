import { isDigit } from '../../quantity/number-form.ts';
/** How two serial or lot numbers of one series lie to each other: `unclear` unless all but their last run of digits is alike. */
export function compareSerials(a: string, b: string): 'before' | 'equal' | 'after' | 'unclear' {
  const one = partsOf(a);
  const other = partsOf(b);
  if (one === undefined || other === undefined || one.head !== other.head) return 'unclear';
  if (one.number === other.number) return 'equal';
  return one.number < other.number ? 'before' : 'after';
}

/** Whether the ranges share no number, as far as their ends can be compared. An open end reaches all. */
export function serialsApart(a: SerialRange, b: SerialRange): boolean {
  return isBefore(a.to, b.from) || isBefore(b.to, a.from);
}

export interface SerialRange {
  readonly from: string | undefined;
  readonly to: string | undefined;
}

function isBefore(end: string | undefined, start: string | undefined): boolean {
  return end !== undefined && start !== undefined && compareSerials(end, start) === 'before';
}

function partsOf(serial: string): { head: string; number: bigint } | undefined {
  const text = serial.trim().slice(0, 60);
  let start = text.length;
  while (start > 0 && isDigit(text.charAt(start - 1))) start--;
  return start === text.length ? undefined : { head: text.slice(0, start), number: BigInt(text.slice(start)) };
}
