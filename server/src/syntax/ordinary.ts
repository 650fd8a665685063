import { isDigitCode, isLetterCode } from '../base/ascii.ts';

/**
 * Values that every program reads as what is meant: nearly all are. They are told by one look at their characters, so that only the
 * others are held against each form that some program reads otherwise.
 */

/** Text that begins with a letter, the short words left out that may stand for yes, no or nothing. */
export function isOrdinaryText(text: string): boolean {
  return isLetterCode(text.charCodeAt(0)) && (text.length > 5 || !'FNOTYfnoty'.includes(text.charAt(0)));
}

/** `4`, `0.97`, `132 °C`: a number in plain digits without zeros in front, alone or with a space and a unit of letters. */
export function isOrdinaryAmount(text: string): boolean {
  const whole = endOfDigits(text, 0);
  if (whole === 0 || (whole > 1 && text.charCodeAt(0) === 48)) return false;
  const isDecimal = text.charCodeAt(whole) === 46;
  const end = isDecimal ? endOfDigits(text, whole + 1) : whole;
  if (end > 15 || (isDecimal && end === whole + 1)) return false;
  if (end === text.length) return true;
  if (text.charCodeAt(end) !== 32) return false;
  for (let at = end + 1; at < text.length; at++) if (!isUnitSign(text.charCodeAt(at))) return false;
  return end + 1 < text.length;
}

/** `2025-03-02`: a day that every month has. */
export function isOrdinaryDate(text: string): boolean {
  if (text.length !== 10 || text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45) return false;
  if (endOfDigits(text, 0) !== 4 || endOfDigits(text, 5) !== 7 || endOfDigits(text, 8) !== 10) return false;
  const month = Number(text.slice(5, 7));
  const day = Number(text.slice(8));
  return month >= 1 && month <= 12 && day >= 1 && day <= 28;
}

function endOfDigits(text: string, from: number): number {
  let at = from;
  while (isDigitCode(text.charCodeAt(at))) at++;
  return at;
}

/** Letters, `%`, `/` and `°`. */
function isUnitSign(code: number): boolean {
  return isLetterCode(code) || code === 37 || code === 47 || code === 176;
}
