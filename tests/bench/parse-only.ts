/** Floor: every rule file below a folder is read and parsed by `yaml`, and nothing else. Usage: parse-only FOLDER drop|keep. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';

const [folder = '.', documents = 'drop'] = process.argv.slice(2);
const kept: unknown[] = [];
let problems = 0;
for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
  if (!path.endsWith('.ifu.yaml')) continue;
  const document = parseDocument(readFileSync(join(folder, path), 'utf8'));
  problems += document.errors.length;
  if (documents === 'keep') kept.push(document);
}
process.stdout.write(`${problems} problems\n`);
