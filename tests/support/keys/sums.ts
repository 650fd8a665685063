import { plain } from '../../../server/src/print/piece.ts';
import { numbersIn, valueAt } from '../traced.ts';
import { type Asked, amountIn, type Fault, isTable, originsOf } from './asked.ts';

/* Sums worked out again with the formulas of school physics: A0, Fahrenheit, and what a gauge shows here. */

interface Sum {
  readonly value: number;
  /** Share within which an answer is right. */
  readonly tolerance: number;
}

export function sumFault(asked: Asked): Fault {
  const { draft } = asked;
  const sum = sumOf(asked);
  if (sum === undefined) return 'nothing to work out';
  const isRight = (text: string): boolean =>
    Math.abs(Number(numbersIn(text)[0]) - sum.value) <= Math.max(sum.tolerance * sum.value, 0.5);
  if (!isRight(plain(draft.right))) return `${plain(draft.right)} where it is ${sum.value}`;
  const other = draft.wrong.find((line) => isRight(plain(line)));
  return other === undefined ? undefined : `${plain(other)} is right too`;
}

function sumOf({ draft, files }: Asked): Sum | undefined {
  const values = originsOf(draft.right).map((origin) => amountIn(String(valueAt(files, origin))));
  const [first = Number.NaN, second = Number.NaN] = values;
  if (draft.key.startsWith('calculation a0 ')) return { value: second * 10 ** ((first - 80) / 10), tolerance: 0.05 };
  if (draft.key.startsWith('calculation fahrenheit ')) return { value: first * 1.8 + 32, tolerance: 0.002 };
  if (!draft.key.startsWith('calculation gauge ')) return undefined;
  return { value: saturatedKPa(first) - airKPa(files), tolerance: 0.03 };
}

/** Antoine's equation for water above 100 °C, in kPa: within half a percent of the tables. */
export function saturatedKPa(celsius: number): number {
  return (10 ** (8.14019 - 1810.94 / (244.485 + celsius)) * 101.325) / 760;
}

/** As measured, else by the altitude in the standard atmosphere. */
export function airKPa(files: Asked['files']): number {
  for (const [name, site] of files) {
    if (!name.startsWith('site/') || !isTable(site)) continue;
    const { atmosphere, altitude } = site;
    if (typeof atmosphere === 'string') return Number.parseFloat(atmosphere);
    return 101.325 * (1 - 2.25577e-5 * Number.parseFloat(String(altitude))) ** 5.25588;
  }
  return Number.NaN;
}
