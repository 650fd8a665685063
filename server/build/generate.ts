/** Writes the files that are made from others. Usage: npm run generate. A test regenerates and compares. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { generatedFiles } from './generated-files.ts';
import { readSources } from './sources.ts';

const root = process.cwd();
for (const [path, text] of generatedFiles(readSources(root))) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  process.stdout.write(`wrote ${path}\n`);
}
