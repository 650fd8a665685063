import type { IdentifierDate } from './identifier.ts';

/**
 * The four-digit year that two digits stand for, seen from `currentYear`: never more than 50 years ahead nor 49 back
 * (GS1 General Specifications, century rule, from memory).
 */
export function fullYear(twoDigits: number, currentYear: number): number {
  const year = Math.floor(currentYear / 100) * 100 + twoDigits;
  const ahead = year - currentYear;
  if (ahead >= 51) return year - 100;
  return ahead <= -50 ? year + 100 : year;
}

/** Day 0 means the end of the month (GS1, from memory). Undefined for a day that does not exist. */
export function dateOf(year: number, month: number, day: number): IdentifierDate | undefined {
  if (month < 1 || month > 12) return undefined;
  const last = daysInMonth(year, month);
  if (day < 0 || day > last) return undefined;
  return { date: isoDate(year, month, day === 0 ? last : day), dayGiven: day !== 0 };
}

/** The `dayOfYear`-th day, from 1. */
export function dateOfDayInYear(year: number, dayOfYear: number): IdentifierDate | undefined {
  let left = dayOfYear;
  for (let month = 1; left >= 1 && month <= 12; month++) {
    const days = daysInMonth(year, month);
    if (left <= days) return dateOf(year, month, left);
    left -= days;
  }
  return undefined;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function isoDate(year: number, month: number, day: number): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
