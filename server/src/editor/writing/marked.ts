import type { Hole, Piece } from './offer.ts';

/**
 * Holes written into a text with signs that no rule file holds, so that edits can be made of it first. Each says which field it stands in and
 * what value stands behind it, so that nobody has to read them out of the text again. Pieces have plain line ends.
 */
const open = '\u0001';
const close = '\u0002';
const part = '\u0003';

function hole(words: readonly string[], field: string, value: string): string {
  return `${open}${[words.join('|'), field, value].join(part)}${close}`;
}

export const marked = {
  /** A place that nothing decides: a word of the field is to be chosen. */
  hole: (field: string): string => hole([], field, ''),
  /** One of a few words, the first to begin with; `value` is what it bounds. */
  choice: (words: readonly string[], field: string, value = ''): string => hole(words, field, value),
  /** As people read it: of each choice the first word, or the one that somebody chose. */
  plain: (text: string, chosen: readonly string[] = []): string =>
    partsOf(text)
      .map((piece) => (typeof piece === 'string' ? piece : wordIn(piece, chosen)))
      .join(''),
  pieces: (text: string): readonly Piece[] => partsOf(text.replaceAll('\r\n', '\n')),
};

/** Of the holes in several texts each gets its number, in their order: it keeps it wherever the text is put. */
export function numbered(texts: readonly string[]): readonly string[] {
  let count = 0;
  return texts.map((text) => text.replaceAll(close, () => `${part}${count++}${close}`));
}

/** What stands in a hole: the word that somebody chose, else the first. */
export function wordIn({ at, choices }: Hole, chosen: readonly string[]): string {
  const word = at === undefined ? undefined : chosen[at];
  return word === undefined || word === '' ? (choices?.[0] ?? '') : word;
}

function partsOf(text: string): readonly Piece[] {
  const pieces: Piece[] = [];
  for (const [index, piece] of text.split(open).entries()) {
    const end = index === 0 ? -1 : piece.indexOf(close);
    if (end >= 0) pieces.push(holeFrom(piece.slice(0, end)));
    pieces.push(piece.slice(end + 1));
  }
  return pieces.filter((piece) => piece !== '');
}

function holeFrom(text: string): Hole {
  const [words = '', field = '', value = '', at] = text.split(part);
  return {
    hole: 'words',
    ...(words !== '' && { choices: words.split('|') }),
    field,
    value,
    ...(at !== undefined && { at: Number(at) }),
  };
}
