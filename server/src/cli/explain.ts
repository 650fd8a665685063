import { nearest } from '../base/nearest.ts';
import { printable } from '../base/printable.ts';
import type { CatalogueEntry } from '../check/catalogue.ts';
import { catalogueOf } from '../check/catalogue.ts';
import { explanation } from '../report/explanation.ts';
import { jsonText } from '../report/json.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

export function run(io: CommandIo, given: Arguments): ExitCode {
  if (given.operands.length === 0) {
    io.stderr.write('traywright: name the finding to explain; "traywright rules" lists all of them.\n');
    return exit.usage;
  }
  const known = new Map(catalogueOf(allRules).map((entry) => [entry.id, entry]));
  const entries: CatalogueEntry[] = [];
  for (const name of given.operands) {
    const entry = known.get(name);
    if (entry === undefined) return unknown(io, name, known.keys());
    entries.push(entry);
  }
  const palette = paletteFor(io, given);
  const text = entries.map((entry) => explanation(entry, palette)).join('\n');
  io.stdout.write(given.values.get('format') === 'json' ? `${jsonText(entries)}\n` : text);
  return exit.ok;
}

function unknown(io: CommandIo, name: string, known: Iterable<string>): ExitCode {
  const near = nearest(name, known);
  const hint = near === undefined ? '"traywright rules" lists all of them.' : `Did you mean "${near}"?`;
  io.stderr.write(`traywright: there is no finding named "${printable(name)}". ${hint}\n`);
  return exit.usage;
}
