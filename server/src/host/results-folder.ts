import {
  closeSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeSync,
} from 'node:fs';
import { isAbsolute, join } from 'node:path';

/*
 * A folder for results that can be worked out again at any time: a fault in it, or none at all, costs time and nothing else. So nothing
 * here throws, and whatever is not whole is as if it were not there.
 */

/** Where the system keeps such things for one person, outside every library. Undefined where the system names no such place. */
export function resultsFolder(env: Readonly<Record<string, string | undefined>>): string | undefined {
  const home = env.HOME ?? '';
  const place =
    process.platform === 'win32'
      ? env.LOCALAPPDATA
      : process.platform === 'darwin'
        ? join(home, 'Library', 'Caches')
        : (env.XDG_CACHE_HOME ?? join(home, '.cache'));
  return place === undefined || !isAbsolute(place) ? undefined : join(place, 'traywright');
}

/** What is kept of a subject: a large part that is written seldom, and a small one that says what became of it since. */
export type ResultPart = 'first' | 'later';

const endings: Readonly<Record<ResultPart, string>> = { first: '.result', later: '.later' };
const daysKept = 30;
const largest = 200_000_000;

/** The file for one subject: its name gives nothing away. Whoever reads it looks whether it is of that subject. */
function pathFor(folder: string, subject: string, part: ResultPart): string {
  const numbers = [0x811c9dc5, 0x9e3779b9, 0x85ebca6b, 0xc2b2ae35].map((begin) => numberOf(subject, begin));
  return join(folder, `${numbers.map((number) => number.toString(16).padStart(8, '0')).join('')}${endings[part]}`);
}

function numberOf(subject: string, begin: number): number {
  let number = begin;
  for (let at = 0; at < subject.length; at++) {
    number = Math.imul(number ^ subject.charCodeAt(at), 0x01000193);
    number ^= number >>> 15;
  }
  return number >>> 0;
}

/** What was kept for the subject; undefined where there is nothing. Begins at a multiple of eight in memory. */
export function readResult(folder: string, subject: string, part: ResultPart): Uint8Array | undefined {
  const path = pathFor(folder, subject, part);
  try {
    const bytes = readFileSync(path);
    return bytes.byteOffset % 8 === 0 ? bytes : new Uint8Array(bytes);
  } catch {
    return undefined;
  }
}

/** Keeps a part of a result in place of the one before. Readable by this user alone: it quotes the library. */
export function writeResult(folder: string, subject: string, part: ResultPart, pieces: readonly Uint8Array[]): void {
  if (pieces.reduce((sum, { length }) => sum + length, 0) > largest) return;
  const target = pathFor(folder, subject, part);
  const beside = `${target}.${oddName()}.tmp`;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writePieces(beside, pieces);
    renameSync(beside, target);
    if (part === 'first') forgetOld(folder);
    else stillUsed(pathFor(folder, subject, 'first'));
  } catch {
    forget(beside);
  }
}

/** Takes away what is kept of the subject in this part. */
export function forgetResult(folder: string, subject: string, part: ResultPart): void {
  forget(pathFor(folder, subject, part));
}

function writePieces(path: string, pieces: readonly Uint8Array[]): void {
  const handle = openSync(path, 'wx', 0o600);
  try {
    for (const piece of pieces)
      for (let written = 0; written < piece.length; ) written += writeSync(handle, piece, written);
  } finally {
    closeSync(handle);
  }
}

/** No two that are written at a time have the same. */
function oddName(): string {
  return [0, 1]
    .map(() =>
      Math.trunc(Math.random() * 2 ** 32)
        .toString(16)
        .padStart(8, '0'),
    )
    .join('');
}

/** It is old, but what was written beside it rests on it. */
function stillUsed(path: string): void {
  const now = Date.now() / 1000;
  utimesSync(path, now, now);
}

function forget(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // A folder that is no folder, or one that may not be written in.
  }
}

/** Results of libraries that are no longer checked, and what a run that was killed left behind. Only files of our own names. */
function forgetOld(folder: string): void {
  const oldest = Date.now() - daysKept * 86_400_000;
  for (const name of readdirSync(folder)) {
    if (!/^[0-9a-f]{32}\.(?:result|later)(?:\.[0-9a-f-]{16,36}\.tmp)?$/.test(name)) continue;
    const path = join(folder, name);
    if ((statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? oldest) < oldest) rmSync(path, { force: true });
  }
}
