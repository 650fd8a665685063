import { expect } from 'vitest';
import {
  A0_SCALE,
  amountOf,
  F0_SCALE,
  f0ForSpores,
  f0Scale,
  type LethalityScale,
  lethalityOfHold,
  lethalRate,
  requiredHoldS,
} from '../../../server/src/physics/lethality.ts';
import { type CurveLethality, lethalityOfCurve } from '../../../server/src/physics/lethality-curve.ts';
import { answerOf, type CheckRow, input, inputList, reasonOf } from './handbook.ts';

/** 121.111 °C: with the 121.11 that the row's title says, 130 °C would give 7.745, not the 7.743 printed. */
const EXACTLY_250_F = (250 - 32) / 1.8;

/** How each quantity of the F0 and A0 families is computed. */
export const LETHALITY_ROWS: Readonly<Record<string, (row: CheckRow) => number>> = {
  'lethal rate L=10^((T-121.1)/10)': (row) => answerOf(lethalRate(f0Scale(input(row, 'Tref')), input(row, 'T'))),
  'F0 of a constant hold': f0Hold,
  'published worked example, Tref=121': f0Hold,
  'published lethal-rate table; matches Tref=121.11 NOT 121.1': (row) =>
    answerOf(lethalRate(f0Scale(EXACTLY_250_F), input(row, 'T'))),
  'curve integral, trapezoid on L': (row) => aboveExact(row, trapezoid),
  'curve integral, left rectangles': (row) => aboveExact(row, leftSum),
  'curve integral, safe lower bound sum(min(Li,Li+1)*dt)': (row) => amountOf(curve(row).lowerBound),
  'F0 for a spore log reduction F0 = D121*(log10 N0 - log10 SAL)': (row) =>
    answerOf(f0ForSpores(input(row, 'D121'), input(row, 'N0'), input(row, 'SAL'))),
  'A0 of a constant hold': (row) => a0Hold(input(row, 'T'), input(row, 't')),
  'hold time needed': (row) => answerOf(requiredHoldS(A0_SCALE, input(row, 'A0'), input(row, 'T'), 0)),
  'curve integral, log-mean, clipped at 65 degC': (row) => amountOf(curve(row).lethality),
  'curve integral, trapezoid, samples below 65 degC counted as 0': (row) => aboveExact(row, trapezoid),
  'curve integral, safe lower bound, samples below 65 degC counted as 0': (row) => amountOf(curve(row).lowerBound),
  'lowest temperature that counts towards A0': (row) => {
    expect(a0Hold(Number(row.expected), 60)).toBeGreaterThan(0);
    expect(a0Hold(Number(row.expected) - 1e-6, 60)).toBe(0);
    expect(reasonOf(requiredHoldS(A0_SCALE, 60, Number(row.expected) - 1e-6, 0))).toBe('too-cold-to-count');
    return A0_SCALE.lowestCountedC ?? Number.NaN;
  },
  'minimum A0, surgical instruments washer-disinfector (ISO 15883-2)': heldThenReached,
  'minimum A0, human-waste containers (ISO 15883-3)': heldThenReached,
  'z value for A0': (row) => {
    const rate = (celsius: number): number => answerOf(lethalRate(A0_SCALE, celsius));
    expect(rate(80 + Number(row.expected)) / rate(80)).toBeCloseTo(10, 12);
    return A0_SCALE.zK;
  },
};

/** The rows that give an amount the product does not offer: computed here, to show that it lies above the exact one. */
function aboveExact(row: CheckRow, sum: (rates: readonly number[]) => number): number {
  const rates = inputList(row, 'T').map((celsius) => answerOf(lethalRate(scaleOf(row), celsius)));
  const amount = sum(rates) * stepOf(row);
  expect(amount).toBeGreaterThan(amountOf(curve(row).lethality));
  return amount;
}

function trapezoid(rates: readonly number[]): number {
  return rates.slice(1).reduce((sum, rate, index) => sum + (rate + (rates[index] ?? 0)) / 2, 0);
}

function leftSum(rates: readonly number[]): number {
  return rates.slice(0, -1).reduce((sum, rate) => sum + rate, 0);
}

function curve(row: CheckRow): CurveLethality {
  const stepS = stepOf(row) * (row.family === 'F0' ? 60 : 1);
  const readings = inputList(row, 'T').map((temperatureC, index) => ({ timeS: index * stepS, temperatureC }));
  return answerOf(lethalityOfCurve(scaleOf(row), readings, { uncertaintyK: 0, longestStepS: stepS }));
}

function scaleOf(row: CheckRow): LethalityScale {
  return row.family === 'F0' ? F0_SCALE : A0_SCALE;
}

/** In minutes for F0 and seconds for A0, as the rows write it. */
function stepOf(row: CheckRow): number {
  return Number.parseFloat(row.inputs.slice(row.inputs.indexOf('step ') + 5));
}

function f0Hold(row: CheckRow): number {
  const hold = { temperatureC: input(row, 'T'), holdS: input(row, 't') * 60, uncertaintyK: 0 };
  const lethality = answerOf(lethalityOfHold(f0Scale(input(row, 'Tref')), hold));
  expect(lethality.scale.referenceTemperatureC).toBe(input(row, 'Tref'));
  return amountOf(lethality);
}

function a0Hold(temperatureC: number, holdS: number): number {
  return amountOf(answerOf(lethalityOfHold(A0_SCALE, { temperatureC, holdS, uncertaintyK: 0 })));
}

/** A limit: the hold computed for it must give it back, at several temperatures. */
function heldThenReached(row: CheckRow): number {
  const wanted = Number(row.expected);
  const reached = [65, 70, 82, 93].map((celsius) =>
    a0Hold(celsius, answerOf(requiredHoldS(A0_SCALE, wanted, celsius, 0))),
  );
  return Math.round(Math.min(...reached) * 1e9) / 1e9;
}
