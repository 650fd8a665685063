const UNPRINTABLE = /[\p{Cc}\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ud800-\udfff\ufeff]/gu;

/** How a piece of the writer's text appears inside a message: one line, short, nothing invisible, in curly quotes. */
export function shown(text: string): string {
  const line = text.slice(0, 400).replace(/\s+/g, ' ').trim();
  const clipped = line.length > 48 ? `${line.slice(0, 46)}…` : line;
  return `“${clipped.replace(UNPRINTABLE, codePointName)}”`;
}

/** `U+200B`, as character tables print it. */
export function codePointName(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
