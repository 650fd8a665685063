import type { FileId, IsoDate } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import type { WrittenBaseline } from '../check/baseline.ts';
import type { Engine } from '../check/engine.ts';
import { baselineIn } from '../host/baseline-file.ts';
import type { OpenedFile } from '../host/library-files.ts';
import type { FoundLibrary, LibrarySearch, SearchFailure } from '../host/library-search.ts';
import { findLibraries } from '../host/library-search.ts';
import { stopwatch } from '../host/stopwatch.ts';
import { type ListedFile, libraryFileName } from '../library/listed-files.ts';
import type { Cause, CheckReport, LibraryReport } from '../report/model.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { unreadBaseline } from './baseline.ts';
import { cannotFollow } from './cannot-follow.ts';
import { changedFiles } from './check-changed.ts';
import { formatIn, outputFault, rendered, writeOutputs } from './check-outputs.ts';
import { judgedOnce, placeOfResults } from './check-results.ts';
import { typedSearch } from './check-typed.ts';
import { type Checked, watchCheck } from './check-watch.ts';
import { exitCodeOf, tooManyWarnings } from './exit-code.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import type { JudgedLibrary } from './judged-library.ts';
import { judgedNow } from './judged-library.ts';
import { labelOf, noticesOf, reportOn, someOf } from './library-report.ts';
import type { BegunLibrary, TypedFile } from './open-library.ts';
import { beginLibrary, finishLibrary, openedBy } from './open-library.ts';
import { progressOn, silent } from './progress.ts';
import { placeOfTexts } from './take-documents.ts';
import { type Helpers, helpersFor } from './together/helpers.ts';

export function run(io: CommandIo, given: Arguments): ExitCode | Promise<ExitCode> {
  const fault = outputFault(given) ?? combinationFault(given);
  if (fault !== undefined) return cannotFollow(io, fault);
  if (given.switches.has('watch')) return watchCheck(io, given, (quietly) => checked(io, given, quietly));
  return checkOnce(io, given);
}

async function checkOnce(io: CommandIo, given: Arguments): Promise<ExitCode> {
  const { report, code, roots } = await checked(io, given, 'aloud');
  if (roots.length > 0) io.stdout.write(rendered(formatIn(given), report, io, given));
  const tooMany = tooManyWarnings(report, given);
  if (tooMany !== undefined) io.stderr.write(`traywright: ${tooMany}\n`);
  return writeOutputs(report, io, given) === 'written' ? code : exit.usage;
}

function combinationFault({ switches, values, operands }: Arguments): string | undefined {
  if (values.has('stdin') && switches.has('watch')) return '--watch reads files, not standard input.';
  if (switches.has('watch') && (values.get('format') ?? 'text') !== 'text')
    return '--watch prints text only; other forms go into files with --output.';
  if (values.has('stdin') && operands.length > 0) return '--stdin names its file itself: no PATH beside it.';
  if (values.has('stdin') && values.has('changed-since')) return '--stdin and --changed-since do not go together.';
  return undefined;
}

type Search = LibrarySearch & { readonly typed?: TypedFile };

async function checked(io: CommandIo, given: Arguments, speaks: 'aloud' | 'quietly'): Promise<Checked> {
  const search = searchFor(io, given);
  for (const failure of search.failures) io.stderr.write(`traywright: ${failureWords(failure)}\n`);
  const judged: Judged[] = [];
  // One after the other: each may have as many threads as there are processors.
  for (const found of search.libraries) judged.push(await judge(found, io, { given, speaks, typed: search.typed }));
  const report: CheckReport = { libraries: judged.map((one) => one.report), notices: noticesFor(search, io) };
  const settings = judged.every((one) => one.settings === 'read') ? 'read' : 'unread';
  return {
    report,
    code: exitCodeOf(report, search.failures, settings, given),
    roots: search.libraries.map(({ root }) => root),
  };
}

function searchFor(io: CommandIo, given: Arguments): Search {
  const typed = given.values.get('stdin');
  if (typed !== undefined) return typedSearch(typed, io.cwd);
  return findLibraries(given.operands.length === 0 ? ['.'] : given.operands, io.cwd);
}

interface Judged {
  readonly report: LibraryReport;
  readonly settings: 'read' | 'unread';
}

interface Asked {
  readonly given: Arguments;
  readonly speaks: 'aloud' | 'quietly';
  readonly typed: TypedFile | undefined;
}

