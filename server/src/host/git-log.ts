import { git } from './git.ts';

/** One recorded change of the library. */
export interface RecordedChange {
  /** `YYYY-MM-DD`. */
  readonly day: string;
  readonly commit: string;
  /** What its author wrote about it, first line. */
  readonly subject: string;
  /** Paths below the library's root. */
  readonly paths: readonly string[];
}

/** Fields are kept apart by characters that no subject or path holds. */
const format = '--format=%x1e%H%x1f%cs%x1f%s';

/** The latest recorded changes of some files of the library, newest first; or why there are none to read. */
export function changesOf(
  root: string,
  paths: readonly string[],
  most: number,
): readonly RecordedChange[] | { readonly why: string } {
  if (paths.length === 0) return [];
  const answer = git(root, [
    '--literal-pathspecs',
    'log',
    '--no-color',
    '-z',
    '--name-only',
    '--relative',
    `--max-count=${most}`,
    format,
    '--',
    ...paths,
  ]);
  if ('why' in answer) return answer;
  const changes: RecordedChange[] = [];
  for (const entry of answer.out.toString('utf8').split('\u001e').slice(1)) {
    const [commit = '', day = '', rest = ''] = entry.split('\u001f');
    const [subject = '', ...names] = rest.split('\0').map((part) => part.replace(/^\n/, ''));
    changes.push({ day, commit: commit.slice(0, 12), subject, paths: names.filter((name) => name !== '') });
  }
  return changes;
}

/** The commit that the library stands at, and whether files differ from it; undefined without a recorded history. */
export function standingAt(
  root: string,
): { readonly commit: string; readonly changed: 'as-recorded' | 'changed-since' } | undefined {
  const head = git(root, ['rev-parse', '--verify', '--quiet', 'HEAD']);
  if ('why' in head) return undefined;
  return { commit: head.out.toString('utf8').trim(), changed: isClean(root) ? 'as-recorded' : 'changed-since' };
}

function isClean(root: string): boolean {
  const filters = withoutFilters(root);
  if (filters === undefined) return false;
  const words = ['--porcelain', '-z', '--untracked-files=normal', '--ignore-submodules=all', '--', '.'];
  const status = git(root, [...filters, 'status', ...words]);
  return 'out' in status && status.out.length === 0;
}

/** To tell whether a file has changed git would start the programs that its settings name for the file. Undefined where one can't be switched off. */
function withoutFilters(root: string): readonly string[] | undefined {
  const named = git(root, [
    'config',
    '--name-only',
    '-z',
    '--get-regexp',
    '^filter\\..*\\.(clean|smudge|process|required)$',
  ]);
  // It fails, too, where nothing is named.
  const names = 'why' in named ? [] : named.out.toString('utf8').split('\0').slice(0, -1);
  if (names.some((name) => name.includes('='))) return undefined;
  return names.flatMap((name) => ['-c', `${name}=${name.endsWith('.required') ? 'false' : ''}`]);
}
