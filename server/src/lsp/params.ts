/** Looking at what a client sends before it is used. */
export function fieldIn(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? (value as Readonly<Record<string, unknown>>)[name]
    : undefined;
}

export function textsIn(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [];
}
