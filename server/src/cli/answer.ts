import { printingOf } from '../print/amounts.ts';
import { deviceAnswer } from '../print/answer/device-answer.ts';
import { lookUp } from '../print/answer/look-up.ts';
import { notFound } from '../print/answer/not-found.ts';
import { wordsOf } from '../print/words/words.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { openFindings } from './open-findings.ts';
import { printedOn, writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

/** `answer NUMBER...`: everything a surveyor asks about one device. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  if (given.operands.length === 0) {
    io.stderr.write('traywright: name a catalogue number, a device, or scan its label.\n');
    return exit.usage;
  }
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const day = printedOn(io, given);
  const view = open.engine.view();
  const printing = printingOf(view, wordsOf('en'));
  const findings = openFindings(open);
  let code: ExitCode = exit.ok;
  for (const asked of given.operands) {
    const looked = lookUp(view, asked, Number(day.slice(0, 4)));
    if (looked.devices.length === 0) {
      writePaper(notFound(looked, view), io, given);
      code = exit.findings;
    }
    for (const device of looked.devices) writePaper(deviceAnswer(device, looked, printing, day, findings), io, given);
  }
  return code;
}
