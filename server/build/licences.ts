/** `npm run licences`: writes dist/third-party-licences.txt, which is handed out with the bundles. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lock } from './dependency-page.ts';
import { licenceTexts } from './licence-texts.ts';

const root = process.cwd();
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
mkdirSync(join(root, 'dist'), { recursive: true });
writeFileSync(join(root, 'dist/third-party-licences.txt'), `${licenceTexts(lock, root)}\n`);
