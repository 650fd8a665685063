import { isSafeBare } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';

const plainlyText = /^[A-Za-z]{2,}[-_A-Za-z0-9]*$/;
const heldForOthers: ReadonlySet<string> = new Set(['yes', 'no', 'on', 'off', 'true', 'false', 'null', 'nan', 'inf']);

/** The text as a YAML value: bare where every reader takes it for that text, between quotes elsewhere. What starts with a digit is quoted: it could be a number. */
export function asValue(text: string): string {
  if (text.length <= 200 && plainlyText.test(text) && !heldForOthers.has(text.toLowerCase())) return text;
  return !/^[0-9]/.test(text) && isSafeBare(text) ? text : quoteScalar(text);
}

/** The text in place of a written value: quotes stay where they are. */
export function asValueFor(written: string, text: string): string {
  return isQuoted(written) ? quoteScalar(text) : asValue(text);
}

/** A path in place of a written one. The way up at its front needs no quotes. */
export function pathInPlaceOf(written: string, path: string): string {
  const below = path.replace(/^(?:\.\.\/|\.\/)+/, '');
  return isQuoted(written) || !isSafeBare(below) ? quoteScalar(path) : path;
}

function isQuoted(written: string): boolean {
  return written.startsWith('"') || written.startsWith("'");
}
