/**
 * How long an edit of one file takes in a library held in memory, until the findings are there again: of the edited file, and of every
 * file the edit affects. Beside it, in the same loop, `yaml` parses the same text. Usage: keystrokes FOLDER EDITS. Prints JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import type { FileId, IsoDate } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { longDevice, longFile } from './long-file.ts';
import { Seeded } from './seeded.ts';

/** Times in milliseconds, one entry an edit. */
export interface Keystrokes {
  readonly name: string;
  readonly own: number[];
  readonly all: number[];
  readonly affected: number[];
  readonly parse: number[];
}

const [folder = '.', edits = '200'] = process.argv.slice(2);
const seeded = new Seeded(400);
const texts = new Map<FileId, string>();
for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
  if (path.endsWith('.ifu.yaml'))
    texts.set(fileId(path.replaceAll('\\', '/')), readFileSync(join(folder, path), 'utf8'));
}
const [longName, longText] = [...texts].find(([file]) => file.includes(longDevice)) ?? [fileId('none.ifu.yaml'), ''];
texts.set(longName, longFile(longText, 400));

const engine = new Engine({ rules: allRules, today: '2025-03-03' as IsoDate });
for (const [file, text] of texts) engine.set(file, text);
for (const file of texts.keys()) engine.findings(file);

const files = [...texts.keys()];
const isOfSite = (file: string) => file.startsWith('sites/');
const others = files.filter((file) => file !== 'library.ifu.yaml' && !isOfSite(file));
const site = files.filter(isOfSite);
const rows = [
  measured('a device file of 400 lines', [longName], Number(edits)),
  measured('any file but those of sites and the library', others, Number(edits)),
  measured('the file of a site', site, 5),
];
process.stdout.write(JSON.stringify(rows));

function measured(name: string, among: readonly FileId[], times: number): Keystrokes {
  const row: Keystrokes = { name, own: [], all: [], affected: [], parse: [] };
  for (let time = 0; time < times && among.length > 0; time++) {
    const file = seeded.pick(among);
    const text = edited(texts.get(file) ?? '');
    const begin = performance.now();
    const affected = engine.set(file, text);
    engine.findings(file);
    const own = performance.now();
    for (const other of affected) engine.findings(other);
    const all = performance.now();
    parseDocument(text);
    const parsed = performance.now();
    row.own.push(own - begin);
    row.all.push(all - begin);
    row.affected.push(affected.length);
    row.parse.push(parsed - all);
  }
  return row;
}

/** One digit somewhere in the text becomes another. */
function edited(text: string): string {
  const from = seeded.below(text.length);
  return text.slice(0, from) + text.slice(from).replace(/\d/, String(seeded.below(10)));
}
