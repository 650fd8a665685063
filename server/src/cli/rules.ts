import { catalogueOf } from '../check/catalogue.ts';
import { ruleIndex } from '../report/explanation.ts';
import { jsonText } from '../report/json.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';

export function run(io: CommandIo, given: Arguments): ExitCode {
  if (given.operands.length > 0) {
    io.stderr.write('traywright: "rules" takes no name; "traywright explain RULE" explains one.\n');
    return exit.usage;
  }
  const entries = catalogueOf(allRules);
  if (given.values.get('format') === 'json') {
    const rows = entries.map(({ id, stage, severity, settledBy, source, why }) => ({
      id,
      stage,
      severity,
      settledBy,
      source,
      why,
    }));
    io.stdout.write(`${jsonText(rows)}\n`);
  } else io.stdout.write(ruleIndex(entries, paletteFor(io, given)));
  return exit.ok;
}
