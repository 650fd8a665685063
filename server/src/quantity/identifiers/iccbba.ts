import type { IdentifierFault } from './identifier.ts';

/** Recognised, and its device identifier taken out; the production part is kept as written. */
export interface IccbbaUdi {
  readonly agency: 'ICCBBA';
  /** The 16 characters after `=/`: facility 5, product 6, code 5. */
  readonly di: string;
  readonly production: string;
}

const longestText = 200;

/** An ICCBBA (ISBT 128) compound code that starts with `=/` (FDA sample, from memory). */
export function readIccbba(text: string): IccbbaUdi | IdentifierFault {
  const code = text.trim();
  if (code.length > longestText) return { fault: 'too-long', length: code.length, most: longestText };
  if (!code.startsWith('=/')) return { fault: 'device-identifier-missing' };
  const di = code.slice(2, 18);
  if (di.length < 16) return { fault: 'length', field: 'device identifier', found: di.length, allowed: '16' };
  const wrong = /[^0-9A-Z]/.exec(di);
  if (wrong !== null) return { fault: 'character', found: wrong[0], field: 'device identifier' };
  return { agency: 'ICCBBA', di, production: code.slice(18) };
}
