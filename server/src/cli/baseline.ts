import type { IsoDate } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import type { Baseline } from '../check/baseline.ts';
import { baselineFileName, baselineOf, shrunk, sizeOf } from '../check/baseline.ts';
import { baselineIn, writeBaseline } from '../host/baseline-file.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { counted } from '../report/words.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { labelOf } from './library-report.ts';
import { openFindings } from './open-findings.ts';
import { openLibrary } from './open-library.ts';
import { progressOn } from './progress.ts';
import { placeOfTexts } from './take-documents.ts';

/** `baseline [PATH]`: holds back what is found today, so that only new findings are shown; later only takes out what is settled. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const { libraries, failures } = findLibraries(given.operands.length === 0 ? ['.'] : given.operands, io.cwd);
  if (libraries.length === 0 || failures.length > 0) {
    io.stderr.write('traywright: there is no library here: a folder with a file "library.ifu.yaml".\n');
    return exit.nothing;
  }
  const codes = libraries.map((found) => renew(found, io, given));
  return codes.find((code) => code !== exit.ok) ?? exit.ok;
}

/** Always of the whole library: a part of it would take the rest out. */
function renew(found: FoundLibrary, io: CommandIo, given: Arguments): ExitCode {
  const label = labelOf(found.root, io.cwd);
  const old = baselineIn(found.root);
  if (old.found === 'unreadable') {
    io.stderr.write(`traywright: ${unreadBaseline(label, old.why)}\n`);
    return exit.usage;
  }
  const now = everythingIn(found, io, given);
  const before = old.found === 'none' ? undefined : old.baseline;
  const next = before === undefined || given.switches.has('grow') ? now : shrunk(before, now);
  const written = writeBaseline(found.root, next);
  if ('why' in written) {
    io.stderr.write(`traywright: ${printable(written.why)}\n`);
    return exit.usage;
  }
  io.stdout.write(`${changeWords(label, before, next, now)}\n`);
  return exit.ok;
}

function everythingIn(found: FoundLibrary, io: CommandIo, given: Arguments): Baseline {
  const asked = given.values.get('today') as IsoDate | undefined;
  const progress = progressOn(io, 'Reading', 'speaks');
  const open = openLibrary(found, {
    rules: allRules,
    asked,
    clock: io.today(),
    progress,
    pdfReader: io.pdfReader,
    pdfTexts: placeOfTexts(io, given),
  });
  const { engine, files } = open;
  return baselineOf(
    openFindings(open),
    files.flatMap(({ file }) => [...engine.heldBack(file), ...engine.waived(file)]),
  );
}

function changeWords(label: string, before: Baseline | undefined, next: Baseline, now: Baseline): string {
  const name = label === '.' ? '' : `${printable(label)}: `;
  const size = sizeOf(next);
  const holds = `the baseline holds ${counted(size, 'finding')}`;
  if (before === undefined) return `${name}${holds}, all that can be held back today. Prohibitions are always shown.`;
  const old = sizeOf(before);
  if (size < old) return `${name}${holds}; ${old - size} settled since the last time.`;
  if (size > old) return `${name}${holds}; ${size - old} more than before.`;
  const fresh = sizeOf(now) - size;
  const hint = fresh > 0 ? ` ${counted(fresh, 'newer finding')} stay shown; "--grow" would hold them back too.` : '';
  return `${name}${holds}, as before.${hint}`;
}

/** Why a baseline was not used. */
export function unreadBaseline(label: string, why: string): string {
  const path = label === '.' ? baselineFileName : `${label}/${baselineFileName}`;
  return `"${printable(path)}" cannot be used, so nothing is held back: ${why}. Put it right, or delete it and run "traywright baseline" again.`;
}