async function judge(found: FoundLibrary, io: CommandIo, { given, speaks, typed }: Asked): Promise<Judged> {
  const voice = given.switches.has('quiet') || speaks === 'quietly' ? 'quiet' : 'speaks';
  const label = labelOf(found.root, io.cwd);
  const passed = stopwatch();
  const begun = beginLibrary(found, {
    rules: allRules,
    asked: given.values.get('today') as IsoDate | undefined,
    clock: io.today(),
    pdfReader: io.pdfReader,
    pdfTexts: placeOfTexts(io, given),
    progress: progressOn(io, 'Reading', voice),
    ...(typed !== undefined && { typed }),
  });
  const sight = judgedLibrary(begun, io, given);
  const read = passed();
  const checking = progressOn(io, 'Checking', voice);
  for (const why of (await sight.helpers?.judge(begun.engine, checking)) ?? [])
    io.stderr.write(helperWords(label, why));
  const old = baselineOf(found, io);
  const part = partOf(found, sight, io, given);
  const report = reportOn(found, sight.judged, {
    label,
    progress: sight.helpers === undefined ? checking : silent,
    baseline: old.baseline,
    among: part.files,
  });
  if (given.switches.has('timing')) io.stderr.write(timingWords(label, read, passed()));
  const isFollowed = old.settings === 'read' && part.settings === 'read' && sight.judged.about.settings === 'read';
  return { report, settings: isFollowed ? 'read' : 'unread' };
}

/** `engine`: only where the library was read now. */
interface Sight {
  readonly judged: JudgedLibrary;
  readonly engine?: Engine;
  readonly helpers?: Helpers | undefined;
}

/** What is known of the library from before where nothing differs, else what is found now. What depends on more than its files is found now. */
function judgedLibrary(begun: BegunLibrary, io: CommandIo, given: Arguments): Sight {
  const needsEngine = given.values.has('changed-since') || given.values.has('stdin');
  const place = needsEngine ? undefined : placeOfResults(io, given, begun);
  if (place !== undefined)
    return judgedOnce(begun, place, () => helpersFor(io, given, begun, 'findings and what they rest on'));
  const helpers = needsEngine ? undefined : helpersFor(io, given, begun, 'findings');
  const open = finishLibrary(begun, openingFor(begun, helpers));
  return { judged: judgedNow(open, helpers), engine: open.engine, helpers };
}

/** With helpers all files are opened first, so that they can begin. */
function openingFor(begun: BegunLibrary, helpers: Helpers | undefined): (listed: ListedFile) => OpenedFile {
  if (helpers === undefined) return (listed) => openedBy(begun, listed);
  const opened = new Map(begun.files.map((listed) => [listed, helpers.take(openedBy(begun, listed))]));
  return (listed) => opened.get(listed) ?? openedBy(begun, listed);
}

function helperWords(label: string, why: string): string {
  return `traywright: ${printable(label)}: a thread that checks beside the first ended early (${printable(why)}); the first did its work as well.\n`;
}

function timingWords(label: string, read: number, all: number): string {
  return `traywright: ${printable(label)}: read in ${Math.round(read)} ms, checked in ${Math.round(all - read)} ms\n`;
}

/** The files that `--changed-since` leaves; all of them, with a word about it, when the recorded state can't be read. */
function partOf(
  found: FoundLibrary,
  { engine }: Sight,
  io: CommandIo,
  given: Arguments,
): { files?: ReadonlyMap<FileId, Cause>; settings: Judged['settings'] } {
  const revision = given.values.get('changed-since');
  if (revision === undefined || engine === undefined) return { settings: 'read' };
  const changed = changedFiles(found, engine, revision);
  if ('files' in changed) return { files: changed.files, settings: 'read' };
  io.stderr.write(`traywright: ${printable(changed.why)}\n`);
  return { settings: 'unread' };
}

/** One that can't be read is said, and holds nothing back. */
function baselineOf(found: FoundLibrary, io: CommandIo): { baseline?: WrittenBaseline; settings: Judged['settings'] } {
  const old = baselineIn(found.root);
  if (old.found === 'none') return { settings: 'read' };
  if (old.found === 'baseline') return { baseline: old, settings: 'read' };
  io.stderr.write(`traywright: ${unreadBaseline(labelOf(found.root, io.cwd), old.why)}\n`);
  return { settings: 'unread' };
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
