import { spawnSync } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { dirname, posix } from 'node:path';
import { fileIdOf } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { fileProblem } from '../library/loaded-file.ts';
import { decodeBytes } from '../syntax/decode.ts';
import { isRuleFileName, staysInside } from './library-paths.ts';
import { byteLimit } from './read-text.ts';

/** What a recorded state of a library holds, or why it can't be read, in plain words. */
export type RecordedFiles =
  | { readonly files: readonly LoadedFile[]; readonly commit: string }
  | { readonly why: string };

/** Output longer than this is a mistake, not a library. */
const longestOutput = 512 * 1024 * 1024;

/**
 * The rule files below `root` (absolute) as they were recorded at a revision. git is started directly, never through a shell; a revision
 * can't be taken for an option; the repository's own hooks, monitors and helpers are switched off, and nothing is fetched.
 */
export function filesAtRevision(root: string, revision: string): RecordedFiles {
  if (revision === '' || revision.startsWith('-') || /\p{Cc}/u.test(revision))
    return { why: `"${revision}" is no name of a recorded state.` };
  const top = git(root, ['rev-parse', '--show-prefix']);
  if ('why' in top) return top;
  const commit = git(root, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`]);
  if ('why' in commit) return { why: missingWords(root, revision, commit.why) };
  const id = commit.out.toString('utf8').trim();
  if (!/^[0-9a-f]{40,64}$/.test(id)) return { why: missingWords(root, revision, '') };
  const prefix = top.out.toString('utf8').replace(/\n$/, '');
  const listed = git(root, ['ls-tree', '-r', '-z', '-l', '--full-tree', id]);
  if ('why' in listed) return { why: `The recorded state "${revision}" is not complete here: ${listed.why}` };
  return filesOf(root, entriesIn(listed.out, prefix), id);
}

/**
 * The text of one rule file as it was recorded; undefined where it was not there, can't be decoded or is too long. `commit` is an id as git
 * itself named it, `path` lies below `root`.
 */
export function ruleFileAt(root: string, commit: string, path: string): string | undefined {
  if (!/^[0-9a-f]{7,64}$/.test(commit) || !isRuleFileName(posix.basename(path)) || !staysInside(path)) return undefined;
  const blob = git(root, ['cat-file', 'blob', `${commit}:./${path}`]);
  if ('why' in blob || blob.out.length > byteLimit) return undefined;
  const decoded = decodeBytes(blob.out);
  return 'text' in decoded ? decoded.text : undefined;
}

interface TreeEntry {
  readonly path: string;
  readonly object: string;
  readonly size: number;
}

/** Ordinary rule files only: a link or a submodule is not followed here either. */
function entriesIn(out: Buffer, prefix: string): readonly TreeEntry[] {
  const entries: TreeEntry[] = [];
  for (const line of out.toString('utf8').split('\0')) {
    const parts = /^100(?:644|755) blob ([0-9a-f]{40,64}) +(\d{1,12})\t/.exec(line);
    if (parts === null) continue;
    const path = line.slice(parts[0].length);
    const inside = path.startsWith(prefix) ? path.slice(prefix.length) : '';
    if (!isRuleFileName(posix.basename(inside)) || !staysInside(inside)) continue;
    entries.push({ path: inside, object: parts[1] ?? '', size: Number(parts[2]) });
  }
  return entries.sort((a, b) => (a.path < b.path ? -1 : 1));
}

function filesOf(root: string, entries: readonly TreeEntry[], commit: string): RecordedFiles {
  const readable = entries.filter(({ size }) => size <= byteLimit);
  const contents =
    readable.length === 0
      ? { out: Buffer.alloc(0) }
      : git(root, ['cat-file', '--batch'], readable.map(({ object }) => object).join('\n'));
  if ('why' in contents) return contents;
  const bytes = blobsIn(contents.out);
  const files = entries.map(({ path, object, size }): LoadedFile => {
    const file = fileIdOf(path);
    const blob = bytes.get(object);
    const decoded = blob === undefined || size > byteLimit ? undefined : decodeBytes(blob);
    if (decoded === undefined)
      return {
        file,
        text: undefined,
        problems: [fileProblem('file-unreadable', 'The recorded file could not be read.')],
      };
    return 'text' in decoded
      ? { file, text: decoded.text, problems: [] }
      : { file, text: undefined, problems: [decoded.problem] };
  });
  return { files, commit };
}

/** `<object> blob <size>\n<bytes>\n`, again and again. */
function blobsIn(out: Buffer): ReadonlyMap<string, Buffer> {
  const blobs = new Map<string, Buffer>();
  for (let at = 0; at < out.length; ) {
    const end = out.indexOf(10, at);
    if (end < 0) break;
    const [object = '', type, size] = out.toString('latin1', at, end).split(' ');
    if (type === 'missing' || size === undefined) {
      at = end + 1;
      continue;
    }
    const start = end + 1;
    blobs.set(object, out.subarray(start, start + Number(size)));
    at = start + Number(size) + 1;
  }
  return blobs;
}

function missingWords(root: string, revision: string, why: string): string {
  const shallow = git(root, ['rev-parse', '--is-shallow-repository']);
  if ('out' in shallow && shallow.out.toString('utf8').trim() === 'true')
    return `This copy of the library holds only the newest part of its history, and the state "${revision}" is not in that part. Ask whoever looks after the library for a copy with the whole history (for them: git fetch --unshallow).`;
  return `There is no recorded state "${revision}" in this library’s history.${why === '' ? '' : ` ${why}`}`;
}

export type GitAnswer = { readonly out: Buffer } | { readonly why: string };

/** Settings of the repository that could start a program, switched off. */
const harmless = [
  '-c',
  'core.fsmonitor=false',
  '-c',
  'core.hooksPath=/dev/null',
  '-c',
  'protocol.allow=never',
  '-c',
  'core.pager=cat',
  '-c',
  'log.showSignature=false',
];

/** Runs git on a folder directly, with everything off that could start a program; words are given as they are, never through a shell. */
export function git(folder: string, words: readonly string[], input = ''): GitAnswer {
  const ran = spawnSync(
    'git',
    ['--no-pager', '--no-replace-objects', ...harmless, '-C', realpathSync.native(folder), ...words],
    {
      // Never the library's own folder: some systems look for programs there first.
      cwd: dirname(process.execPath),
      env: environment(),
      input,
      maxBuffer: longestOutput,
      shell: false,
      windowsHide: true,
      timeout: 120_000,
    },
  );
  if (ran.error !== undefined) {
    const code = 'code' in ran.error ? ran.error.code : undefined;
    return {
      why:
        code === 'ENOENT'
          ? 'Earlier states can’t be read on this computer: the program that keeps them (git) is not installed. Ask your support to install it.'
          : 'The program that keeps the earlier states (git) did not answer. Try again; if it stays so, ask your support.',
    };
  }
  if (ran.status === 0) return { out: ran.stdout };
  const said = ran.stderr.toString('utf8').split('\n')[0]?.slice(0, 300) ?? '';
  if (/not a git repository/.test(said))
    return {
      why: 'This folder has no recorded history, so there is no earlier state to compare with. Ask your support to have its states recorded (git) from now on.',
    };
  if (/dubious ownership/.test(said))
    return {
      why: 'The history of this folder can’t be read, because the folder belongs to another account of this computer. Ask your support (for them: git, safe.directory).',
    };
  return { why: said === '' ? '' : `The program that keeps the earlier states (git) said: ${said}` };
}

/** Variables that would lead git elsewhere are left out; it asks nobody anything and fetches nothing. */
function environment(): NodeJS.ProcessEnv {
  const kept: NodeJS.ProcessEnv = {};
  for (const [name, value] of Object.entries(process.env)) if (!name.startsWith('GIT_')) kept[name] = value;
  return { ...kept, GIT_TERMINAL_PROMPT: '0', GIT_OPTIONAL_LOCKS: '0', GIT_NO_LAZY_FETCH: '1', LC_ALL: 'C' };
}
