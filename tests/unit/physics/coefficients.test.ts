import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { saturationPressureMPa, steamBoundaryMPa } from '../../../server/src/physics/if97.ts';
import {
  GAS_CONSTANT,
  REGION_1,
  REGION_2_IDEAL,
  REGION_2_RESIDUAL,
  REGION_4,
  type Term,
} from '../../../server/src/physics/if97-coefficients.ts';

interface Columns {
  readonly I?: readonly number[];
  readonly J: readonly number[];
  readonly n: readonly number[];
}

const HANDBOOK = JSON.parse(readFileSync(new URL('../../handbook/if97-coefficients.json', import.meta.url), 'utf8'));

test('every coefficient equals the handbook copy of IAPWS R7-97(2012)', () => {
  expect(GAS_CONSTANT).toBe(HANDBOOK.R_kJ_per_kgK);
  expect(Object.values(REGION_4)).toEqual(HANDBOOK.region4_n1_n10);
  expectTerms(REGION_1, HANDBOOK.region1, 34);
  expectTerms(REGION_2_IDEAL, HANDBOOK.region2_ideal, 9);
  expectTerms(REGION_2_RESIDUAL, HANDBOOK.region2_residual, 43);
});

test('the boundary of region 2 (coefficients from memory) meets the saturation line at 623.15 K', () => {
  expect(steamBoundaryMPa(623.15) / saturationPressureMPa(623.15)).toBeCloseTo(1, 6);
});

function expectTerms(terms: readonly Term[], columns: Columns, count: number): void {
  expect(terms.length).toBe(count);
  expect(terms.map((term) => term.J)).toEqual(columns.J);
  expect(terms.map((term) => term.n)).toEqual(columns.n);
  if (columns.I !== undefined) expect(terms.map((term) => term.I)).toEqual(columns.I);
}
