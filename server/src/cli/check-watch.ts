import { printable } from '../base/printable.ts';
import { fingerprintOf } from '../check/finding.ts';
import { stopwatch } from '../host/stopwatch.ts';
import { watchFolders } from '../host/watch-folder.ts';
import type { CheckReport, LibraryReport, PlacedFinding } from '../report/model.ts';
import { pathShown } from '../report/model.ts';
import { textReport } from '../report/text.ts';
import { counted } from '../report/words.ts';
import type { Arguments } from './arguments.ts';
import { writeOutputs } from './check-outputs.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

/** What one check came to. */
export interface Checked {
  readonly report: CheckReport;
  readonly code: ExitCode;
  /** The folders of the libraries that were found, absolute. */
  readonly roots: readonly string[];
}

/**
 * Checks, then checks again after each change on disk and tells what came and what is settled, until Ctrl-C. The exit code is that of the
 * last check.
 */
export async function watchCheck(
  io: CommandIo,
  given: Arguments,
  check: (speaks: 'aloud' | 'quietly') => Promise<Checked>,
): Promise<ExitCode> {
  let last = await check('aloud');
  if (last.roots.length === 0) return last.code;
  tellAll(last.report, io, given);
  writeOutputs(last.report, io, given);
  const checkAgain = async () => {
    const passed = stopwatch();
    const next = await check('quietly');
    tellChanges(last.report, next.report, passed(), io);
    writeOutputs(next.report, io, given);
    last = next;
  };
  let checking = Promise.resolve();
  // What changes during a check is looked at after it.
  const again = () => {
    checking = checking.then(checkAgain);
  };
  const ended = await watchFolders(last.roots, again, () => io.stdout.write('Waiting for changes; Ctrl-C ends.\n'));
  if (ended.why === undefined) return last.code;
  io.stderr.write(`traywright: ${ended.why}.\n`);
  return exit.usage;
}

function tellAll(report: CheckReport, io: CommandIo, given: Arguments): void {
  io.stdout.write(textReport(report, { palette: paletteFor(io, given), columns: 120, detail: 'brief' }));
}

/** What came, what is settled, and a line in any case, so that it is seen that the change was looked at. */
function tellChanges(before: CheckReport, after: CheckReport, milliseconds: number, io: CommandIo): void {
  const [old, now] = [linesOf(before), linesOf(after)];
  const came = [...now].filter(([key]) => !old.has(key));
  const went = [...old].filter(([key]) => !now.has(key));
  const files = after.libraries.reduce((sum, library) => sum + library.checked.length, 0);
  const stay = now.size - came.length;
  const lines = [
    ...came.map(([, line]) => `+ ${line}`),
    ...went.map(([, line]) => `- ${line}`),
    `Checked again in ${secondsWords(milliseconds)}: ${counted(files, 'file')}; ${counted(stay, 'finding')} ${stay === 1 ? 'stays' : 'stay'}, ${came.length} new, ${went.length} settled.`,
  ];
  io.stdout.write(`${lines.join('\n')}\n`);
}

function secondsWords(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(milliseconds < 10_000 ? 2 : 0)} s`;
}

/** By what a finding is, wherever it moved. */
function linesOf({ libraries }: CheckReport): ReadonlyMap<string, string> {
  return new Map(libraries.flatMap((library) => library.findings.map((placed) => lineOf(placed, library))));
}

function lineOf({ finding, at }: PlacedFinding, library: LibraryReport): readonly [string, string] {
  const key = `${library.label}\n${finding.file}\n${fingerprintOf(finding)}\n${finding.message}`;
  const place = `${printable(pathShown(library, at.file))}:${at.start.line + 1}`;
  return [key, `${place} ${finding.severity} ${finding.rule}: ${printable(finding.message)}`];
}
