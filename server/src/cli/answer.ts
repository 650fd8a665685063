import { printingOf } from '../print/amounts.ts';
import { deviceAnswer } from '../print/answer/device-answer.ts';
import { lookUp } from '../print/answer/look-up.ts';
import { notFound } from '../print/answer/not-found.ts';
import { papersTogether } from '../print/paper.ts';
import { wordsOf } from '../print/words/languages.ts';
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
  const all = given.operands.map((asked) => lookUp(view, asked, Number(day.slice(0, 4))));
  const papers = all.flatMap((looked) =>
    looked.devices.length === 0
      ? [notFound(looked, view)]
      : looked.devices.map((device) => deviceAnswer(device, looked, printing, view.today, findings)),
  );
  const together = papersTogether(papers);
  if (together !== undefined) writePaper(together, io, given);
  return all.some(({ devices }) => devices.length === 0) ? exit.findings : exit.ok;
}
