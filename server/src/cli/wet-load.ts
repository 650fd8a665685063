import { changesOf } from '../host/git-log.ts';
import { findLibraries } from '../host/library-search.ts';
import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { rootOf } from '../model/node.ts';
import { printingOf } from '../print/amounts.ts';
import { wetLoadSheet } from '../print/answer/wet-load.ts';
import { wordsOf } from '../print/words/languages.ts';
import { membersOf } from '../rules/support/applies.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { unknownSet } from './cards.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { openFindings } from './open-findings.ts';
import { writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

const changesShown = 12;

/** `wet-load SET`: where to look for the cause. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const [id, more] = given.operands;
  if (id === undefined || more !== undefined) return cannotFollow(io, 'name one set.');
  const path = given.values.get('library') ?? '.';
  const open = libraryAt(path, io, given);
  if (open === undefined) return exit.nothing;
  const view = open.engine.view();
  const set = view.get('set', id);
  if (set === undefined) return cannotFollow(io, unknownSet(open, id));
  const root = findLibraries([path], io.cwd).libraries[0]?.root ?? io.cwd;
  const changes = changesOf(root, pathsAround(set, view), changesShown);
  const history = 'why' in changes ? { changes: [], withoutHistory: changes.why } : { changes };
  const printing = printingOf(view, wordsOf('en'));
  writePaper(wetLoadSheet({ set, findings: openFindings(open), ...history }, printing), io, given);
  return exit.ok;
}

/** The files in which a cause may have changed: the set, its packaging, its machines, its members. */
function pathsAround(set: EntityOf['set'], view: LibraryView): readonly string[] {
  const entities = [
    set,
    view.get('packaging', set.packaging?.text ?? ''),
    view.sterilizerCycle(set.cycle?.text ?? '')?.machine,
    view.washerCycle(set.washer_cycle?.text ?? '')?.machine,
    ...membersOf(set, view),
  ];
  return entities.flatMap((entity) => (entity === undefined ? [] : [rootOf(entity.at).file]));
}
