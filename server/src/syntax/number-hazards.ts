import { sixtyHazard } from './clock-hazards.ts';
import type { Hazard } from './hazard.ts';
import { emptyHazard, leadingZeroReadings, specialNumber } from './text-hazards.ts';
import type { ScalarStyle } from './tree.ts';
import { codePointName, shown } from './words.ts';

/**
 * A place for a number, or for a number with its unit. The unit itself is not looked at. A fix is offered only where no doubt is left
 * which number was meant.
 */
export function numberHazard(text: string, style: ScalarStyle, expected: 'number' | 'quantity'): Hazard | undefined {
  if (style === 'plain') {
    const empty = emptyHazard(text);
    if (empty !== undefined)
      return { rule: empty.rule, message: `Most programs read ${shown(text)} as “nothing here”. Write the number.` };
  }
  return signHazard(text) ?? digitHazard(text) ?? rangeHazard(text) ?? formHazard(text, expected);
}

/** A dash that is not a minus sign, in front of a digit. */
function signHazard(text: string): Hazard | undefined {
  const match = /^([−–—‐‑‒﹣－])\s?\d/.exec(text);
  const sign = match?.[1];
  if (sign === undefined) return undefined;
  const meant = `-${text.slice(1).trimStart()}`;
  const message = `The dash in ${shown(text)} is not a minus sign (it is ${codePointName(sign)}), so this is not read as a number. Type an ordinary minus sign.`;
  return { rule: 'not-a-minus', message, instead: { title: `Write ${meant}`, text: meant } };
}

/** Digits of other scripts, full-width digits, fractions and raised digits. */
function digitHazard(text: string): Hazard | undefined {
  const match = /[０-９٠-٩۰-۹०-९¼-¾⅐-⅞]|\d[²³¹⁰-⁹]/u.exec(text);
  if (match === null) return undefined;
  const plain = text.normalize('NFKC');
  const wide = /^[\x20-\x7e０-９．]*$/.test(text);
  const message = `${shown(text)} is not written in the plain digits 0 to 9. Type the number again; a fraction as a decimal, a power as its full number.`;
  return {
    rule: 'digits-not-plain',
    message,
    ...(wide ? { instead: { title: `Write ${shown(plain)}`, text: plain } } : {}),
  };
}

/** Two numbers with a dash, dots or "to" between them. */
function rangeHazard(text: string): Hazard | undefined {
  const match = /^(-?[\d.,]{1,20})\s{0,3}(?:[-–—−…]|\.\.\.?|to\s)\s{0,3}(-?[\d.,]{1,20})(?:\s{0,3}(\D{0,20}))?$/.exec(
    text,
  );
  if (match === null || /^\d{4}-\d\d$/.test(text)) return undefined;
  const [, low = '', high = '', unit = ''] = match;
  const tail = unit.trim() === '' ? '' : ` ${unit.trim()}`;
  const message = `${shown(text)} is a range written as text, so its limits cannot be compared. Write it as {between: [${low}${tail}, ${high}${tail}]}.`;
  return { rule: 'range-as-text', message };
}

/** Number forms that are read in more than one way. */
function formHazard(text: string, expected: 'number' | 'quantity'): Hazard | undefined {
  const number = expected === 'number' ? text : (/^[^\s°%]{1,40}/.exec(text)?.[0] ?? '');
  const special = specialNumber(number);
  if (special !== undefined)
    return { rule: 'number-form', message: `${special} Write the number out in plain digits.` };
  const sixty = sixtyHazard(number);
  if (sixty !== undefined) return { rule: sixty.rule, message: sixtyMessage(sixty, text) };
  const digits = /^[-+]?[\d.,]+/.exec(number)?.[0] ?? '';
  if (digits.includes(',')) {
    return {
      rule: 'decimal-comma',
      message: `The comma in ${shown(text)} can mean a fraction or thousands. Write a point for a fraction and nothing for thousands.`,
    };
  }
  if (/^[-+]?0\d/.test(digits)) return leadingZero(digits, text);
  if (/^[-+]?\d{16,}$/.test(digits) && !Number.isSafeInteger(Number(digits))) {
    return {
      rule: 'number-too-long',
      message: `${shown(digits)} has more digits than programs can keep. A count or a measure has fewer; an identity number goes in quotes.`,
    };
  }
  return undefined;
}

function sixtyMessage(hazard: Hazard, text: string): string {
  if (hazard.rule === 'time-impossible') return hazard.message;
  return `${shown(text)} can be read as a time of day, as a ratio, or as one number counted in sixties. Write the number with its unit, such as 90 s.`;
}

function leadingZero(digits: string, text: string): Hazard {
  const readings = leadingZeroReadings(digits);
  const meant = digits.replace(/^([-+]?)0+(?=\d)/, '$1');
  const sure = !readings.includes('eights');
  const fixed = `${meant}${text.slice(digits.length)}`;
  const message = `${readings} Write the number without zeros at the front.`;
  return { rule: 'leading-zero-lost', message, ...(sure ? { instead: { title: `Write ${fixed}`, text: fixed } } : {}) };
}
