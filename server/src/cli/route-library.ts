import type { IsoDate } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import { findLibraries } from '../host/library-search.ts';
import type { Block } from '../report/blocks.ts';
import { markdownOfBlocks, textOfBlocks } from '../report/blocks.ts';
import { Placer } from '../report/model.ts';
import type { RouteJsonFormat } from '../report/route-json.ts';
import { routeJson } from '../report/route-json.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo } from './io.ts';
import type { OpenLibrary } from './open-library.ts';
import { openLibrary } from './open-library.ts';
import { progressOn } from './progress.ts';
import { placeOfTexts } from './take-documents.ts';

/** The one library that a command about routes works on, or undefined after saying why there is none. */
export function libraryAt(path: string, io: CommandIo, given: Arguments): OpenLibrary | undefined {
  const { libraries, failures } = findLibraries([path], io.cwd);
  const [found] = libraries;
  if (found === undefined || failures.length > 0 || libraries.length > 1) {
    const why =
      libraries.length > 1
        ? `"${printable(path)}" holds several libraries; name one of them.`
        : `there is no library at "${printable(path)}": a folder with a file "library.ifu.yaml".`;
    io.stderr.write(`traywright: ${why}\n`);
    return undefined;
  }
  const asked = given.values.get('today') as IsoDate | undefined;
  return openLibrary(found, {
    rules: allRules,
    asked,
    clock: io.today(),
    pdfReader: io.pdfReader,
    pdfTexts: placeOfTexts(io, given),
    progress: progressOn(io, 'Reading', 'speaks'),
  });
}

/** An answer in the three forms that are offered. `content` is the plain data of the JSON form. */
export interface Answer {
  readonly blocks: readonly Block[];
  readonly format: RouteJsonFormat;
  readonly content: Readonly<Record<string, unknown>>;
}

export function writeAnswer(
  { blocks, format, content }: Answer,
  { engine }: OpenLibrary,
  io: CommandIo,
  given: Arguments,
): void {
  switch (given.values.get('format')) {
    case 'json':
      io.stdout.write(routeJson(format, content, new Placer((file) => engine.library.record(file)?.text ?? '')));
      return;
    case 'markdown':
      io.stdout.write(markdownOfBlocks(blocks));
      return;
    default:
      io.stdout.write(textOfBlocks(blocks, paletteFor(io, given)));
  }
}
