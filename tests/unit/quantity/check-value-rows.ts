import { readFileSync } from 'node:fs';

/** One row of the published check values, with its source. */
export interface CheckValue {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: string;
  readonly expected: string;
  readonly unit: string;
  readonly tolerance: string;
  readonly source: string;
  readonly seen: string;
}

/** All rows whose id starts with one of the families, such as `UNIT-`. */
export function checkValues(...families: readonly string[]): CheckValue[] {
  const text = readFileSync(new URL('../../handbook/check-values.csv', import.meta.url), 'utf8');
  const rows: CheckValue[] = [];
  for (const line of text.split('\n').slice(1)) {
    const [id = '', quantity = '', inputs = '', expected = '', unit = '', tolerance = '', source = '', seen = ''] =
      cellsOf(line);
    if (families.some((family) => id.startsWith(family))) {
      rows.push({ id, quantity, inputs, expected, unit, tolerance, source, seen });
    }
  }
  return rows;
}

function cellsOf(line: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const character of line) {
    if (character === '"') quoted = !quoted;
    else if (character === ',' && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += character;
  }
  return [...cells, cell.trim()];
}

/** What `tolerance` allows around `expected`: `rel 1e-6`, `abs 1e-4`, `exact`. */
export function allowedDeviation(row: CheckValue): number {
  const [kind = '', size = '0'] = row.tolerance.split(' ');
  if (kind === 'rel') return Math.abs(Number(row.expected)) * Number(size);
  return kind === 'abs' ? Number(size) : 1e-12;
}
