/** `1 file`, `3 files`. */
export function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}
