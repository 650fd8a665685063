import { isSafeBare } from '../syntax/edits.ts';
import { quoteScalar } from '../syntax/quote.ts';

const plainlyText = /^[A-Za-z]{2,}[-_A-Za-z0-9]*$/;
const heldForOthers: ReadonlySet<string> = new Set(['yes', 'no', 'on', 'off', 'true', 'false', 'null', 'nan', 'inf']);

/** The text as a YAML value: bare where every reader takes it for that text, between quotes elsewhere. What starts with a digit is quoted: it could be a number. */
export function asValue(text: string): string {
  if (text.length <= 200 && plainlyText.test(text) && !heldForOthers.has(text.toLowerCase())) return text;
  return !/^[0-9]/.test(text) && isSafeBare(text) ? text : quoteScalar(text);
}
