/** Titles of columns in tables of instructions, in English, German and French. */
const title =
  /^(?:(?:process |cleaning )?(?:step|phase|stage)s?|(?:sterili[sz]ation |water )?temperature|(?:exposure |dry(?:ing)? |holding )?time|duration|drying|exposure|agents?|detergent|chemistry|chemicals?|product|water(?: quality)?|concentration|cycle(?: type)?|type(?: of cycle)?|method|program(?:me)?|process|parameters?|pulses|remarks?|notes?|comments?|ph|a0|schritt|temperatur|zeit|dauer|mittel|chemie|wasser|wasserqualität|bemerkung(?:en)?|verfahren|trocknung|étape|température|temps|durée|produit|eau|remarques?)(?: ?\([^)]*\))?$/i;

const fewestWords = 3;

/** The head of a table and nothing else: titles apart from each other, or three and more words each of which is one. */
export function isHeadOfColumns(line: string): boolean {
  const cells = line.trim().split(/\s*\|\s*|\t|\s{3,}/);
  if (cells.length > 1) return cells.every((cell) => title.test(cell));
  const words = line.trim().split(' ');
  return words.length >= fewestWords && words.every((word) => title.test(word));
}
