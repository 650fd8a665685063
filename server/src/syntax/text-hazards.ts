import { sixtyHazard } from './clock-hazards.ts';
import type { Hazard } from './hazard.ts';
import { shown } from './words.ts';

const YES = new Set(['y', 'yes', 'on', 'true']);
const NO = new Set(['n', 'no', 'off', 'false']);

/** A bare word or number where text (or true/false) is meant. */
export function textHazard(text: string, expected: 'text' | 'flag'): Hazard | undefined {
  return emptyHazard(text) ?? (expected === 'flag' ? flagHazard(text) : (truthHazard(text) ?? bareNumberHazard(text)));
}

/** `~` and `null` are read as nothing. */
export function emptyHazard(text: string): Hazard | undefined {
  if (text !== '~' && text.toLowerCase() !== 'null') return undefined;
  const message = `Most programs read ${shown(text)} as “nothing here”. Write the value; if it is the word itself, put it in quotes.`;
  return { rule: 'empty-word', message, instead: 'quote' };
}

function flagHazard(text: string): Hazard | undefined {
  if (text === 'true' || text === 'false') return undefined;
  const word = text.toLowerCase();
  const meant = YES.has(word) ? 'true' : NO.has(word) ? 'false' : undefined;
  if (meant === undefined) return undefined;
  const message = `Some programs read ${shown(text)} as ${meant} and some as a word. Write ${meant}.`;
  return { rule: 'truth-word', message, instead: { title: `Write ${meant}`, text: meant } };
}

function truthHazard(text: string): Hazard | undefined {
  const word = text.toLowerCase();
  if (!YES.has(word) && !NO.has(word)) return undefined;
  const meant = YES.has(word) ? 'true' : 'false';
  const message = `Some programs read ${shown(text)} as ${meant} and some as a word. Put it in quotes to keep it as text.`;
  return { rule: 'truth-word', message, instead: 'quote' };
}

/** Numbers in a place for text lose what is not part of their value, or are read in another base. */
function bareNumberHazard(text: string): Hazard | undefined {
  if (!/^[-+.\d]/.test(text)) return undefined;
  const hazard = numberReading(text) ?? sixtyHazard(text);
  return hazard === undefined ? undefined : { ...hazard, instead: 'quote' };
}

function numberReading(text: string): Hazard | undefined {
  const special = specialNumber(text);
  if (special !== undefined) return { rule: 'number-form', message: `${special} Put it in quotes to keep it as text.` };
  if (/^[-+]?0\d+(?:\.\d*)?$/.test(text))
    return {
      rule: 'leading-zero-lost',
      message: `${leadingZeroReadings(text)} Put it in quotes to keep it as written.`,
    };
  if (/^[-+]?\d+\.$/.test(text) || /^[-+]?\d+\.\d*0$/.test(text)) {
    const message = `Programs read ${shown(text)} as the number ${Number(text)} and drop the end. Put it in quotes to keep it as written.`;
    return { rule: 'trailing-zero-lost', message };
  }
  if (/^[-+]?\d{16,}$/.test(text) && !Number.isSafeInteger(Number(text))) {
    return {
      rule: 'number-too-long',
      message: `Most programs round the number ${shown(text)} to ${roundedDigits(text)}. Put it in quotes to keep every digit.`,
    };
  }
  return undefined;
}

/** The readings of a number with zeros at the front, as a sentence. */
export function leadingZeroReadings(text: string): string {
  const decimal = Number(text);
  const octal = /^[-+]?0[0-7]+$/.test(text) ? Number.parseInt(text, 8) : decimal;
  if (octal !== decimal)
    return `Some programs read ${shown(text)} as ${decimal} and some count in eights and read ${octal}.`;
  return `Some programs read ${shown(text)} as the number ${decimal}, without its zeros.`;
}

function roundedDigits(text: string): string {
  return BigInt(Math.round(Number(text))).toString();
}

/** Forms that some programs read as a number and some do not. Undefined for ordinary numbers and for text. */
export function specialNumber(text: string): string | undefined {
  if (/^[-+]?\.(?:inf|nan)$/i.test(text)) return `Programs read ${shown(text)} as “no number” or “without end”.`;
  if (text === '-0') return `Programs read ${shown(text)} as 0 and drop the sign.`;
  if (/^[-+]?0[xob][\da-f_]+$/i.test(text))
    return `Some programs read ${shown(text)} as the number ${basedValue(text)} and some as text.`;
  if (/^[-+]?\d[\d_]*_[\d_]*$/.test(text))
    return `Some programs read ${shown(text)} as the number ${text.replaceAll('_', '')} and some as text.`;
  if (/^[-+]?(?:\d+\.?\d*|\.\d+)e[-+]?\d+$/i.test(text))
    return `Some programs read ${shown(text)} as the number ${powerValue(text)} and some as text.`;
  return undefined;
}

function basedValue(text: string): string {
  const digits = text.replace(/^[-+]/, '').replaceAll('_', '').toLowerCase();
  const value = Number(digits);
  return Number.isNaN(value) ? 'it seems to spell' : String(value);
}

function powerValue(text: string): string {
  const value = Number(text);
  return Number.isFinite(value) ? String(value) : 'too large to hold';
}
