import { Engine } from '../../server/src/check/engine.ts';
import type { OpenFinding } from '../../server/src/print/card/draft.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { demoDay } from './routes.ts';
import { readSample } from './samples.ts';

/** A demo department, read and checked once a test file. */
export interface OpenedSample {
  readonly engine: Engine;
  readonly findings: readonly (OpenFinding & { readonly message: string })[];
}

const opened = new Map<string, OpenedSample>();

export function openedSample(name: Parameters<typeof readSample>[0]): OpenedSample {
  const known = opened.get(name);
  if (known !== undefined) return known;
  const engine = new Engine({ rules: allRules, today: demoDay });
  for (const [file, text] of readSample(name)) engine.set(file, text);
  const sample = { engine, findings: engine.library.files().flatMap((file) => engine.findings(file)) };
  opened.set(name, sample);
  return sample;
}
