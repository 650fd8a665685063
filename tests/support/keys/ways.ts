import { plain } from '../../../server/src/print/piece.ts';
import { naiveOutcome } from '../naive-routes.ts';
import { type Asked, type Fault, isTable, tablesIn } from './asked.ts';

/* What a set may do, and in which order a device is cleaned. */

/** Trying this set in this cycle gives the answer, and the two others are wrong. */
export function mayIFault({ draft, view }: Asked): Fault {
  const [, id = '', cycle = ''] = /set\/(\S+) (\S+)$/.exec(draft.key) ?? [];
  const set = view.get('set', id);
  if (set === undefined) return 'no such set';
  const outcome = naiveOutcome(view, set, { packaging: set.packaging?.text ?? '', cycle });
  const expected = outcome === 'fails' ? 'No' : outcome === 'needs-answer' ? 'Ask first' : 'Yes';
  const said = [draft.right, ...draft.wrong].map((line) => plain(line).split(':')[0] ?? '');
  if (said[0] !== expected) return `"${said[0]}" where trying says "${expected}"`;
  return said.slice(1).includes(expected) ? 'a wrong answer is right' : undefined;
}

const stageWords: Readonly<Record<string, string>> = {
  manual: 'by hand',
  ultrasonic: 'ultrasonic bath',
  mechanical: 'washer',
  disinfection: 'disinfection',
};

/** Words that leave a choice, or ask only now and then. */
const loose = ['any_of', 'when', 'prefer', 'unordered', 'couples', 'ambiguous', 'ask', 'conflict'];

/** The stages as the page lists them: all of them, in that order, and none left to choice. */
export function sequenceFault({ draft, files }: Asked): Fault {
  const device = files.get(draft.key.replace(/^sequence /, ''));
  const cleaning = isTable(device) ? device.cleaning : undefined;
  if (!isTable(cleaning)) return 'the file lists no order';
  const steps = tablesIn(cleaning.all_of);
  if ([cleaning, ...steps].some((one) => loose.some((word) => word in one))) return 'the page leaves a choice';
  const order = steps.map(({ stage }) => stageWords[String(stage)]);
  const line = order.join(', then ');
  if (plain(draft.right) !== line) return `the file lists ${line}`;
  return draft.wrong.some((wrong) => plain(wrong) === line) ? 'a wrong order is right' : undefined;
}
