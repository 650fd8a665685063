import { join, resolve } from 'node:path';
import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import { fileNameFor, type OutputFolder, outputFolder, textsIn } from '../host/output-folder.ts';
import { printingOf } from '../print/amounts.ts';
import { workCard } from '../print/card/build.ts';
import { cardHtml } from '../print/card/card-html.ts';
import { cardMark } from '../print/card/card-mark.ts';
import { defaultPaper, paperSizes } from '../print/paper-size.ts';
import { wordsOf } from '../print/words/languages.ts';
import type { Words } from '../print/words/words.ts';
import { cardStamp } from '../route/stamp.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { openFindings } from './open-findings.ts';
import type { OpenLibrary } from './open-library.ts';
import { printedOn } from './paper-output.ts';
import { pdfPrinter } from './pdf-printer.ts';
import { libraryAt } from './route-library.ts';

/** `cards [SET...] --out DIR` writes work cards; `cards --check DIR` tells which of those in a folder are out of date. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const [target, checked] = [given.values.get('out'), given.values.get('check')];
  if ((target === undefined) === (checked === undefined))
    return cannotFollow(
      io,
      'name a folder: --out to write cards into it, or --check to look whether those in it are current.',
    );
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  if (checked !== undefined) return checkFolder(io, open, checked);
  const folder = outputFolder(resolve(io.cwd, target ?? '.'));
  if ('why' in folder) return cannotFollow(io, folder.why);
  const ids = given.operands.length > 0 ? given.operands : [...open.engine.view().ids('set')].sort();
  const unknown = ids.find((id) => open.engine.view().get('set', id) === undefined);
  if (unknown !== undefined) return cannotFollow(io, unknownSet(open, unknown));
  return writeCards(io, given, open, folder, ids);
}

export function unknownSet({ engine }: OpenLibrary, id: string): string {
  const near = nearest(id, [...engine.view().ids('set')]);
  return `there is no set "${id}" in this library. ${near === undefined ? '"traywright routes" lists the sets.' : `Did you mean "${near}"?`}`;
}

function writeCards(
  io: CommandIo,
  given: Arguments,
  open: OpenLibrary,
  folder: OutputFolder,
  ids: readonly string[],
): ExitCode {
  const words = wordsOf(given.values.get('language'));
  const paper = paperSizes[given.values.get('paper') ?? 'a4'] ?? defaultPaper;
  const printing = printingOf(open.engine.view(), words);
  const findings = openFindings(open);
  const day = printedOn(io, given);
  const pdf = pdfPrinter(io, given);
  let code: ExitCode = exit.ok;
  for (const id of ids) {
    const card = workCard(id, printing, day, findings);
    if (card === undefined) continue;
    const name = fileNameFor(id, '.html');
    const written = folder.write(name, cardHtml(card, words, paper), (old) => cardMark(old)?.set === id);
    if ('why' in written) {
      io.stderr.write(`traywright: ${printable(written.why)}\n`);
      code = exit.usage;
      continue;
    }
    const draft = card.draft.length === 0 ? '' : `  ${draftWords(words)}: ${card.draft.join('; ')}`;
    io.stdout.write(`${printable(`${card.stamp}  ${name}${draft}`)}\n`);
    pdf?.(join(folder.root, name));
  }
  return code;
}

function draftWords(words: Words): string {
  return words.card.head.draft;
}

function checkFolder(io: CommandIo, { engine }: OpenLibrary, path: string): ExitCode {
  const texts = textsIn(resolve(io.cwd, path), '.html');
  if (texts === undefined) return cannotFollow(io, `there is no folder "${path}".`);
  let stale = 0;
  let cards = 0;
  for (const [name, text] of texts) {
    const mark = cardMark(text);
    if (mark === undefined) continue;
    cards++;
    const now = engine.view().ask(cardStamp, mark.set);
    if (now !== mark.stamp) stale++;
    io.stdout.write(`${printable(`${name}: ${stateWords(mark, now)}`)}\n`);
  }
  if (cards === 0) return cannotFollow(io, `no card lies in "${path}".`);
  io.stdout.write(stale === 0 ? `${cards} cards, all current.\n` : `${cards} cards, ${stale} out of date.\n`);
  return stale === 0 ? exit.ok : exit.findings;
}

function stateWords({ set, stamp, day }: { set: string; stamp: string; day: string }, now: string | undefined): string {
  if (now === undefined) return `STALE: the library has no set "${set}" any more. Take it in.`;
  if (now === stamp) return `current (${stamp}, printed ${day})`;
  return `STALE: it carries ${stamp}, printed ${day}; it would say ${now} now. Print it again.`;
}
