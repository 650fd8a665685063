import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
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

const ending = '.result';
const daysKept = 30;
const largest = 200_000_000;

/** The file for one subject: its name gives nothing away. */
function pathFor(folder: string, subject: string): string {
  return join(folder, `${createHash('sha256').update(subject).digest('hex').slice(0, 32)}${ending}`);
}

/** What was kept for the subject under exactly this key, whole; undefined otherwise. Begins at a multiple of eight in memory. */
export function readResult(folder: string, subject: string, key: string): Uint8Array | undefined {
  try {
    const bytes = readFileSync(pathFor(folder, subject));
    const body = bytes.subarray(headLength);
    if (bytes.toString('latin1', 0, headLength) !== headOf(key, body)) return undefined;
    return bytes.byteOffset % 8 === 0 ? body : new Uint8Array(body);
  } catch {
    return undefined;
  }
}

/** Keeps one result a subject, in place of the one before. Readable by this user alone: it quotes the library. */
export function writeResult(folder: string, subject: string, key: string, body: Uint8Array): void {
  if (body.length > largest) return;
  const target = pathFor(folder, subject);
  const beside = `${target}.${crypto.randomUUID()}.tmp`;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeFileSync(beside, Buffer.concat([Buffer.from(headOf(key, body), 'latin1'), body]), {
      flag: 'wx',
      mode: 0o600,
    });
    renameSync(beside, target);
    forgetOld(folder);
  } catch {
    forget(beside);
  }
}

function forget(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // A folder that is no folder, or one that may not be written in.
  }
}

const headLength = 152;

/** The key, and what tells a whole body from a cut or damaged one. */
function headOf(key: string, body: Uint8Array): string {
  const head = `traywright-library ${key} ${createHash('sha256').update(body).digest('hex')}`;
  return `${head.padEnd(headLength - 1)}\n`;
}

/** Results of libraries that are no longer checked, and what a run that was killed left behind. Only files of our own names. */
function forgetOld(folder: string): void {
  const oldest = Date.now() - daysKept * 86_400_000;
  for (const name of readdirSync(folder)) {
    if (!/^[0-9a-f]{32}\.result(\.[0-9a-f-]{36}\.tmp)?$/.test(name)) continue;
    const path = join(folder, name);
    if ((statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? oldest) < oldest) rmSync(path, { force: true });
  }
}
