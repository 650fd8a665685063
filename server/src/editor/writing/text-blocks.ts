/** A text for people as blocks without markup, so that each editor can show it in the form that it knows. */
export type Block =
  | { readonly block: 'heading'; readonly text: string }
  | { readonly block: 'line'; readonly text: string }
  /** Words of a document, with where they stand. */
  | { readonly block: 'quote'; readonly text: string; readonly from: string }
  | { readonly block: 'note'; readonly text: string };

/** As Markdown. All text is escaped: nothing that stands in a rule file can become a link, an image, a command or markup. */
export function asMarkdown(blocks: readonly Block[]): string {
  return blocks.map(markdownOf).join('\n\n');
}

function markdownOf(block: Block): string {
  const text = escapeMarkdown(block.text);
  switch (block.block) {
    case 'heading':
      return `**${text}**`;
    case 'quote':
      return `> “${text}”  \n> ${escapeMarkdown(block.from)}`;
    case 'note':
      return `_${text}_`;
    case 'line':
      return text;
  }
}

export function asPlainText(blocks: readonly Block[]): string {
  return blocks.map(plainOf).join('\n\n');
}

function plainOf(block: Block): string {
  const text = shown(block.text);
  return block.block === 'quote' ? `“${text}”\n${shown(block.from)}` : text;
}

/** Longer texts are cut: a hover is no place for a whole page. */
const longestText = 2000;

/** One line, cut to a length, with the characters that would not be seen (controls, direction marks) spelled out. */
function shown(text: string): string {
  const cut = text.length > longestText ? `${text.slice(0, longestText)}…` : text;
  const oneLine = cut.replace(/\s/g, ' ').trim();
  return oneLine.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, codePoint);
}

function codePoint(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** Backslashes before whatever Markdown could take for markup, a link, an address or an entity. */
export function escapeMarkdown(text: string): string {
  return shown(text)
    .replace(/[\\`*_{}[\]<>#|~!$&@^]/g, '\\$&')
    .replace(/:(?=\/)/g, '\\:')
    .replace(/www\./gi, (www) => `${www.slice(0, 3)}\\.`)
    .replace(/^(\d{1,9})([.)])/, '$1\\$2')
    .replace(/^[-+=]/, '\\$&');
}
