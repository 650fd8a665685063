/** Methods whose word in a file is a code that nobody says aloud. */
const spoken: ReadonlyMap<string, string> = new Map([
  ['vh2o2', 'vaporised hydrogen peroxide'],
  ['eo', 'ethylene oxide'],
  ['ltsf', 'low-temperature steam with formaldehyde'],
  ['steam-sfpp', 'steam with flushes and pulses'],
]);

/** What people say for such a code; undefined for every other word. */
export function spokenMethod(word: string): string | undefined {
  return spoken.get(word);
}

/** `vaporised hydrogen peroxide (vh2o2)`; every other word is as it stands in the file. */
export function methodWords(word: string): string {
  const name = spokenMethod(word);
  return name === undefined ? word : `${name} (${word})`;
}
