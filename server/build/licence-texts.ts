import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Dependency, type Lock, runtimeDependencies } from './dependency-page.ts';

/** Files that hold a licence, or notices that have to be handed on with it. */
const holdsTerms = /^(?:licen[cs]e|copying|notice|thirdpartynotices?)(?:\.(?:md|txt))?$/i;

const line = '-'.repeat(80);

/** The licence texts of every package of which parts are handed out, as one text. Deterministic. `root` is where they are installed. */
export function licenceTexts(lock: Lock, root: string): string {
  const packages = runtimeDependencies(lock);
  const head =
    'Traywright contains parts of the packages below. Their licences follow, one after the other, as the packages carry them.';
  return [head, ...packages.map((one) => entryOf(one, root))].join(`\n\n${line}\n`);
}

function entryOf({ name, version, license, folder }: Dependency, root: string): string {
  const at = join(root, folder);
  const texts = readdirSync(at)
    .filter((file) => holdsTerms.test(file))
    .sort()
    .map((file) => readFileSync(join(at, file), 'utf8').replaceAll('\r\n', '\n').trim());
  const stated = `The package states the licence ${license} and carries no text of it.`;
  return `${name} ${version} (${license})\n${line}\n\n${texts.length === 0 ? stated : texts.join('\n\n')}`;
}
