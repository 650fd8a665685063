/** What may stand beside the word that the page is silent: how that was found, and what is done about it. */
export const besideSilence: ReadonlySet<string> = new Set([
  'id',
  'use',
  'checked',
  'note',
  'reason',
  'ask',
  'src',
  'as_written',
  'when',
  'strength',
]);
