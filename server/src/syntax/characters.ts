/** Characters that take no room or turn the reading direction: zero width, joiners, soft hyphen, bidirectional marks, inner BOM. */
export function isUnseen(code: number): boolean {
  if (code === 0xad || code === 0x61c || code === 0xfeff || code === 0x180e) return true;
  return (code >= 0x200b && code <= 0x200f) || (code >= 0x2028 && code <= 0x202e) || (code >= 0x2060 && code <= 0x2069);
}

/** Spaces that look like a space and are not one to a YAML reader. */
export function isOddSpace(code: number): boolean {
  return (
    code === 0xa0 ||
    code === 0x1680 ||
    (code >= 0x2000 && code <= 0x200a) ||
    code === 0x202f ||
    code === 0x205f ||
    code === 0x3000
  );
}

const NAMES = new Map<number, string>([
  [0xa0, 'no-break space'],
  [0xad, 'soft hyphen'],
  [0x200b, 'zero-width space'],
  [0x200c, 'zero-width non-joiner'],
  [0x200d, 'zero-width joiner'],
  [0x2028, 'line separator'],
  [0x2029, 'paragraph separator'],
  [0x202e, 'right-to-left override'],
  [0x2060, 'word joiner'],
  [0x3000, 'wide space'],
  [0xfeff, 'byte order mark'],
  [0x00, 'null character'],
  [0x07, 'bell'],
  [0x1b, 'escape'],
  [0x85, 'next-line character'],
]);

/** `soft hyphen (U+00AD)`. */
export function characterName(code: number): string {
  const point = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const name = NAMES.get(code);
  return name === undefined ? `character ${point}` : `${name} (${point})`;
}

const LATIN_TWINS = 'АВЕЅІЈКМНОРСТХУаеорсухіјѕԁһԛԝѡΑΒΕΖΗΙΚΜΝΟΡΤΥΧονυρι';
const LATIN = 'ABESIJKMHOPCTXYaeopcyxijsdhqwwABEZHIKMNOPTYXovupi';

/** The Latin letter that a Cyrillic or Greek letter prints like, or undefined. */
export function latinTwin(character: string): string | undefined {
  const at = LATIN_TWINS.indexOf(character);
  return at < 0 ? undefined : LATIN[at];
}

/** `text` with look-alike letters replaced by Latin ones. */
export function latinized(text: string): string {
  let out = '';
  for (const character of text) out += latinTwin(character) ?? character;
  return out;
}

/** Hidden characters taken out. */
export function withoutUnseen(text: string): string {
  let out = '';
  for (let at = 0; at < text.length; at++) if (!isUnseen(text.charCodeAt(at))) out += text[at];
  return out;
}
