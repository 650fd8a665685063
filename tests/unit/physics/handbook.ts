import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { Answer } from '../../../server/src/physics/physics.ts';

/** Reads the copy of the published check values and applies their tolerances. Shared by the physics tests. */

export interface CheckRow {
  readonly id: string;
  readonly family: string;
  readonly quantity: string;
  readonly inputs: string;
  readonly expected: string;
  readonly unit: string;
  readonly tolerance: string;
  readonly source: string;
}

const PATH = new URL('../../handbook/check-values.csv', import.meta.url);

export function checkRows(families: readonly string[]): CheckRow[] {
  const lines = readFileSync(PATH, 'utf8').split(/\r?\n/).slice(1);
  const rows = lines.filter((line) => line !== '').map(toRow);
  return rows.filter((row) => families.includes(row.family));
}

function toRow(line: string): CheckRow {
  const [id = '', quantity = '', inputs = '', expected = '', unit = '', tolerance = '', source = ''] = cells(line);
  return { id, family: id.slice(0, id.lastIndexOf('-')), quantity, inputs, expected, unit, tolerance, source };
}

function cells(line: string): string[] {
  const found: string[] = [''];
  let quoted = false;
  for (const character of line) {
    if (character === '"') quoted = !quoted;
    else if (character === ',' && !quoted) found.push('');
    else found[found.length - 1] += character;
  }
  return found;
}

/** The number after `key=` in a row's inputs. */
export function input(row: CheckRow, key: string): number {
  for (const part of row.inputs.split(';')) {
    const [name, rest] = part.trim().split('=');
    if (name === key && rest !== undefined) return Number.parseFloat(rest);
  }
  throw new Error(`${row.id} has no input ${key}`);
}

/** The numbers after `key=`, written as 1|2|3. */
export function inputList(row: CheckRow, key: string): number[] {
  const part = row.inputs.split(';').find((text) => text.trim().startsWith(`${key}=`)) ?? '';
  return part
    .slice(part.indexOf('=') + 1)
    .split('|')
    .map(Number);
}

export function answerOf<Value>(given: Answer<Value, string>): Value {
  if (!given.ok) throw new Error(`refused: ${given.reason}: ${given.message}`);
  return given.value;
}

export function reasonOf(given: Answer<unknown, string>): string {
  return given.ok ? 'answered' : given.reason;
}

/** Rows printed with fewer digits than their tolerance needs: half the last printed digit is all that can be asked. */
const PRINTED_SHORT: Readonly<Record<string, number>> = { 'F0-001': 5e-7 };

/** Compares in the row's own unit, by the row's own tolerance. */
export function expectWithin(row: CheckRow, actual: number): void {
  const [kind = '', size = ''] = row.tolerance.split(' ');
  const [low = Number.NaN, high = low] = row.expected.split(/(?<=\d)-/).map(Number);
  const own = kind === 'abs' ? Number(size) : (kind === 'rel' ? Number(size) : 1e-12) * Math.abs(high);
  const slack = PRINTED_SHORT[row.id] ?? own;
  expect(Number.isFinite(low), `${row.id} has a number`).toBe(true);
  expect(actual, `${row.id} low end`).toBeGreaterThanOrEqual(low - slack);
  expect(actual, `${row.id} high end`).toBeLessThanOrEqual(high + slack);
}

export const KPA_PER_PSI = 6.894757293;
export const KPA_PER_INHG = 3.386389;
export const KG_PER_LB = 0.45359237;
export const M_PER_FT = 0.3048;

export function celsiusFromFahrenheit(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

/** kPa shown in the unit of a row: MPa, psi or kPa. */
export function inUnitOf(row: CheckRow, kPa: number): number {
  if (row.unit === 'MPa') return kPa / 1000;
  return row.unit.startsWith('psi') ? kPa / KPA_PER_PSI : kPa;
}
