/**
 * How long a person at the keyboard waits: from a change of a file of 400 lines until its findings, or until what may be written there, are
 * back from the server, with the floor server beside it, key by key in turn. Also how long the server needs for its first findings, and its
 * memory. Usage: latency SERVER FLOOR-SERVER PROBE FOLDER KEYS. Prints JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { longDevice, longFile } from './long-file.ts';
import { Seeded } from './seeded.ts';
import { Served } from './served.ts';
import type { Key } from './typist.ts';
import { Typist } from './typist.ts';

/** Times in milliseconds, one entry a key: ours and the floor server's. */
export interface Waits {
  readonly ours: number[];
  readonly floor: number[];
}

export interface Latency {
  /** From its start, in milliseconds: until what is wrong with the open file by itself is told, until all of it is, until all files are. */
  readonly ownFaults: number;
  readonly allFindings: number;
  readonly wholeLibrary: number;
  readonly keys: Waits;
  /** The same while the client asks with each key for all that it shows besides findings. */
  readonly amongQuestions: Waits;
  readonly completions: Waits;
  /** For a client that does not ask for findings: until those of its last key are sent. */
  readonly unasked: Waits;
  /** Largest resident memory. */
  readonly peakMb: number;
  readonly findings: number;
}

const [server = '', floorServer = '', probe = '', folder = '.', keys = '200'] = process.argv.slice(2);
const lines = 400;
const library = resolve(folder);
const path =
  readdirSync(library, { recursive: true, encoding: 'utf8' })
    .sort()
    .find((one) => one.endsWith('.ifu.yaml') && one.includes(longDevice)) ?? '';
const file = join(library, path);
/** One document number is wrong, so that there is something that only a look at the whole library finds. */
const written = longFile(readFileSync(file, 'utf8'), lines).replace(/^( +doc: )\S+/m, '$1NO-SUCH-9');
const typist = new Typist(written, new Seeded(400));
void measured().then((latency) => process.stdout.write(JSON.stringify(latency)));

async function measured(): Promise<Latency> {
  const floor = await Served.start(floorServer, library, file);
  await floor.open(typist.text);
  const begin = performance.now();
  const ours = await Served.start(server, library, file, probe);
  const counted = ours.watchAll();
  await ours.open(typist.text);
  const ownFaults = performance.now() - begin;
  const findings = (await ours.findingsOfRules()).length;
  const allFindings = performance.now() - begin;
  await counted;
  const wholeLibrary = performance.now() - begin;
  await typing(ours, floor, 20);
  const keyWaits = await typing(ours, floor, Number(keys));
  const amongQuestions = await typing(ours, floor, Number(keys) / 2, (key) => ours.typeAmongQuestions(key));
  const completions = await asking(ours, floor, Number(keys) / 4);
  const { peakMb } = JSON.parse(await ours.end()) as { peakMb: number };
  const unasked = await typingUnasked(floor, Number(keys) / 2);
  await floor.end();
  const waits = { keys: keyWaits, amongQuestions, completions, unasked };
  return { ownFaults, allFindings, wholeLibrary, ...waits, peakMb, findings };
}

/** With a server of its own, once it has checked the whole library. */
async function typingUnasked(floor: Served, count: number): Promise<Waits> {
  const ours = await Served.start(server, library, file, undefined, 'waits');
  const counted = ours.watchAll();
  await ours.open(typist.text);
  await counted;
  await typing(ours, floor, 20);
  const waits = await typing(ours, floor, count);
  await ours.end();
  return waits;
}

/** One person at one text: each part of the measuring goes on where the last one stopped. */
const typed = typist.keys();

/** Between two keys as much time passes as a fast typist leaves. */
const betweenKeys = 60;

async function typing(
  ours: Served,
  floor: Served,
  count: number,
  type: (key: Key) => Promise<unknown> = (key) => ours.type(key),
): Promise<Waits> {
  const waits: Waits = { ours: [], floor: [] };
  // At last what was begun is finished: nobody goes elsewhere in the middle of a word.
  for (let key = 0; key < count || typist.text !== written; key++) {
    const { value } = typed.next();
    await pause(betweenKeys);
    await timed(waits.ours, () => type(value));
    await timed(waits.floor, () => floor.type(value));
  }
  return waits;
}

/** A word begun at the end of the file, and one begun behind a field whose value was taken away. */
async function asking(ours: Served, floor: Served, count: number): Promise<Waits> {
  const waits: Waits = { ours: [], floor: [] };
  for (let time = 0; time < count; time++) {
    const isValue = time % 2 === 0;
    const end = isValue ? typist.placeAfter(/^ +(src|use|stage|do): /gm) : typist.text.length;
    if (end === undefined) continue;
    const removed = isValue ? typist.text.slice(end).search(/\n|$/) : 0;
    const old = typist.text.slice(end, end + removed);
    const begun = typist.put(end, removed, 's');
    await pause(betweenKeys);
    await timed(waits.ours, () => ours.typeAndAsk(begun));
    await timed(waits.floor, () => floor.typeAndAsk(begun));
    const back = typist.put(end, 1, old);
    await Promise.all([ours.type(back), floor.type(back)]);
  }
  return waits;
}

async function timed(waits: number[], work: () => Promise<unknown>): Promise<void> {
  const begin = performance.now();
  await work();
  waits.push(performance.now() - begin);
}
