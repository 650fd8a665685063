import type { LoadedFile } from '../library/loaded-file.ts';
import { filesAtRevision, git } from './git.ts';

/** The rule files of a library as they were at a recorded state, by its id; or why that can't be told. */
export type Before = { readonly files: readonly LoadedFile[]; readonly commit: string } | { readonly why: string };

/** The state at which the present line of work left `revision`, so that what others did there since is not taken for a change here. */
export function filesSince(root: string, revision: string): Before {
  const named = filesAtRevision(root, revision);
  if ('why' in named) return named;
  const base = git(root, ['merge-base', named.commit, 'HEAD']);
  if ('why' in base) return named;
  const commit = base.out.toString('utf8').trim();
  return commit === named.commit ? named : filesAtRevision(root, commit);
}
