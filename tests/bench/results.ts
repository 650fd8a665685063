/** One line of the result: a cost as a ratio to its floor, measured in the same run. */
export interface Row {
  readonly what: string;
  readonly ratio: number;
  /** The goal as a ratio, where there is one. */
  readonly goal?: number;
  readonly floor: string;
  readonly measured: string;
}

export interface Results {
  readonly node: string;
  readonly processors: number;
  readonly rules: number;
  readonly rows: readonly Row[];
}

/** How the names of the rows begin that tell what a file costs in libraries of several sizes. */
export const growthRow = 'cost a file, cold check of';

/** The rows measured now, in place of earlier ones of the same name; the others as they were. */
export function merged(old: readonly Row[], now: readonly Row[]): readonly Row[] {
  const byName = new Map(now.map((row) => [row.what + row.floor, row]));
  const kept = old.map((row) => byName.get(row.what + row.floor) ?? row);
  const names = new Set(old.map((row) => row.what + row.floor));
  return [...kept, ...now.filter((row) => !names.has(row.what + row.floor))];
}

/** The page server/docs/bench.md. */
export function page({ node, processors, rules, rows }: Results): string {
  const lines = rows.map(
    ({ what, ratio, goal, floor, measured }) =>
      `| ${what} | ${ratio.toFixed(2)} | ${goal === undefined ? '' : `${goal} ${ratio <= goal ? 'met' : 'not met'}`} | ${floor} | ${measured} |`,
  );
  const plot = rows.some(({ what }) => what.startsWith(growthRow))
    ? '\n![What a check costs against the size of its library](growth.svg)\n'
    : '';
  return `# Speed and memory

Written by \`npm run bench\`. Figures are ratios to floors measured in the same run, program by program in turn, so that they hold on other
machines and beside other work; the last column is what one machine needed (Node ${node}, ${processors} processors, ${rules} rules).
Libraries are generated (\`tests/bench/\`): files of the demo department under other makers, ids, numbers and wordings, one in fifty with a
digit wrong. Time is processor time of all threads unless it says otherwise.

| What | Ratio | Goal | Floor | Here |
|---|---|---|---|---|
${lines.join('\n')}
${plot}`;
}
