import { basename, resolve } from 'node:path';
import { fileId } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import { readBytes } from '../host/read-text.ts';
import { whatIfPage } from '../report/routes-page.ts';
import type { OverlayFile } from '../route/overlay.ts';
import { overlaid } from '../route/overlay.ts';
import { whatIf } from '../route/what-if.ts';
import { decodeBytes } from '../syntax/decode.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { libraryAt, writeAnswer } from './route-library.ts';

/** `whatif [LIBRARY] --with FILE --add-cycle FILE --without NAME`: sets gained and lost by a change that is only imagined. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const files = { with: listOf(given, 'with'), cycles: listOf(given, 'add-cycle') };
  const without = listOf(given, 'without');
  if (files.with.length + files.cycles.length + without.length === 0) {
    io.stderr.write('traywright: name a change: --with FILE, --add-cycle FILE or --without KIND/ID.\n');
    return exit.usage;
  }
  const open = libraryAt(given.operands[0] ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const read = [...files.with, ...files.cycles].map((path) => [path, overlayFile(path, io)] as const);
  const unread = read
    .filter(([, file]) => file === undefined)
    .map(([path]) => `"${printable(path)}" cannot be read as text.`);
  const fileOf = new Map(read);
  const pick = (paths: readonly string[]) => paths.flatMap((path) => fileOf.get(path) ?? []);
  const { library, problems } = overlaid(open.engine.library, {
    with: pick(files.with),
    cycles: pick(files.cycles),
    without,
  });
  if (unread.length + problems.length > 0) {
    for (const problem of [...unread, ...problems]) io.stderr.write(`traywright: ${printable(problem)}\n`);
    return exit.usage;
  }
  const result = whatIf(open.engine.view(), open.engine.viewOf(library));
  const change = [
    ...files.with.map((path) => `with ${basename(path)}`),
    ...files.cycles.map((path) => `with the cycles of ${basename(path)}`),
    ...without.map((name) => `without ${name}`),
  ];
  writeAnswer(
    { blocks: whatIfPage(change, result), format: 'traywright-what-if', content: { change, ...result } },
    open,
    io,
    given,
  );
  return exit.ok;
}

function listOf(given: Arguments, name: string): readonly string[] {
  return given.lists.get(name) ?? [];
}

/** Its name can stand for no file of the library, whatever it is called. */
function overlayFile(path: string, io: CommandIo): OverlayFile | undefined {
  const read = readBytes(resolve(io.cwd, path));
  const decoded = 'bytes' in read ? decodeBytes(read.bytes) : undefined;
  return decoded !== undefined && 'text' in decoded
    ? { file: fileId(`imagined:${basename(path)}`), text: decoded.text }
    : undefined;
}
