/**
 * Puts text between quotes so that every YAML reader, 1.1 or 1.2, gives back exactly that text. Always quotes: whether bare text is
 * safe depends on the reader, and no reader takes quoted text for a number, a date or a truth value.
 */
export function quoteScalar(text: string): string {
  if (NEEDS_ESCAPES.test(text)) return JSON.stringify(text).replace(BEYOND_JSON, escaped);
  if (!text.includes('"') && !text.includes('\\')) return `"${text}"`;
  return `'${text.replaceAll("'", "''")}'`;
}

function escaped(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: they cannot stand between quotes as they are
const NEEDS_ESCAPES = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff\ud800-\udfff\ufffe\uffff]/;
/** What JSON leaves as it is but YAML 1.1 readers refuse or fold. */
const BEYOND_JSON = /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g;
