/** Words by which a document says that it is for every market. */
const everywhere: ReadonlySet<string> = new Set(['all', 'any', 'global', 'international', 'world', 'worldwide', 'ww']);

/** True when the two lists of markets share one. A list that is not given stands for every market. */
export function marketsMeet(a: readonly string[] | undefined, b: readonly string[] | undefined): boolean {
  if (a === undefined || b === undefined || a.length === 0 || b.length === 0) return true;
  const known = new Set(a.map(spelled));
  if ([...known].some((market) => everywhere.has(market))) return true;
  return b.some((market) => known.has(spelled(market)) || everywhere.has(spelled(market)));
}

function spelled(market: string): string {
  return market.trim().toLowerCase();
}
