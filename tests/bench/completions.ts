/**
 * How long it takes to say what may be written at a place, in a library held in memory, right after an edit of the file. Beside it, in the
 * same loop, `yaml` parses the same text. Also what stands beside a file: lenses and hints. Usage: completions FOLDER TIMES. Prints JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import type { FileId, IsoDate } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { completionsAt } from '../../server/src/editor/completion/completion.ts';
import { inlayHintsOf } from '../../server/src/editor/inlay-hints.ts';
import { lensesOf } from '../../server/src/editor/lenses.ts';
import { Seeded } from './seeded.ts';

/** Times in milliseconds, one entry each time. */
export interface Completions {
  readonly name: string;
  readonly answer: number[];
  readonly parse: number[];
}

const [folder = '.', times = '200'] = process.argv.slice(2);
const seeded = new Seeded(77);
const texts = new Map<FileId, string>();
for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
  if (path.endsWith('.ifu.yaml'))
    texts.set(fileId(path.replaceAll('\\', '/')), readFileSync(join(folder, path), 'utf8'));
}
const engine = new Engine({ rules: [], today: '2025-03-03' as IsoDate });
for (const [file, text] of texts) engine.set(file, text);
const devices = [...texts.keys()].filter((file) => /\nkind: device\n/.test(texts.get(file) ?? ''));
const sets = [...texts.keys()].filter((file) => /\nkind: set\n/.test(texts.get(file) ?? ''));

const rows = [
  measured('a key or value of a device', devices, (text) => placeIn(text, /: |\n +/g)),
  measured('the device of a line of a set', sets, (text) => placeIn(text, /device: /g)),
  measured('the cycle of a set, with reasons', sets, (text) => placeIn(text, /\ncycle: /g)),
  besides('the lens above a device', devices, 'lens'),
  besides('the hints of a set', sets, 'hints'),
];
process.stdout.write(JSON.stringify(rows));

function measured(name: string, among: readonly FileId[], place: (text: string) => number): Completions {
  const row: Completions = { name, answer: [], parse: [] };
  for (let time = 0; time < Number(times) && among.length > 0; time++) {
    const file = seeded.pick(among);
    const text = texts.get(file) ?? '';
    const cursor = place(text);
    if (cursor < 0) continue;
    const broken = `${text.slice(0, cursor)}e${text.slice(cursor)}`;
    engine.set(file, broken);
    const record = engine.library.record(file);
    const begin = performance.now();
    if (record !== undefined) completionsAt(record, cursor, engine.view(), []);
    const answered = performance.now();
    parseDocument(broken);
    row.parse.push(performance.now() - answered);
    row.answer.push(answered - begin);
    engine.set(file, text);
  }
  return row;
}

function besides(name: string, among: readonly FileId[], what: 'lens' | 'hints'): Completions {
  const row: Completions = { name, answer: [], parse: [] };
  for (let time = 0; time < Math.min(40, Number(times)) && among.length > 0; time++) {
    const file = seeded.pick(among);
    const text = texts.get(file) ?? '';
    engine.set(file, `${text}# edited\n`);
    const entity = engine.library.record(file)?.entity;
    if (entity === undefined) continue;
    const begin = performance.now();
    if (what === 'lens') lensesOf(entity, engine.view());
    else inlayHintsOf(entity, engine.view());
    const answered = performance.now();
    parseDocument(text);
    row.parse.push(performance.now() - answered);
    row.answer.push(answered - begin);
    engine.set(file, text);
  }
  return row;
}

function placeIn(text: string, before: RegExp): number {
  const found = [...text.matchAll(before)];
  if (found.length === 0) return -1;
  const { index, 0: words } = found[seeded.below(found.length)] ?? { index: 0, 0: '' };
  return index + words.length;
}
