/** Sheets that people have in their printers, with the usual type size (in points) of a card on each. */
export interface PaperSize {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
  readonly typePt: number;
}

export const defaultPaper: PaperSize = { name: 'A4', widthMm: 210, heightMm: 297, marginMm: 11, typePt: 11.5 };

export const paperSizes: Readonly<Record<string, PaperSize>> = {
  a4: defaultPaper,
  letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4, marginMm: 11, typePt: 11.5 },
  a5: { name: 'A5', widthMm: 148, heightMm: 210, marginMm: 7, typePt: 9 },
};
