import { type Finding, fingerprintOf } from './finding.ts';
import { isNeverHidden } from './waivers.ts';

/**
 * What was there on the day a department began to check: how often each fingerprint was found. It holds old findings back, so that new
 * ones are seen, and only ever gets smaller by itself.
 */
export interface Baseline {
  /** By fingerprint; every count is at least 1. */
  readonly counts: ReadonlyMap<string, number>;
}

export type BaselineReading = { readonly baseline: Baseline } | { readonly why: string };

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
  if (json.findings.length > mostFingerprints) return { why: `it holds more than ${mostFingerprints} entries` };
  const counts = new Map<string, number>();
  for (const [index, row] of (json.findings as readonly unknown[]).entries()) {
    const fault = addRow(row, counts);
    if (fault !== undefined) return { why: `entry ${index + 1} ${fault}` };
  }
  return { baseline: { counts } };
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
export function baselineText({ counts }: Baseline): string {
  const rows = sorted(counts).map(([fingerprint, count]) => `    ${JSON.stringify({ fingerprint, count })}`);
  const list = rows.length === 0 ? '[]' : `[\n${rows.join(',\n')}\n  ]`;
  return `{\n  "format": "traywright-baseline",\n  "version": 1,\n  "findings": ${list}\n}\n`;
}

function sorted(counts: ReadonlyMap<string, number>): readonly (readonly [string, number])[] {
  return [...counts].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
}

/** Everything found now, but for what nobody may hide. */
export function baselineOf(findings: Iterable<Finding>): Baseline {
  const counts = new Map<string, number>();
  for (const finding of findings) {
    if (isNeverHidden(finding.rule)) continue;
    const fingerprint = fingerprintOf(finding);
    counts.set(fingerprint, (counts.get(fingerprint) ?? 0) + 1);
  }
  return { counts };
}

/** What of the old one is still found: never more of anything than before. */
export function shrunk(old: Baseline, now: Baseline): Baseline {
  const counts = new Map<string, number>();
  for (const [fingerprint, count] of old.counts) {
    const still = Math.min(count, now.counts.get(fingerprint) ?? 0);
    if (still > 0) counts.set(fingerprint, still);
  }
  return { counts };
}

/** How many findings it stands for. */
export function sizeOf({ counts }: Baseline): number {
  let size = 0;
  for (const count of counts.values()) size += count;
  return size;
}

/** Takes findings out one by one as long as the baseline still has one of theirs. */
export class BaselineFilter {
  readonly #left: Map<string, number>;

  constructor({ counts }: Baseline) {
    this.#left = new Map(counts);
  }

  /** True when the finding is an old one; counted off. */
  holdsBack(finding: Finding): boolean {
    if (isNeverHidden(finding.rule)) return false;
    const fingerprint = fingerprintOf(finding);
    const left = this.#left.get(fingerprint) ?? 0;
    if (left === 0) return false;
    this.#left.set(fingerprint, left - 1);
    return true;
  }

  /** Entries that nothing was found for: settled since. Has a meaning only after the whole library was asked. */
  settled(): number {
    let settled = 0;
    for (const left of this.#left.values()) settled += left;
    return settled;
  }
}
