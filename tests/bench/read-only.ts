/** The reading of a check alone: every rule file below a folder becomes what a library keeps of it, and is let go. Usage: read-only FOLDER. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileId } from '../../server/src/base/brand.ts';
import { readRuleFile } from '../../server/src/library/file-record.ts';
import { decodeBytes } from '../../server/src/syntax/decode.ts';

const [folder = '.'] = process.argv.slice(2);
let problems = 0;
for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
  if (!path.endsWith('.ifu.yaml')) continue;
  const decoded = decodeBytes(readFileSync(join(folder, path)));
  problems += 'text' in decoded ? readRuleFile(fileId(path), decoded.text).problems.length : 1;
}
process.stdout.write(`${problems} problems\n`);
