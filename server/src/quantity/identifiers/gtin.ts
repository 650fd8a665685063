import type { IdentifierFault } from './identifier.ts';

const gtinLengths: ReadonlySet<number> = new Set([8, 12, 13, 14]);

/**
 * GS1 mod-10 check digit for the digits before it: from the right, weights 3, 1, 3, 1 ...; what is missing to the next ten
 * (GS1 General Specifications 7.9). Undefined when `digits` holds anything but 0-9 or nothing.
 */
export function gs1CheckDigit(digits: string): number | undefined {
  if (digits === '' || firstNonDigit(digits) !== -1) return undefined;
  let sum = 0;
  for (let i = 0; i < digits.length; i++) {
    const weight = (digits.length - i) % 2 === 1 ? 3 : 1;
    sum += weight * (digits.charCodeAt(i) - 48);
  }
  return (10 - (sum % 10)) % 10;
}

/** GTIN-8, -12, -13 or -14 as its 14 digits (zeros in front), when the check digit holds. */
export function readGtin(text: string): { readonly gtin: string } | IdentifierFault {
  const digits = text.trim();
  if (digits === '') return { fault: 'empty' };
  if (digits.length > 14) return { fault: 'too-long', length: digits.length, most: 14 };
  const wrong = firstNonDigit(digits);
  if (wrong !== -1) return { fault: 'character', found: digits.charAt(wrong), field: 'GTIN' };
  if (!gtinLengths.has(digits.length)) {
    return { fault: 'length', field: 'GTIN', found: digits.length, allowed: '8, 12, 13 or 14' };
  }
  return checkDigitFault(digits) ?? { gtin: digits.padStart(14, '0') };
}

/** A fault when the last digit is not the check digit of those before it. */
export function checkDigitFault(digits: string): IdentifierFault | undefined {
  const expected = String(gs1CheckDigit(digits.slice(0, -1)) ?? '');
  const found = digits.slice(-1);
  return found === expected ? undefined : { fault: 'check-character', found, expected };
}

export function firstNonDigit(text: string): number {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code < 48 || code > 57) return i;
  }
  return -1;
}
