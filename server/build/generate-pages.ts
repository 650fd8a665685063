/** Writes the pages of the catalogue, once the list of rules is written, and of what comes from others. Pages of rules that are gone are taken away. */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allRules } from '../src/rules/all.generated.ts';
import { catalogueFolder, cataloguePages } from './catalogue-pages.ts';
import { dependencyPage, dependencyPagePath, type Lock } from './dependency-page.ts';

const root = process.cwd();
const pages = cataloguePages(allRules);
mkdirSync(join(root, catalogueFolder), { recursive: true });
for (const name of readdirSync(join(root, catalogueFolder))) {
  if (name.endsWith('.md') && !pages.has(`${catalogueFolder}/${name}`)) rmSync(join(root, catalogueFolder, name));
}
for (const [path, text] of pages) writeFileSync(join(root, path), text);
process.stdout.write(`wrote ${pages.size} pages in ${catalogueFolder}\n`);
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
writeFileSync(join(root, dependencyPagePath), dependencyPage(lock));
