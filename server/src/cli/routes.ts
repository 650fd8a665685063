import { questionsPage, routesPage } from '../report/routes-page.ts';
import { openLetters } from '../route/questions.ts';
import { routeOfSet } from '../route/route.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { libraryAt, writeAnswer } from './route-library.ts';

/** `routes [LIBRARY]`: every set with its status. */
export function runRoutes(io: CommandIo, given: Arguments): ExitCode {
  const open = libraryAt(given.operands[0] ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const view = open.engine.view();
  const routes = [...view.ids('set')].sort().flatMap((id) => view.ask(routeOfSet, id) ?? []);
  const rows = routes.map(({ id, status, chosen, packagingChange, machines }) => ({
    id,
    status,
    packaging: chosen?.packaging ?? null,
    cycle: chosen?.cycle ?? null,
    insteadOf: packagingChange?.from ?? null,
    machines,
  }));
  writeAnswer({ blocks: routesPage(routes), format: 'traywright-routes', content: { sets: rows } }, open, io, given);
  return routes.some(({ status }) => status === 'none') ? exit.findings : exit.ok;
}

/** `questions [LIBRARY]`: one letter a maker with the questions that would free sets. */
export function runQuestions(io: CommandIo, given: Arguments): ExitCode {
  const open = libraryAt(given.operands[0] ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const letters = open.engine.view().ask(openLetters, '');
  writeAnswer(
    { blocks: questionsPage(letters), format: 'traywright-questions', content: { letters } },
    open,
    io,
    given,
  );
  return exit.ok;
}
