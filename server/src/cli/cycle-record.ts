import { basename, resolve } from 'node:path';
import { readBytes } from '../host/read-text.ts';
import type { LibraryView } from '../library/view.ts';
import { printingOf } from '../print/amounts.ts';
import { readLog } from '../print/cycle-record/read-log.ts';
import type { RecordSubject } from '../print/cycle-record/report.ts';
import { cycleRecordSheet } from '../print/cycle-record/report.ts';
import { nameOf, screenName } from '../print/names.ts';
import { wordsOf } from '../print/words/languages.ts';
import { deriveSet } from '../route/route.ts';
import { fitOf } from '../route/sterilizing.ts';
import { cycleFields, demandsOn } from '../rules/support/set-demands.ts';
import { decodeBytes } from '../syntax/decode.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { unknownSet } from './cards.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import type { OpenLibrary } from './open-library.ts';
import { writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

const logLimit = 32_000_000;

/** `cycle-record FILE --cycle ID`: a logged curve beside what the cycle and the pages ask. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const [file, more] = given.operands;
  const id = given.values.get('cycle');
  if (file === undefined || more !== undefined || id === undefined)
    return cannotFollow(io, 'name one log file, and its cycle with --cycle.');
  const [uncertaintyK, gap] = [
    Number(given.values.get('uncertainty') ?? 0),
    Number(given.values.get('gap') ?? Number.NaN),
  ];
  if (!(uncertaintyK >= 0 && uncertaintyK <= 20))
    return cannotFollow(io, '--uncertainty needs kelvin from 0 to 20, such as 0.5.');
  if (given.values.has('gap') && !(gap > 0)) return cannotFollow(io, '--gap needs seconds, such as 30.');
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const subject = subjectOf(open, id, given.values.get('set'));
  if ('why' in subject) return cannotFollow(io, subject.why);
  const read = readBytes(resolve(io.cwd, file), logLimit);
  const decoded = 'bytes' in read ? decodeBytes(read.bytes) : undefined;
  if (decoded === undefined || !('text' in decoded)) return cannotFollow(io, `"${file}" cannot be read as text.`);
  const log = readLog(decoded.text);
  if ('why' in log) return cannotFollow(io, `"${file}": ${log.why}`);
  const settings = { file: basename(file), uncertaintyK, ...(gap > 0 && { longestStepS: gap }) };
  writePaper(cycleRecordSheet(log, subject, settings, printingOf(open.engine.view(), wordsOf('en'))), io, given);
  return exit.ok;
}

/** The cycle as the files describe it, with what the pages of a set ask of it. */
function subjectOf(open: OpenLibrary, id: string, setId: string | undefined): RecordSubject | { readonly why: string } {
  const view = open.engine.view();
  const found = view.sterilizerCycle(id);
  if (found === undefined) return washerSubject(view, id);
  const { machine, cycle } = found;
  if (cycle.temp === undefined) return { why: `the file of cycle "${id}" gives no temperature.` };
  const set = setId === undefined ? undefined : view.get('set', setId);
  if (setId !== undefined && set === undefined) return { why: unknownSet(open, setId) };
  return {
    machine,
    kind: 'sterilizer',
    name: [nameOf(machine, ''), ', ', screenName(cycle, id)],
    temp: cycle.temp,
    ...(cycle.exposure && { exposure: cycle.exposure }),
    ...(cycle.dry && { dry: cycle.dry }),
    ...(cycle.band && { band: cycle.band }),
    demands: set === undefined ? {} : demandsOf(view, set.id?.text ?? '', id),
    ...(set && { set }),
  };
}

/** What every page of the set, packed as its file says, asks of this cycle. */
function demandsOf(view: LibraryView, setId: string, cycle: string): RecordSubject['demands'] {
  const set = view.get('set', setId);
  if (set === undefined) return {};
  const { subject, sterilizing, department } = deriveSet(view, set);
  const cell = sterilizing.table.asFiled.find(({ cycle: at }) => department.sterilizing[at]?.id === cycle);
  const fit = cell === undefined ? undefined : fitOf(subject, sterilizing, cell, department);
  return fit === undefined ? {} : Object.fromEntries(cycleFields.map((field) => [field, demandsOn(field, fit, view)]));
}

/** The hot hold of a washer cycle. */
function washerSubject(view: LibraryView, id: string): RecordSubject | { readonly why: string } {
  const found = view.washerCycle(id);
  const hold = found?.cycle.phases?.items.find(({ phase }) => phase?.text === 'thermal');
  if (found === undefined) return { why: `no machine has a cycle "${id}".` };
  if (hold?.temp === undefined) return { why: `cycle "${id}" has no hot hold with a temperature.` };
  return {
    machine: found.machine,
    kind: 'washer',
    name: [nameOf(found.machine, ''), ', ', screenName(found.cycle, id)],
    temp: hold.temp,
    ...(hold.time && { exposure: hold.time }),
    demands: {},
  };
}
