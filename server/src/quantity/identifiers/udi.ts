import { type Gs1Udi, readGs1Udi } from './gs1-udi.ts';
import { type HibcUdi, readHibc } from './hibc.ts';
import { type IccbbaUdi, readIccbba } from './iccbba.ts';
import type { IdentifierFault } from './identifier.ts';

export type Udi = Gs1Udi | HibcUdi | IccbbaUdi;

/** Reads a unique device identifier of any of the three issuing agencies by how it starts. `currentYear` settles two-digit years. */
export function readUdi(text: string, currentYear: number): Udi | IdentifierFault {
  const start = text.trimStart();
  if (start === '') return { fault: 'empty' };
  const first = start.charAt(0);
  if (first === '+' || start.startsWith('*+')) return readHibc(text, currentYear);
  if (first === '=' || first === '&') return readIccbba(text);
  if (first === '(' || first === ']' || first === '<' || (first >= '0' && first <= '9'))
    return readGs1Udi(text, currentYear);
  return { fault: 'agency-unknown' };
}
