import { printingOf } from '../print/amounts.ts';
import { isHeld, lookAtTray, receivingSheet } from '../print/answer/receive.ts';
import { wordsOf } from '../print/words/languages.ts';
import type { Arguments } from './arguments.ts';
import { isDate } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { unknownSet } from './cards.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

/** `receive SET... --needed-by TIME`: go or hold, tray by tray. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const neededBy = given.values.get('needed-by');
  if (given.operands.length === 0 || neededBy === undefined)
    return cannotFollow(io, 'name one set or more, and when they are needed: --needed-by 2025-03-04T07:30.');
  const wrong = [neededBy, given.values.get('received')].find((time) => time !== undefined && !isTime(time));
  if (wrong !== undefined) return cannotFollow(io, `"${wrong}" is no time such as 2025-03-04T07:30.`);
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const view = open.engine.view();
  const unknown = given.operands.find((id) => view.get('set', id) === undefined);
  if (unknown !== undefined) return cannotFollow(io, unknownSet(open, unknown));
  const sets = given.operands.flatMap((id) => view.get('set', id) ?? []);
  const written = sets.map((set) => set.received?.text).find((time) => time !== undefined);
  const received = given.values.get('received') ?? written ?? given.values.get('today') ?? io.today();
  const printing = printingOf(view, wordsOf('en'));
  const arrival = { received, neededBy };
  writePaper(receivingSheet(sets, arrival, printing), io, given);
  return sets.some((set) => isHeld(lookAtTray(set, arrival, printing))) ? exit.findings : exit.ok;
}

/** A day, or a day with a time to the minute. */
function isTime(text: string): boolean {
  const [day = '', time] = text.split('T');
  return isDate(day) && (time === undefined || /^([01]\d|2[0-3]):[0-5]\d$/.test(time));
}
