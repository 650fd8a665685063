import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** What one run of a program used. */
export interface Usage {
  /** Processor time of all threads, user and system. */
  readonly cpuMs: number;
  readonly wallMs: number;
  /** Largest resident memory. */
  readonly peakMb: number;
}

export interface Program {
  readonly name: string;
  readonly file: string;
  readonly args: readonly string[];
  /** What is done before each run, unmeasured. */
  readonly before?: () => void;
}

/** Runs a program of ours in a Node of its own. Findings (exit code 1) are no failure. */
export function runOnce({ name, file, args }: Program, root: string): { usage: Usage; output: string } {
  const probe = join(root, 'tests/bench/usage-probe.cjs');
  const begin = performance.now();
  const ended = spawnSync(process.execPath, ['--require', probe, file, ...args], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit', 'pipe'],
    encoding: 'utf8',
    maxBuffer: 1_000_000_000,
  });
  const wallMs = performance.now() - begin;
  if (ended.status !== 0 && ended.status !== 1) throw new Error(`${name} ended with ${ended.status ?? ended.signal}`);
  const used = JSON.parse(String(ended.output[3])) as Omit<Usage, 'wallMs'>;
  return { usage: { ...used, wallMs }, output: ended.stdout };
}

/**
 * The median use of each program over some rounds. In each round every program runs once, so that what else the machine does meets all
 * of them alike.
 */
export function interleaved(programs: readonly Program[], rounds: number, root: string): ReadonlyMap<string, Usage> {
  const all = new Map<string, Usage[]>(programs.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round++) {
    for (const program of programs) {
      program.before?.();
      all.get(program.name)?.push(runOnce(program, root).usage);
    }
  }
  const medians = new Map<string, Usage>();
  for (const [name, uses] of all) {
    medians.set(name, {
      cpuMs: median(uses.map(({ cpuMs }) => cpuMs)),
      wallMs: median(uses.map(({ wallMs }) => wallMs)),
      peakMb: median(uses.map(({ peakMb }) => peakMb)),
    });
  }
  return medians;
}

export function median(numbers: readonly number[]): number {
  return quantile(numbers, 0.5);
}

/** `share` of the numbers are at most this; NaN of none. */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
