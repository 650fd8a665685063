/** The 43 characters of the code in the order of their values (HIBC rule: 0-9, A-Z, then these seven). */
const characters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%';

/** Offset of the first character that the code cannot hold, or -1. */
export function firstNonHibc(text: string): number {
  for (let i = 0; i < text.length; i++) {
    if (!characters.includes(text.charAt(i))) return i;
  }
  return -1;
}

/** HIBC mod-43 check character of `data`, the leading `+` counted, asterisks left out. Undefined for a character outside the code. */
export function hibcCheckCharacter(data: string): string | undefined {
  let sum = 0;
  for (const character of data) {
    const value = characters.indexOf(character);
    if (value === -1) return undefined;
    sum += value;
  }
  return data === '' ? undefined : characters.charAt(sum % characters.length);
}
