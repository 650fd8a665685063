import { setTimeout as pause } from 'node:timers/promises';

/** Waiting for a condition to hold, never for a span of time. */

export interface Waiting {
  /** Milliseconds after which the wait has failed. */
  readonly within?: number;
  /** What to add to the message when the wait fails: what was there instead. */
  readonly describe?: () => string | Promise<string>;
}

/** Asks `look` until it gives something other than undefined; what it throws ends the wait at once. */
export async function until<T>(
  what: string,
  look: () => T | undefined | Promise<T | undefined>,
  { within = 30_000, describe }: Waiting = {},
): Promise<T> {
  const last = Date.now() + within;
  for (;;) {
    const found = await look();
    if (found !== undefined) {
      return found;
    }
    if (Date.now() > last) {
      const instead = describe === undefined ? '' : `\nInstead:\n${await describe()}`;
      throw new Error(`Waited ${within / 1000} s in vain for ${what}.${instead}`);
    }
    await pause(30);
  }
}
