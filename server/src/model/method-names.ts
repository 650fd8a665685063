/** Methods whose word in a file is a code that nobody says aloud. */
const spoken: ReadonlyMap<string, string> = new Map([
  ['vh2o2', 'vaporised hydrogen peroxide'],
  ['eo', 'ethylene oxide'],
  ['ltsf', 'low-temperature steam with formaldehyde'],
  ['steam-sfpp', 'steam with flushes and pulses'],
]);

/** `vaporised hydrogen peroxide (vh2o2)`; every other word is as it stands in the file. */
export function methodWords(word: string): string {
  const name = spoken.get(word);
  return name === undefined ? word : `${name} (${word})`;
}
