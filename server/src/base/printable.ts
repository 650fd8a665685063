/** Control characters, marks that turn the reading direction, odd line ends and lone surrogates: never sent to a reader as they are. */
export function isUnprintable(code: number): boolean {
  if (code < 0x20 || (code >= 0x7f && code <= 0x9f)) return true;
  if (code === 0x61c || code === 0xfeff || code === 0xad || code === 0x180e) return true;
  if ((code >= 0x200b && code <= 0x200f) || (code >= 0x2028 && code <= 0x202e) || (code >= 0x2060 && code <= 0x206f))
    return true;
  return code >= 0xd800 && code <= 0xdfff;
}

/** `\u{1b}`: how such a character is shown instead. */
export function escapedCharacter(code: number): string {
  if (code === 0x0a) return '\\n';
  if (code === 0x0d) return '\\r';
  if (code === 0x09) return '\\t';
  return `\\u{${code.toString(16)}}`;
}

/** `text` on one line, harmless to a terminal, a log or a build server. */
export function printable(text: string): string {
  let shown = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    shown += isUnprintable(code) ? escapedCharacter(code) : character;
  }
  return shown;
}

/** `text` as the content of an HTML element or a quoted attribute: never markup, never anything a reader could not see. */
export function escapedForHtml(text: string): string {
  return printable(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
