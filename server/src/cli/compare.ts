import { basename, dirname, resolve } from 'node:path';
import type { FileId, IsoDate } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import { dayOf } from '../check/day.ts';
import { writeNew } from '../host/new-file.ts';
import type { FileRecord } from '../library/file-record.ts';
import { LibraryView, QueryAnswers } from '../library/view.ts';
import { textOfBlocks } from '../report/blocks.ts';
import { compareHtml } from '../report/compare-html.ts';
import { compareJson } from '../report/compare-json.ts';
import { compareMarkdown } from '../report/compare-markdown.ts';
import { comparePage } from '../report/compare-page.ts';
import type { CompareHead } from '../report/compare-words.ts';
import { Placer } from '../report/model.ts';
import { changeClasses } from '../revision/change.ts';
import { type RevisionReview, reviewOf } from '../revision/review.ts';
import { comparable } from '../revision/sides.ts';
import { needsDecision } from '../revision/sign-off.ts';
import { signOffDrafts } from '../revision/write-sign-off.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { paletteFor } from './colours.ts';
import { type Sides, sidesOf } from './compare-sides.ts';
import { runSwap } from './compare-swap.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

/** What makes the exit code 1, besides the names of classes. */
const policies = ['undecided', 'route-breaks', 'lost', 'any', 'never'] as const;

/** Every word that `--fail-on` takes. */
export const failOnWords: readonly string[] = [...policies, ...changeClasses];

/** `compare OLD NEW`: two states by meaning, with what each change does here. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const failOn = (given.values.get('fail-on') ?? 'undecided').split(',').map((word) => word.trim());
  const unknown = failOn.find((word) => !failOnWords.includes(word));
  if (unknown !== undefined)
    return cannotFollow(io, `--fail-on can't be "${unknown}". It is one or more of: ${failOnWords.join(', ')}.`);
  const asked = given.values.get('today') as IsoDate | undefined;
  if (given.values.has('swap')) return runSwap(io, given, failOn.includes('never') ? 'never' : 'on-no');
  const sides = sidesOf(given, io.cwd, asked ?? io.today());
  if ('why' in sides) return cannotFollow(io, sides.why);
  const today = asked ?? dayIn(sides, io.today());
  const { before, after, notices } = comparable(sides);
  if (before.length === 0 || after.length === 0) {
    for (const notice of notices) io.stderr.write(`traywright: ${printable(notice)}\n`);
    io.stderr.write('traywright: nothing to compare: one side holds no rule file that can be read.\n');
    return exit.nothing;
  }
  if (sides.extent === 'pair' && before[0]?.kind?.text !== after[0]?.kind?.text)
    return cannotFollow(io, 'the two files describe things of different kinds, so there is nothing to compare.');
  const review = reviewOf({ before, after, extent: sides.extent, library: sides.library, today });
  const head: CompareHead = { ...sides.labels, notices };
  io.stdout.write(rendered(review, head, sides, io, given));
  const target = given.values.get('write-sign-off');
  if (target !== undefined && !writeSignOffs(review, target, io)) return exit.usage;
  return failOn.some((word) => reaches(review, word)) ? exit.findings : exit.ok;
}

/** The day that the library's own file names, as a check of it has it; else the clock's. */
function dayIn({ library }: Sides, clock: IsoDate): IsoDate {
  return library === undefined ? clock : dayOf(new LibraryView(library, new Set(), new QueryAnswers(clock)), clock);
}

function rendered(review: RevisionReview, head: CompareHead, sides: Sides, io: CommandIo, given: Arguments): string {
  switch (given.values.get('format')) {
    case 'json':
      return compareJson(review, head, { before: placerOf(sides.before), after: placerOf(sides.after) });
    case 'markdown':
      return compareMarkdown(review, head);
    case 'html':
      return compareHtml(review, head);
    default:
      return textOfBlocks(comparePage(review, head), paletteFor(io, given));
  }
}

function placerOf(records: readonly FileRecord[]): Placer {
  const texts = new Map<FileId, string>(records.map(({ file, text }) => [file, text]));
  return new Placer((file) => texts.get(file) ?? '');
}

function reaches({ changes, lost, signOffs }: RevisionReview, word: string): boolean {
  switch (word) {
    case 'undecided':
      return signOffs.undecided > 0 || signOffs.lacking.length > 0;
    case 'route-breaks':
      return changes.some(({ here }) => here?.effect === 'route-breaks');
    case 'lost':
      return lost.length > 0;
    case 'any':
      return changes.some(needsDecision);
    case 'never':
      return false;
    default:
      return changes.some((change) => change.class === word);
  }
}

/** One record a file that changed; with several, the id of each stands in its name. A file that exists is never written over. */
function writeSignOffs(review: RevisionReview, target: string, io: CommandIo): boolean {
  const drafts = signOffDrafts(review);
  if (drafts.length === 0) io.stderr.write('traywright: no change needs a decision, so no record was written.\n');
  let written = true;
  for (const { id, text } of drafts) {
    const name =
      drafts.length === 1 ? basename(target) : `${basename(target).replace(/\.ifu\.yaml$/, '')}-${id}.ifu.yaml`;
    const result = writeNew(resolve(io.cwd, dirname(target)), name, text);
    io.stderr.write(
      'written' in result
        ? `traywright: wrote ${printable(name)}; complete it and put it into the library.\n`
        : `traywright: ${printable(result.why)}\n`,
    );
    written &&= 'written' in result;
  }
  return written;
}
