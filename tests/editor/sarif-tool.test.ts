import { spawnSync } from 'node:child_process';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../support/built.ts';
import { cli, folderWith } from '../support/cli.ts';

/* What the tool of SARIF's makers remarks on our reports. Its exit code says nothing of it, so the report that it writes is read. */

const installed = '.cache/editors/sarif-multitool/node_modules/@microsoft/sarif-multitool-linux/Sarif.Multitool';
const samples = join(root, 'samples');

/** By rule of the tool, why it is left as it is. Any other remark fails. */
const known: Readonly<Record<string, string>> = {
  SARIF2005: 'The program has no page of its own that could be named.',
};

interface Log {
  readonly runs: readonly {
    readonly invocations: readonly { readonly executionSuccessful: boolean }[];
    readonly results: readonly { readonly ruleId: string }[];
  }[];
}

/** Errors and warnings of the tool, those that are known left out. */
function remarksOn(sarif: string): readonly unknown[] {
  const cwd = folderWith({ 'report.sarif': sarif });
  const words = ['validate', 'report.sarif', '--output', 'remarks.sarif', '--level', 'Error;Warning'];
  // Where the system holds no data about languages, the tool's runtime would not start.
  const env = { ...process.env, DOTNET_SYSTEM_GLOBALIZATION_INVARIANT: '1' };
  const { stdout, stderr, error } = spawnSync(join(root, installed), words, { cwd, env, encoding: 'utf8' });
  expect(error).toBeUndefined();
  expect(stdout + stderr).toContain('1 files scanned');
  const { runs } = JSON.parse(readFileSync(join(cwd, 'remarks.sarif'), 'utf8')) as Log;
  expect(runs.map(({ invocations }) => invocations.map((one) => one.executionSuccessful))).toEqual([[true]]);
  return runs.flatMap(({ results }) => results).filter(({ ruleId }) => known[ruleId] === undefined);
}

async function checked(words: readonly string[], cwd: string): Promise<string> {
  const { out, code } = await cli(['check', ...words, '--format', 'sarif'], { cwd });
  expect(code).toBeLessThan(2);
  return out;
}

function statesIn(sarif: string): ReadonlySet<string> {
  const { runs } = JSON.parse(sarif) as { runs: readonly { results: readonly { baselineState: string }[] }[] };
  return new Set(runs.flatMap(({ results }) => results.map((one) => one.baselineState)));
}

describe('the tool of SARIF’s makers', () => {
  it.each(['lanternfield', 'lanternfield-corrected', '.'])(
    'has no further remark on the report of %s',
    async (path) => {
      expect(remarksOn(await checked([path], samples))).toEqual([]);
    },
  );

  it('has none on a report against a baseline, with findings that are new, unchanged and absent', async () => {
    const cwd = folderWith({});
    cpSync(join(samples, 'lanternfield'), cwd, { recursive: true });
    await cli(['baseline'], { cwd });
    const device = join(cwd, 'devices/fennoway-knee-system.ifu.yaml');
    const text = readFileSync(device, 'utf8');
    writeFileSync(device, text.replace('at_least', 'at_most').replace(/quote: "/, 'quote: "Not twice. '));
    const sarif = await checked([], cwd);
    expect(statesIn(sarif)).toEqual(new Set(['new', 'unchanged', 'absent']));
    expect(remarksOn(sarif)).toEqual([]);
  });

  it.each(['message', 'region'])('remarks on a report that has lost every %s', async (lost) => {
    const sarif = await checked(['lanternfield'], samples);
    const without: unknown = JSON.parse(sarif, (key, value: unknown) => (key === lost ? undefined : value));
    expect(remarksOn(JSON.stringify(without))).not.toEqual([]);
  });
});
