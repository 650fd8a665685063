/** `a`, `a and b`, `a, b and c`; after `most` the rest is counted. */
export function listed(names: readonly string[], most = 6): string {
  if (names.length > most) return `${names.slice(0, most).join(', ')} and ${names.length - most} more`;
  const last = names[names.length - 1];
  if (last === undefined) return '';
  return names.length === 1 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
