import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import type { LibraryView } from '../library/view.ts';
import { routePage } from '../report/route-page.ts';
import type { RouteExplanation } from '../route/explanation.ts';
import { explanationOfDevice, explanationOfSet } from '../route/explanation.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { libraryAt, writeAnswer } from './route-library.ts';

/** `route SET...`: all about the route of sets, or of devices judged alone. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  if (given.operands.length === 0) {
    io.stderr.write('traywright: name a set (or a device); "traywright routes" lists the sets.\n');
    return exit.usage;
  }
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const view = open.engine.view();
  const answers: RouteExplanation[] = [];
  for (const id of given.operands) {
    const answer = view.ask(explanationOfSet, id) ?? view.ask(explanationOfDevice, id);
    if (answer === undefined) return unknown(io, view, id);
    answers.push(answer);
  }
  writeAnswer(
    { blocks: answers.flatMap(routePage), format: 'traywright-route', content: { answers } },
    open,
    io,
    given,
  );
  return answers.some(({ route }) => route.status === 'none') ? exit.findings : exit.ok;
}

function unknown(io: CommandIo, view: LibraryView, id: string): ExitCode {
  const near = nearest(id, [...view.ids('set'), ...view.ids('device')]);
  const hint = near === undefined ? '"traywright routes" lists the sets.' : `Did you mean "${printable(near)}"?`;
  io.stderr.write(`traywright: there is no set and no device "${printable(id)}" in this library. ${hint}\n`);
  return exit.usage;
}
