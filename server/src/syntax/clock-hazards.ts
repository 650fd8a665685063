import type { Hazard } from './hazard.ts';
import { shown } from './words.ts';

/** Numbers with colons: some programs count them in sixties. */
export function sixtyHazard(text: string): Hazard | undefined {
  if (!/^[-+]?\d{1,9}(?::\d{1,2}){1,4}(?:\.\d{0,9})?$/.test(text)) return undefined;
  const parts = text.replace(/^[-+]/, '').split(':');
  if (parts.slice(1).some((part) => Number.parseFloat(part) >= 60)) {
    return {
      rule: 'time-impossible',
      message: `${shown(text)} looks like a time, but no hour has that many minutes. Write it out with its unit.`,
    };
  }
  let value = 0;
  for (const part of parts) value = value * 60 + Number.parseFloat(part);
  const same = /^0/.test(text) ? ', and such programs do not agree among themselves' : '';
  const message = `${shown(text)} can be read as a time of day, as a ratio, or as the number ${value}${same}. Put it in quotes to keep it as text; a duration is written with its unit.`;
  return { rule: 'time-or-ratio', message };
}
