import { join, resolve } from 'node:path';
import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import { outputFolder } from '../host/output-folder.ts';
import { printingOf } from '../print/amounts.ts';
import { defaultPaper, paperSizes } from '../print/paper-size.ts';
import { poster, posterIds, posterStamp } from '../print/posters/build.ts';
import { posterHtml } from '../print/posters/poster-html.ts';
import { wordsOf } from '../print/words/languages.ts';
import type { PosterId } from '../print/words/poster-words.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { printedOn } from './paper-output.ts';
import { pdfPrinter } from './pdf-printer.ts';
import { libraryAt } from './route-library.ts';

/** `posters [NAME...] --out DIR`: wall posters of this department. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const target = given.values.get('out');
  if (target === undefined) return cannotFollow(io, 'name a folder with --out.');
  const unknown = given.operands.find((name) => !posterIds.some((id) => id === name));
  if (unknown !== undefined)
    return cannotFollow(
      io,
      `there is no poster "${unknown}". ${nearest(unknown, posterIds) === undefined ? `Posters are: ${posterIds.join(', ')}.` : `Did you mean "${nearest(unknown, posterIds)}"?`}`,
    );
  const open = libraryAt(given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const folder = outputFolder(resolve(io.cwd, target));
  if ('why' in folder) return cannotFollow(io, folder.why);
  const words = wordsOf(given.values.get('language'));
  const printing = printingOf(open.engine.view(), words);
  const day = printedOn(io, given);
  const paper = paperSizes[given.values.get('paper') ?? 'a4'] ?? defaultPaper;
  const pdf = pdfPrinter(io, given);
  const ids = given.operands.length > 0 ? posterIds.filter((id) => given.operands.includes(id)) : posterIds;
  let code: ExitCode = exit.ok;
  for (const id of ids) {
    const shown = poster(id, printing);
    const name = `poster-${id}.html`;
    const written = folder.write(name, posterHtml(shown, words, paper, day), (old) => isPoster(old, id));
    if ('why' in written) {
      code = cannotFollow(io, written.why);
      continue;
    }
    io.stdout.write(`${printable(`${posterStamp(shown)}  ${name}`)}\n`);
    pdf?.(join(folder.root, name));
  }
  return code;
}

function isPoster(text: string, id: PosterId): boolean {
  return text.slice(0, 2000).includes(`<meta name="poster-id" content="${id}">`);
}
