import { isAscii } from '../base/ascii.ts';
import { latinized, latinTwin } from './characters.ts';
import type { Hazard } from './hazard.ts';
import { codePointName, shown } from './words.ts';

/** Letters in an id that print like others: another alphabet, full-width forms, two codes for one letter. */
export function idHazard(text: string): Hazard | undefined {
  if (isAscii(text)) return undefined;
  const head = text.slice(0, 512);
  const twin = [...head].find((character) => latinTwin(character) !== undefined);
  if (twin !== undefined && /[A-Za-z]/.test(head)) {
    const message = `The letter ${shown(twin)} (${codePointName(twin)}) in ${shown(text)} is not the Latin letter it looks like, so this id is a different one. Type it again in Latin letters.`;
    const latin = latinized(head);
    const sure = head === text && isAscii(latin);
    return {
      rule: 'look-alike-character',
      message,
      ...(sure ? { instead: { title: `Write ${shown(latin)}`, text: latin } } : {}),
    };
  }
  const plain = head.normalize('NFKC');
  if (/[０-９]/.test(head) || /[٠-٩]/.test(head)) {
    const message = `${shown(text)} holds digits that are not the plain digits 0 to 9. Type them again.`;
    return {
      rule: 'digits-not-plain',
      message,
      ...(isAscii(plain) ? { instead: { title: `Write ${shown(plain)}`, text: plain } } : {}),
    };
  }
  const composed = head.normalize('NFC');
  if (composed === head || head !== text) return undefined;
  const message = `${shown(text)} is stored with letters and accents apart, so it is not equal to the same word typed in the usual way. Type it again.`;
  return {
    rule: 'look-alike-character',
    message,
    instead: { title: 'Store letters and accents together', text: composed },
  };
}
