import type { IsoDate } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import type { Baseline } from '../check/baseline.ts';
import { baselineIn } from '../host/baseline-file.ts';
import type { FoundLibrary, LibrarySearch, SearchFailure } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { libraryFileName } from '../library/listed-files.ts';
import { jsonReport } from '../report/json.ts';
import type { CheckReport, LibraryReport } from '../report/model.ts';
import { textReport } from '../report/text.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { unreadBaseline } from './baseline.ts';
import { paletteFor } from './colours.ts';
import { exitCodeOf } from './exit-code.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { labelOf, noticesOf, reportOn, someOf } from './library-report.ts';
import { openLibrary } from './open-library.ts';
import { progressOn } from './progress.ts';

export function run(io: CommandIo, given: Arguments): ExitCode {
  const search = findLibraries(given.operands.length === 0 ? ['.'] : given.operands, io.cwd);
  for (const failure of search.failures) io.stderr.write(`traywright: ${failureWords(failure)}\n`);
  const judged = search.libraries.map((found) => judge(found, io, given));
  const report: CheckReport = { libraries: judged.map((one) => one.report), notices: noticesFor(search, io) };
  if (judged.length > 0) io.stdout.write(rendered(report, io, given));
  const settings = judged.every((one) => one.settings === 'read') ? 'read' : 'unread';
  return exitCodeOf(report, search.failures, settings, given.values.get('fail-on') ?? 'error');
}

interface Judged {
  readonly report: LibraryReport;
  readonly settings: 'read' | 'unread';
}

function judge(found: FoundLibrary, io: CommandIo, given: Arguments): Judged {
  const speaks = given.switches.has('quiet') ? 'quiet' : 'speaks';
  const asked = given.values.get('today') as IsoDate | undefined;
  const open = openLibrary(found, {
    rules: allRules,
    asked,
    clock: io.today(),
    pdfReader: io.pdfReader,
    progress: progressOn(io, 'Reading', speaks),
  });
  const old = baselineOf(found, io);
  const progress = progressOn(io, 'Checking', speaks);
  const report = reportOn(found, open, labelOf(found.root, io.cwd), progress, old.baseline);
  const settings = open.files.find(({ path }) => path === libraryFileName);
  const isRead = settings !== undefined && open.engine.library.record(settings.file)?.entity !== undefined;
  return { report, settings: isRead ? old.settings : 'unread' };
}

/** One that can't be read is said, and holds nothing back. */
function baselineOf(found: FoundLibrary, io: CommandIo): { baseline?: Baseline; settings: Judged['settings'] } {
  const old = baselineIn(found.root);
  if (old.found === 'none') return { settings: 'read' };
  if (old.found === 'baseline') return { baseline: old.baseline, settings: 'read' };
  io.stderr.write(`traywright: ${unreadBaseline(labelOf(found.root, io.cwd), old.why)}\n`);
  return { settings: 'unread' };
}

function rendered(report: CheckReport, io: CommandIo, given: Arguments): string {
  if (given.values.get('format') === 'json') return jsonReport(report);
  const columns = Math.max(40, Math.min(io.stdout.columns ?? 120, 160));
  return textReport(report, {
    palette: paletteFor(io, given),
    columns,
    detail: given.switches.has('quiet') ? 'brief' : 'full',
  });
}

function noticesFor(search: LibrarySearch, io: CommandIo): readonly string[] {
  const notices = search.libraries.flatMap((found) => noticesOf(found, labelOf(found.root, io.cwd)));
  if (search.outside.length === 0) return notices;
  const paths = search.outside.map((path) => labelOf(path, io.cwd));
  return [...notices, `not checked, because no library holds them: ${someOf(paths, 'file')}.`];
}

function failureWords({ path, reason }: SearchFailure): string {
  const name = `"${printable(path)}"`;
  switch (reason) {
    case 'missing':
      return `there is no file or folder ${name}.`;
    case 'unreadable':
      return `${name} cannot be opened. Look whether you may read it.`;
    case 'not-a-rule-file':
      return `${name} is not a rule file: their names end in ".ifu.yaml".`;
    case 'no-library':
      return `nothing to check: neither ${name} nor a folder around it holds a library. A library is a folder with a file "${libraryFileName}" that says "kind: library" and an id.`;
  }
}
