import type { Hazard } from './hazard.ts';
import { shown } from './words.ts';

const LOOSE_DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[Tt ].{0,40})?$/;
const TIME_OF_DAY = /^(?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d)?(?:\.\d{1,9})?(?:Z|[+-]\d\d:?\d\d)?$/;

/** A place for a date: the day must exist and be written year, month, day. */
export function dateHazard(text: string): Hazard | undefined {
  const match = LOOSE_DATE.exec(text);
  if (match === null) return otherForm(text);
  const [, year = '', month = '', day = ''] = match;
  if (!existsInCalendar(Number(year), Number(month), Number(day))) return impossible(text);
  const rest = text.slice(`${year}-${month}-${day}`.length);
  if (rest !== '' && !TIME_OF_DAY.test(rest.slice(1))) {
    return { rule: 'date-form', message: `The time in ${shown(text)} cannot be read. Write it as 2024-01-02T15:30.` };
  }
  if (month.length === 2 && day.length === 2) return undefined;
  const padded = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}${rest}`;
  const message = `Write ${shown(text)} with two digits for month and day: ${padded}. Some programs read the short form as a date and some as text.`;
  return { rule: 'date-form', message, instead: { title: `Write ${padded}`, text: padded } };
}

function otherForm(text: string): Hazard {
  const order = /^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}$/.test(text)
    ? ' It is not certain which number is the day and which the month.'
    : '';
  return {
    rule: 'date-form',
    message: `${shown(text)} is not a date in the form year-month-day.${order} Write it like 2024-01-31.`,
  };
}

/** A place for text: a bare date is turned into a moment in time by some programs. */
export function calendarHazard(text: string): Hazard | undefined {
  const match = LOOSE_DATE.exec(text);
  if (match === null) return undefined;
  const [, year = '', month = '', day = ''] = match;
  if (!existsInCalendar(Number(year), Number(month), Number(day))) return { ...impossible(text), instead: 'quote' };
  const message = `Some programs read ${shown(text)} as a date and print it back in another form; others read it as text. Put it in quotes to keep it as text.`;
  return { rule: 'date-as-text', message, instead: 'quote' };
}

function impossible(text: string): Hazard {
  const message = `There is no such day as ${shown(text)}. Some programs silently move it to the next month. Look up the date again.`;
  return { rule: 'date-impossible', message };
}

function existsInCalendar(year: number, month: number, day: number): boolean {
  if (month < 1 || month > 12 || day < 1) return false;
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const lengths = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return day <= (lengths[month - 1] ?? 0);
}
