import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import { printingOf } from '../print/amounts.ts';
import { lookUp } from '../print/answer/look-up.ts';
import { notFound } from '../print/answer/not-found.ts';
import { urgentAnswer } from '../print/answer/urgent.ts';
import { wordsOf } from '../print/words/languages.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { printedOn, writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

/** `urgent ID`: may this be processed for immediate use, and what does it take? */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const [asked, more] = given.operands;
  if (asked === undefined || more !== undefined) {
    io.stderr.write('traywright: name one device, set or catalogue number, or scan a label.\n');
    return exit.usage;
  }
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const view = open.engine.view();
  const printing = printingOf(view, wordsOf('en'));
  const set = view.get('set', asked);
  if (set !== undefined) {
    writePaper(urgentAnswer({ set }, printing), io, given);
    return exit.ok;
  }
  const day = printedOn(io, given);
  const looked = lookUp(view, asked, Number(day.slice(0, 4)));
  for (const device of looked.devices) writePaper(urgentAnswer({ device }, printing), io, given);
  if (looked.devices.length > 0) return exit.ok;
  writePaper(notFound(looked, view), io, given);
  const near = nearest(asked, [...view.ids('set')]);
  if (near !== undefined) io.stderr.write(`traywright: there is a set "${printable(near)}".\n`);
  return exit.findings;
}
