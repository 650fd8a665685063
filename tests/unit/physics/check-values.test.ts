import { describe, expect, test } from 'vitest';
import { COOLING_ROWS, NO_EQUATION } from './cooling-rows.ts';
import { type CheckRow, checkRows, expectWithin } from './handbook.ts';
import { LETHALITY_ROWS } from './lethality-rows.ts';
import { LOAD_ROWS } from './load-rows.ts';
import { STEAM_ROWS } from './steam-rows.ts';

/** Every published or computed check value of the physics families, each by its own tolerance. An unmapped row fails. */

const FAMILIES = ['STM', 'DRY', 'CON', 'ALT', 'F0', 'A0', 'COOL'];
const ROWS = checkRows(FAMILIES);

/** Limits of steam quality: the row's number is tried against measured values on both sides of it. */
const LIMIT_ROWS: Readonly<Record<string, (row: CheckRow) => undefined>> = {
  'EN 285 minimum dryness value, metal loads': (row) => dividesTestReadings(row),
  'EN 285 minimum dryness value, other (textile) loads': (row) => dividesTestReadings(row),
  'EN 285 maximum superheat at atmospheric pressure': (row) => {
    const dry = rowWith('DRY-014');
    expect(STEAM_ROWS[dry.quantity]?.(dry)).toBeGreaterThan(Number(row.expected));
    const wet = rowWith('DRY-015');
    expect(STEAM_ROWS[wet.quantity]?.(wet)).toBeLessThan(Number(row.expected));
    return undefined;
  },
};

const HANDLERS = { ...STEAM_ROWS, ...LOAD_ROWS, ...LETHALITY_ROWS, ...COOLING_ROWS, ...LIMIT_ROWS };

describe('check values', () => {
  test.each(ROWS.map((row) => [`${row.id} ${row.quantity} (${row.inputs}): ${row.source}`, row] as const))(
    '%s',
    (_, row) => {
      if (NO_EQUATION.includes(row.quantity)) return;
      const handler = HANDLERS[row.quantity];
      if (handler === undefined) throw new Error(`no function for ${row.id}: ${row.quantity}`);
      const actual = handler(row);
      if (actual !== undefined) expectWithin(row, actual);
    },
  );

  test('all physics families are present', () => {
    for (const family of FAMILIES) expect(ROWS.some((row) => row.family === family)).toBe(true);
    expect(ROWS.length).toBeGreaterThanOrEqual(220);
  });
});

/** Test readings DRY-011 (0.964) and DRY-012 (0.922): the first meets both limits, the second only the lower one. */
function dividesTestReadings(row: CheckRow): undefined {
  const [better, poorer] = ['DRY-011', 'DRY-012'].map((id) => {
    const reading = rowWith(id);
    return STEAM_ROWS[reading.quantity]?.(reading) ?? Number.NaN;
  });
  expect(better).toBeGreaterThanOrEqual(Number(row.expected));
  if (row.inputs === 'metal load') expect(poorer).toBeLessThan(Number(row.expected));
  else expect(poorer).toBeGreaterThanOrEqual(Number(row.expected));
  return undefined;
}

function rowWith(id: string): CheckRow {
  const row = ROWS.find((one) => one.id === id);
  if (row === undefined) throw new Error(`the check values have no ${id}`);
  return row;
}
