/**
 * How many mistakes of a tired person are found. Usage: npm run mutations [-- EACH [SEED]]. Makes at most EACH mistakes of every kind.
 * Without arguments writes server/docs/mutation-trial.md and .json; with any, only prints.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FileId, IsoDate } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import { page } from './mutations/page.ts';
import type { Libraries } from './mutations/trial.ts';
import { mistakeGroups, runTrial } from './mutations/trial.ts';

const root = process.cwd();
const [each = '12', seed = '20250303'] = process.argv.slice(2);
const names = ['lanternfield-corrected', 'saltmere-eye-clinic-corrected'];
const libraries: Libraries = new Map(names.map((name) => [name, textsOf(join(root, 'samples', name))]));
const trial = runTrial(libraries, '2025-03-03' as IsoDate, { seed: Number(seed), each: Number(each) });
process.stdout.write(page(trial, mistakeGroups));
if (process.argv.length <= 2) {
  writeFileSync(join(root, 'server/docs/mutation-trial.md'), page(trial, mistakeGroups));
  writeFileSync(join(root, 'server/docs/mutation-trial.json'), `${JSON.stringify(trial, undefined, 2)}\n`);
}

function textsOf(folder: string): ReadonlyMap<FileId, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ifu.yaml'));
  return new Map(paths.sort().map((path) => [fileId(path), readFileSync(join(folder, path), 'utf8')]));
}
