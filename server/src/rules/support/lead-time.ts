import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { DateValue, Quantity } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatIn } from '../../quantity/format.ts';
import { unitsOf } from '../../quantity/units.ts';
import { hasTrait, membersOf } from './applies.ts';
import { siteOf } from './site-limits.ts';

type LoanSet = EntityOf['set'];

const message = {
  ours: 'the department needs',
  theirs: (device: string) => `the instruction of "${device}" asks for`,
};

/** The longest time that somebody asks for between arrival and surgery, and who. */
export interface Lead {
  readonly quantity: Quantity;
  readonly whose: string;
  readonly says: ReturnType<typeof sayingsOf>;
}

export function isBorrowed(set: LoanSet): boolean {
  return set.loaner?.on === true || hasTrait(set, 'loaner');
}

export function longestLead(set: LoanSet, view: LibraryView): Lead | undefined {
  const ours = siteOf(set, view)?.policies?.loaner_lead;
  let longest: Lead | undefined =
    ours === undefined || ours.problem !== undefined ? undefined : { quantity: ours, whose: message.ours, says: [] };
  for (const device of membersOf(set, view)) {
    const quantity = device.receipt?.lead_time?.at_least ?? device.receipt?.lead_time?.stated;
    if (quantity === undefined || quantity.problem !== undefined || quantity.value <= (longest?.quantity.value ?? 0))
      continue;
    const says = sayingsOf(device, device.receipt?.lead_time?.src ?? device.receipt?.src);
    longest = { quantity, whose: message.theirs(device.id?.text ?? ''), says };
  }
  return longest;
}

const secondsADay = 86_400;

/** Seconds from arrival to use. A day without a time of day is taken as long as it can be. */
export function secondsBetween(received: Pick<DateValue, 'text'>, needed: Pick<DateValue, 'text'>): number {
  const until = secondsOf(needed) + (needed.text.length > 10 ? 0 : secondsADay);
  return until - secondsOf(received);
}

export function hasTimes(received: Pick<DateValue, 'text'>, needed: Pick<DateValue, 'text'>): boolean {
  return received.text.length > 10 && needed.text.length > 10;
}

function secondsOf({ text }: Pick<DateValue, 'text'>): number {
  return (
    Date.parse(text.length > 10 ? `${text.slice(0, 19)}${text.length === 16 ? ':00' : ''}Z` : `${text}T00:00:00Z`) /
    1000
  );
}

/** `13.5 h`. */
export function inHours(seconds: number): string {
  const hour = unitsOf('time').find((unit) => unit.name === 'h');
  return hour === undefined ? `${seconds} s` : formatIn(seconds, hour);
}
