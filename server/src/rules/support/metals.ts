/*
 * Which words for materials mean which metal, as far as metals act on each other in one bath. Plating counts as the metal outside.
 * Data: an educator may read and lengthen it. Plastics, glass and coatings are no metals here.
 */
const metals: readonly { readonly metal: string; readonly words: readonly string[] }[] = [
  { metal: 'chrome plating', words: ['brass-chrome-plated', 'chrome-plated'] },
  { metal: 'gold plating', words: ['gold-plated'] },
  { metal: 'stainless steel', words: ['stainless', 'stainless-martensitic', 'stainless-austenitic'] },
  { metal: 'titanium', words: ['titanium'] },
  { metal: 'aluminium', words: ['aluminium', 'aluminium-anodised'] },
  { metal: 'brass', words: ['brass'] },
  { metal: 'copper', words: ['copper'] },
  { metal: 'silver', words: ['silver'] },
];

/** The metals among these materials, each once. */
export function metalsOf(materials: readonly string[]): readonly string[] {
  return metals.flatMap(({ metal, words }) => (materials.some((one) => words.includes(one)) ? [metal] : []));
}
