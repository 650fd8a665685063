/** Printable ASCII alone. */
export function isAscii(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 32 || code > 126) return false;
  }
  return true;
}

/** The code of one of `0` to `9`. */
export function isDigitCode(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** The code of one of `A` to `Z` and `a` to `z`. */
export function isLetterCode(code: number): boolean {
  const small = code | 32;
  return small >= 97 && small <= 122;
}
