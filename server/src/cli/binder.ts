import { join, resolve } from 'node:path';
import type { IsoDate } from '../base/brand.ts';
import { coverageOf } from '../check/coverage.ts';
import { Engine } from '../check/engine.ts';
import { filesAtRevision } from '../host/git.ts';
import { standingAt } from '../host/git-log.ts';
import { findLibraries } from '../host/library-search.ts';
import { outputFolder } from '../host/output-folder.ts';
import { recordOf } from '../library/loaded-file.ts';
import { printingOf } from '../print/amounts.ts';
import { binder, sheetsOfSections } from '../print/binder/binder.ts';
import type { BinderContent, BinderFinding, BinderOrigin } from '../print/binder/content.ts';
import { paperHtml } from '../print/paper.ts';
import { defaultPaper, paperSizes } from '../print/paper-size.ts';
import { wordsOf } from '../print/words/languages.ts';
import { Placer } from '../report/model.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { pdfPrinter } from './pdf-printer.ts';
import { libraryAt } from './route-library.ts';
import { version } from './version.ts';

/** `binder --day D --out DIR`: what a surveyor gets, ugly parts included. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const [day, target] = [given.values.get('day') as IsoDate | undefined, given.values.get('out')];
  if (day === undefined || target === undefined)
    return cannotFollow(io, 'name the day with --day and a folder with --out.');
  const path = given.operands[0] ?? given.values.get('library') ?? '.';
  const source = sourceOf(io, given, path, day);
  if (source === undefined) return exit.nothing;
  if ('why' in source) return cannotFollow(io, source.why);
  const folder = outputFolder(resolve(io.cwd, target));
  if ('why' in folder) return cannotFollow(io, folder.why);
  const [content, printing] = [contentOf(source), printingOf(source.engine.view(), wordsOf('en'))];
  const paper = binder(content, printing);
  const size = paperSizes[given.values.get('paper') ?? 'a4'] ?? defaultPaper;
  const name = `binder-${day}.html`;
  const written = folder.write(name, paperHtml(paper, size), (old) =>
    old.slice(0, 2000).includes('<meta name="page-kind" content="binder">'),
  );
  if ('why' in written) return cannotFollow(io, written.why);
  io.stdout.write(`${name}\n`);
  pdfPrinter(io, given)?.(join(folder.root, name), (texts) => {
    const sheets = sheetsOfSections(paper, texts);
    return sheets === undefined ? undefined : paperHtml(binder(content, printing, sheets), size);
  });
  return exit.ok;
}

interface Source {
  readonly engine: Engine;
  readonly origin: BinderOrigin;
}

/** The files as they are, or as they were recorded. */
function sourceOf(
  io: CommandIo,
  given: Arguments,
  path: string,
  day: IsoDate,
): Source | { readonly why: string } | undefined {
  const from = given.values.get('from');
  const root = findLibraries([path], io.cwd).libraries[0]?.root;
  if (from !== undefined && root !== undefined) return recorded(root, from, day);
  const open = libraryAt(path, io, { ...given, values: new Map([...given.values, ['today', day]]) });
  if (open === undefined) return undefined;
  const standing = root === undefined ? undefined : standingAt(root);
  const origin: BinderOrigin = {
    day,
    version,
    commit: standing?.commit,
    state: standing?.changed ?? 'not-recorded',
    files: open.engine.library.files().length,
  };
  return { engine: open.engine, origin };
}

function recorded(root: string, revision: string, day: IsoDate): Source | { readonly why: string } {
  const state = filesAtRevision(root, revision);
  if ('why' in state) return state;
  const engine = new Engine({ rules: allRules, today: day });
  for (const file of state.files) engine.put(recordOf(file));
  return { engine, origin: { day, version, commit: state.commit, state: 'as-recorded', files: state.files.length } };
}

function contentOf({ engine, origin }: Source): BinderContent {
  const placer = new Placer((file) => engine.library.record(file)?.text ?? '');
  const findings: BinderFinding[] = [];
  const heldBack = new Map<string, number>();
  engine.judgeAll(engine.library.files());
  for (const file of engine.library.files()) {
    for (const finding of engine.findings(file)) {
      const { rule, severity, entity, message, settledBy } = finding;
      const { start } = placer.place(finding.file, finding.span);
      findings.push({ rule, severity, entity, message, settledBy, place: `${file}:${start.line + 1}` });
    }
    for (const { rule } of engine.heldBack(file)) heldBack.set(rule, (heldBack.get(rule) ?? 0) + 1);
  }
  return {
    origin,
    findings,
    heldBack: new Map([...heldBack].sort(([a], [b]) => (a < b ? -1 : 1))),
    coverage: coverageOf(engine.view()),
  };
}
