/** ASCII digits only: other digits in a quote are not numbers we can compare. */
export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** Letters of any script, the micro sign and lowered digits (`A₀`). Multiplication and division signs are not letters. */
export function isLetter(code: number): boolean {
  if (code < 128) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
  if (code < 0x250) return (code >= 0xc0 && code !== 0xd7 && code !== 0xf7) || code === 0xb5;
  if (code >= 0x2080 && code <= 0x2089) return true;
  return (code >= 0x370 && code < 0x2000) || code >= 0x2c00;
}

/** White space, the fixed-width and non-breaking spaces of typesetting among it. */
export function isSpace(code: number): boolean {
  return (
    code === 32 || (code >= 9 && code <= 13) || code === 0xa0 || code === 0x202f || (code >= 0x2000 && code <= 0x200b)
  );
}

/** Raised digits and raised signs. */
export function isSuperscript(code: number): boolean {
  if (code === 0xb2 || code === 0xb3 || code === 0xb9 || code === 0x2070) return true;
  return code >= 0x2074 && code <= 0x207b;
}

/** `²` to `2`, `⁻⁶` to `-6`. */
export function plainDigits(raised: string): string {
  let plain = '';
  for (let at = 0; at < raised.length; at++) plain += plainDigit(raised.charCodeAt(at));
  return plain;
}

function plainDigit(code: number): string {
  if (code === 0xb9) return '1';
  if (code === 0xb2) return '2';
  if (code === 0xb3) return '3';
  if (code === 0x207a) return '+';
  if (code === 0x207b) return '-';
  return String(code - 0x2070);
}
