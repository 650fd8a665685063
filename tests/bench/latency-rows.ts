import { join } from 'node:path';
import type { Latency, Waits } from './latency.ts';
import type { Row } from './results.ts';
import { interleaved, quantile, runOnce } from './runs.ts';

/** How long a person at the keyboard waits for the server in a library of this size, against the floor server. */
export function latencyRows(
  programs: ReadonlyMap<string, string>,
  library: string,
  mode: string,
  root: string,
): readonly Row[] {
  const server = join(root, 'dist/server.cjs');
  const probe = join(root, 'tests/bench/usage-probe.cjs');
  const keys = mode === 'full' ? '600' : mode === 'quick' ? '60' : '300';
  const args = [server, programs.get('floor-server') ?? '', probe, library, keys];
  const run = runOnce({ name: 'latency', file: programs.get('latency') ?? '', args }, root);
  const latency = JSON.parse(run.output) as Latency;
  const parse = { name: 'parse-only', file: programs.get('parse-only') ?? '', args: [library, 'drop'] };
  const floor = interleaved([parse], 1, root).get('parse-only');
  return [
    ...waitRows('server: key to findings, 400 lines', latency.keys),
    ...waitRows(
      'server: key to findings among questions for hints, lenses, outline and the like',
      latency.amongQuestions,
    ),
    ...waitRows('server: key to findings, sent to a client that does not ask, such as Neovim', latency.unasked),
    ...waitRows('server: key to what may be written there, 400 lines', latency.completions),
    ...startRows(latency, floor?.wallMs ?? Number.NaN),
    {
      what: 'server: peak memory, whole library checked',
      ratio: latency.peakMb / (floor?.peakMb ?? Number.NaN),
      floor: 'parse-only, documents let go',
      measured: `${Math.round(latency.peakMb)} MB`,
    },
  ];
}

function waitRows(what: string, { ours, floor }: Waits): readonly Row[] {
  return [0.5, 0.95].map((share) => ({
    what: `${what}, ${share === 0.5 ? 'median' : 'p95'}`,
    ratio: quantile(ours, share) / quantile(floor, share),
    ...(share === 0.95 && { goal: 1.5 }),
    floor: 'floor server',
    measured: `${quantile(ours, share).toFixed(1)} ms, floor ${quantile(floor, share).toFixed(1)} ms`,
  }));
}

function startRows(latency: Latency, parseMs: number): readonly Row[] {
  const row = (what: string, time: number): Row => ({
    what: `server: from its start to ${what}`,
    ratio: time / parseMs,
    floor: 'parse-only, by the clock',
    measured: `${Math.round(time)} ms`,
  });
  return [
    row('the open file’s own faults', latency.ownFaults),
    row('all findings of the open file', latency.allFindings),
    row('the whole library checked', latency.wholeLibrary),
  ];
}
