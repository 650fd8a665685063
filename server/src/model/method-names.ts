/** What people call the methods of sterilization. */
const names: ReadonlyMap<string, string> = new Map([
  ['steam-prevac', 'pre-vacuum steam'],
  ['steam-gravity', 'gravity steam'],
  ['steam-sfpp', 'steam with flushes and pulses'],
  ['vh2o2', 'vaporised hydrogen peroxide'],
  ['eo', 'ethylene oxide'],
  ['dry-heat', 'dry heat'],
  ['ltsf', 'low-temperature steam with formaldehyde'],
  ['liquid-chemical', 'a liquid chemical'],
]);

/** Of these the word in a file is a code that nobody says aloud. */
const codes: ReadonlySet<string> = new Set(['vh2o2', 'eo', 'ltsf', 'steam-sfpp']);

/** `pre-vacuum steam`; undefined for a word that is no method. */
export function methodName(word: string): string | undefined {
  return names.get(word);
}

/** What people say for such a code; undefined for every other word. */
export function spokenMethod(word: string): string | undefined {
  return codes.has(word) ? names.get(word) : undefined;
}

/** `gravity steam or pre-vacuum steam`; a word that is no method stays as it is. */
export function methodWords(words: string): string {
  return words
    .split(' or ')
    .map((word) => names.get(word) ?? word)
    .join(' or ');
}
