/** Looking at what the server answers before it is used: nothing that comes over a connection is taken on trust. */
export function recordIn(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}

export function listIn(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

export function textIn(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

export function textsIn(value: unknown): readonly string[] {
  return listIn(value).filter((one) => typeof one === 'string');
}

/** A range as the protocol writes it, as four numbers; undefined when it is none. */
export function rangeNumbers(value: unknown): readonly [number, number, number, number] | undefined {
  const { start, end } = recordIn(value);
  const numbers = [recordIn(start).line, recordIn(start).character, recordIn(end).line, recordIn(end).character];
  const [a, b, c, d] = numbers.map(Number);
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  return [a, b, c, d].every((one) => Number.isInteger(one) && one >= 0) ? [a, b, c, d] : undefined;
}
