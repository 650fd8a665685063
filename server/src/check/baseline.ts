import { type Finding, fingerprintOf } from './finding.ts';
import { isNeverHidden } from './waivers.ts';

/**
 * What was there on the day a department began to check: how often each fingerprint was found. It holds old findings back, so that new
 * ones are seen, and only ever gets smaller by itself.
 */
export interface Baseline {
  /** What it holds back: by fingerprint; every count is at least 1. */
  readonly counts: ReadonlyMap<string, number>;
  /** What was found on that day as well and is not held back by it: prohibitions, what a waiver or the settings held back. Tells old from new. */
  readonly alsoFound: ReadonlyMap<string, number>;
}

export interface WrittenBaseline {
  readonly baseline: Baseline;
  /** Where in its file each fingerprint stands: lines from 1. None for one that shares its line with others, as nobody but a person writes it. */
  readonly lines: ReadonlyMap<string, number>;
}

export type BaselineReading = WrittenBaseline | { readonly why: string };

/** Beside the library's own file. */
export const baselineFileName = '.traywright-baseline.json';

const mostFingerprints = 200_000;
const longestFingerprint = 2_000;
const highestCount = 100_000;

/** Reads a baseline file. Anything but the exact form is refused with a sentence: a half-read baseline would hide at random. */
export function readBaseline(text: string): BaselineReading {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { why: 'it is not JSON' };
  }
  if (!isObject(json) || json.format !== 'traywright-baseline' || json.version !== 1 || !Array.isArray(json.findings)) {
    return { why: 'it is not a baseline of this version' };
  }
  const counts = countsIn(json.findings);
  if ('why' in counts) return counts;
  const { alsoFound: others = [] } = json;
  if (!Array.isArray(others)) return { why: 'its second list has another form' };
  const alsoFound = countsIn(others, ' of its second list');
  if ('why' in alsoFound) return alsoFound;
  return { baseline: { counts, alsoFound }, lines: linesIn(text) };
}

function linesIn(text: string): ReadonlyMap<string, number> {
  const lines = new Map<string, number>();
  for (const [index, line] of text.split('\n').entries()) {
    const row = rowIn(line);
    if (row !== undefined && !lines.has(row)) lines.set(row, index + 1);
  }
  return lines;
}

function rowIn(line: string): string | undefined {
  try {
    const row: unknown = JSON.parse(line.trim().replace(/,$/, ''));
    return isObject(row) && typeof row.fingerprint === 'string' ? row.fingerprint : undefined;
  } catch {
    return undefined;
  }
}

function countsIn(rows: readonly unknown[], ofList = ''): ReadonlyMap<string, number> | { readonly why: string } {
  if (rows.length > mostFingerprints) return { why: `it holds more than ${mostFingerprints} entries` };
  const counts = new Map<string, number>();
  for (const [index, row] of rows.entries()) {
    const fault = addRow(row, counts);
    if (fault !== undefined) return { why: `entry ${index + 1}${ofList} ${fault}` };
  }
  return counts;
}

function addRow(row: unknown, counts: Map<string, number>): string | undefined {
  if (!isObject(row) || typeof row.fingerprint !== 'string' || typeof row.count !== 'number') return 'has another form';
  const { fingerprint, count } = row;
  if (fingerprint.length > longestFingerprint) return 'is too long';
  if (!Number.isInteger(count) || count < 1 || count > highestCount) return 'has a count that cannot be';
  if (counts.has(fingerprint)) return 'stands there twice';
  counts.set(fingerprint, count);
  return undefined;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** One entry a line, in order of fingerprints, so that a version control shows what went. Ends with a line end. */
export function baselineText({ counts, alsoFound }: Baseline): string {
  const lists = `  "findings": ${listOf(counts)},\n  "alsoFound": ${listOf(alsoFound)}\n`;
  return `{\n  "format": "traywright-baseline",\n  "version": 1,\n${lists}}\n`;
}

function listOf(counts: ReadonlyMap<string, number>): string {
  const rows = sorted(counts).map(([fingerprint, count]) => `    ${JSON.stringify({ fingerprint, count })}`);
  return rows.length === 0 ? '[]' : `[\n${rows.join(',\n')}\n  ]`;
}

function sorted(counts: ReadonlyMap<string, number>): readonly (readonly [string, number])[] {
  return [...counts].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
}

/** Everything found now: held back is what is shown now and may be hidden. `covered`: what a waiver or the settings hold back already. */
export function baselineOf(shown: Iterable<Finding>, covered: Iterable<Finding>): Baseline {
  const counts = new Map<string, number>();
  const alsoFound = new Map<string, number>();
  for (const finding of shown) add(isNeverHidden(finding.rule) ? alsoFound : counts, fingerprintOf(finding), 1);
  for (const finding of covered) add(alsoFound, fingerprintOf(finding), 1);
  return { counts, alsoFound };
}

function add(counts: Map<string, number>, fingerprint: string, count: number): void {
  if (count > 0) counts.set(fingerprint, (counts.get(fingerprint) ?? 0) + count);
}

/** What of the old one is still found: never more of anything than before. What was held back and has a waiver since is still found. */
export function shrunk(old: Baseline, now: Baseline): Baseline {
  const counts = new Map<string, number>();
  const alsoFound = new Map<string, number>();
  for (const fingerprint of new Set([...old.counts.keys(), ...old.alsoFound.keys()])) {
    const held = Math.min(old.counts.get(fingerprint) ?? 0, now.counts.get(fingerprint) ?? 0);
    add(counts, fingerprint, held);
    add(alsoFound, fingerprint, Math.min(timesIn(old, fingerprint), timesIn(now, fingerprint)) - held);
  }
  return { counts, alsoFound };
}

function timesIn({ counts, alsoFound }: Baseline, fingerprint: string): number {
  return (counts.get(fingerprint) ?? 0) + (alsoFound.get(fingerprint) ?? 0);
}

/** How many findings it holds back. */
export function sizeOf({ counts }: Pick<Baseline, 'counts'>): number {
  let size = 0;
  for (const count of counts.values()) size += count;
  return size;
}

/** Takes findings out one by one as long as the baseline still has one of theirs. */
export class BaselineFilter {
  readonly #left: Map<string, number>;
  readonly #alsoFound: Map<string, number>;

  constructor({ counts, alsoFound }: Baseline) {
    this.#left = new Map(counts);
    this.#alsoFound = new Map(alsoFound);
  }

  /** True when the finding is an old one; counted off. */
  holdsBack(finding: Finding): boolean {
    return !isNeverHidden(finding.rule) && takeOne(this.#left, fingerprintOf(finding));
  }

  /** True when one that it doesn't hold back was found on that day as well; counted off. Asked after all that may be held back were. */
  knows(finding: Finding): boolean {
    const fingerprint = fingerprintOf(finding);
    return takeOne(this.#alsoFound, fingerprint) || takeOne(this.#left, fingerprint);
  }

  /** Entries that nothing was found for: settled since. Has a meaning only after the whole library was asked. */
  settled(): number {
    return sizeOf({ counts: this.#left });
  }

  /** The fingerprints of what was found on that day and is not any more, in order. Has a meaning only after the whole library was asked. */
  absent(): readonly string[] {
    const left = [...sorted(this.#left), ...sorted(this.#alsoFound)];
    return left.flatMap(([fingerprint, count]) => new Array<string>(count).fill(fingerprint)).sort();
  }
}

function takeOne(counts: Map<string, number>, fingerprint: string): boolean {
  const left = counts.get(fingerprint) ?? 0;
  if (left > 0) counts.set(fingerprint, left - 1);
  return left > 0;
}
