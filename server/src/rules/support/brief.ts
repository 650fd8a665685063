import type { Brief } from '../../library/view.ts';

/** An answer that is a list of ids or other words and nothing else. */
export const listOfIds: Brief<readonly string[]> = {
  inWords: (ids) => JSON.stringify(ids),
  fromWords: (words) => JSON.parse(words) as readonly string[],
};

export const yesOrNo: Brief<boolean> = {
  inWords: (is) => (is ? 'yes' : 'no'),
  fromWords: (words) => words === 'yes',
};
