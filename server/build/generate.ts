/** Writes the files that are made from others. Usage: npm run generate. A test regenerates and compares. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { generatedFiles } from './generated-files.ts';
import { readSources } from './sources.ts';

const root = process.cwd();
for (const [path, text] of generatedFiles(readSources(root))) {
  writeFileSync(join(root, path), text);
  process.stdout.write(`wrote ${path}\n`);
}
