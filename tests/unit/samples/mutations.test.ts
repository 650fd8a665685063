import { expect, it } from 'vitest';
import type { IsoDate } from '../../../server/src/base/brand.ts';
import { shareOf } from '../../bench/mutations/page.ts';
import { mistakeGroups, runTrial } from '../../bench/mutations/trial.ts';
import { readSample } from '../../support/samples.ts';

const names = ['lanternfield-corrected', 'saltmere-eye-clinic-corrected'];

/** A part of the trial of server/docs/mutation-trial.md, so that no change of a rule loses what is found today. */
it('most single mistakes of a tired person are found, and nothing is said of what is right', () => {
  const libraries = new Map(names.map((name) => [name, new Map(readSample(name))]));
  const { outcomes, untouched } = runTrial(libraries, '2025-03-03' as IsoDate, { seed: 7, each: 3 });
  const share = (group: string): number => {
    const kinds = mistakeGroups.get(group)?.map(({ id }) => id) ?? [];
    const own = shareOf(outcomes.filter(({ kind }) => kinds.includes(kind)));
    return own.found / own.of;
  };
  expect(untouched).toBe(0);
  expect(outcomes.length).toBeGreaterThan(200);
  expect(share('copying an instruction')).toBeGreaterThan(0.9);
  expect(share('citing documents, pages and names')).toBeGreaterThan(0.88);
  expect(share('typing')).toBeGreaterThan(0.95);
}, 300_000);
