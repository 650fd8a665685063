import type { Language } from './token.ts';

/** One way to read printed digits. The first reading of a number is the likeliest in its language. */
export interface NumberReading {
  readonly amount: number;
  /** Digits after the decimal sign in this reading. */
  readonly decimals: number;
  readonly how:
    | 'as-printed'
    | 'decimal-comma'
    | 'decimal-point'
    | 'thousands'
    | 'separator-dropped'
    | 'footnote-split'
    | 'footnote-glued'
    | 'word';
}

/**
 * All readings of digits as printed: `3,5` is 3.5 (and 35 to a hasty eye), `1.200` is 1200 in German and 1.2 in English.
 * Empty when the digits are no one number (`12.03.2025`).
 */
export function numberReadings(text: string, language: Language): readonly NumberReading[] {
  const plain = Number(text);
  if (isWhole(text)) return [{ amount: plain, decimals: 0, how: 'as-printed' }];
  const bare = text.replace(/[^0-9.,]/g, '');
  const comma = bare.lastIndexOf(',');
  const point = bare.lastIndexOf('.');
  if (comma >= 0 && point >= 0) return mixedReadings(bare, Math.max(comma, point));
  const sign = comma >= 0 ? ',' : '.';
  const at = Math.max(comma, point);
  if (at < 0) return [{ amount: Number(bare), decimals: 0, how: 'thousands' }];
  if (bare.indexOf(sign) !== at) return groupedReadings(bare, sign);
  return oneSeparator(bare, at, sign, language);
}

function isWhole(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 48 || code > 57) return false;
  }
  return true;
}

function mixedReadings(text: string, at: number): readonly NumberReading[] {
  const whole = digits(text.slice(0, at));
  const fraction = text.slice(at + 1);
  const how = text.charAt(at) === ',' ? 'decimal-comma' : 'decimal-point';
  return [{ amount: Number(`${whole}.${fraction}`), decimals: fraction.length, how }, dropped(text)];
}

function groupedReadings(text: string, sign: string): readonly NumberReading[] {
  const [first, ...groups] = text.split(sign);
  if (first === undefined || first.length > 3 || groups.some((group) => group.length !== 3)) return [];
  return [{ amount: Number(digits(text)), decimals: 0, how: 'thousands' }];
}

function oneSeparator(text: string, at: number, sign: string, language: Language): readonly NumberReading[] {
  const decimals = text.length - at - 1;
  const decimal: NumberReading = {
    amount: Number(`${text.slice(0, at)}.${text.slice(at + 1)}`),
    decimals,
    how: sign === ',' ? 'decimal-comma' : 'decimal-point',
  };
  const couldGroup = decimals === 3 && at <= 3 && text.charAt(0) !== '0';
  if (!couldGroup) return [decimal, dropped(text)];
  const thousands: NumberReading = { amount: Number(digits(text)), decimals: 0, how: 'thousands' };
  const groupSign = language === 'en' ? ',' : '.';
  return sign === groupSign && language !== 'fr' ? [thousands, decimal] : [decimal, thousands];
}

/** What remains when the eye skips the separator: the ten-fold error. */
function dropped(text: string): NumberReading {
  return { amount: Number(digits(text)), decimals: 0, how: 'separator-dropped' };
}

function digits(text: string): string {
  return text.replace(/[.,]/g, '');
}
