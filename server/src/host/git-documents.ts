import { createHash } from 'node:crypto';
import { git } from './git.ts';
import { keptFileBytes } from './kept-files.ts';

/**
 * Of these files below `root` (absolute), other than rule files, those that are not as they were recorded at `commit` (an id as git itself
 * named it): changed, new or gone. Their names in git are worked out here, so that git looks at none of them and none of its filters is run.
 */
export function documentsChangedSince(
  root: string,
  commit: string,
  paths: readonly string[],
): readonly string[] | { readonly why: string } {
  if (paths.length === 0) return [];
  // Without `--full-tree` git lists what lies below the folder, with paths from it.
  const listed = git(root, ['ls-tree', '-r', '-z', commit]);
  if ('why' in listed) return listed;
  const recorded = new Map<string, string>();
  for (const line of listed.out.toString('utf8').split('\0')) {
    const [, object = '', path = ''] = /^100(?:644|755) blob ([0-9a-f]{40,64})\t(.*)$/s.exec(line) ?? [];
    recorded.set(path, object);
  }
  return paths.filter((path) => !isAsRecorded(root, path, recorded.get(path)));
}

function isAsRecorded(root: string, path: string, object: string | undefined): boolean {
  const bytes = keptFileBytes(root, path);
  if (bytes === undefined || object === undefined) return bytes === undefined && object === undefined;
  return objectName(bytes, object.length) === object || pointsTo(root, object, bytes);
}

/** As git names a file's contents, by SHA-1 or, where a name is longer, SHA-256. */
function objectName(bytes: Uint8Array, length: number): string {
  const hash = createHash(length > 40 ? 'sha256' : 'sha1');
  return hash.update(`blob ${bytes.length}\0`).update(bytes).digest('hex');
}

/** Large files are often recorded elsewhere (git-lfs), with a few lines in their place that hold their SHA-256. */
function pointsTo(root: string, object: string, bytes: Uint8Array): boolean {
  const size = git(root, ['cat-file', '-s', object]);
  if ('why' in size || Number(size.out.toString('latin1')) > 1_024) return false;
  const pointer = git(root, ['cat-file', 'blob', object]);
  if ('why' in pointer) return false;
  const lines = pointer.out.toString('latin1');
  if (!lines.startsWith('version https://git-lfs.github.com/spec/v1\n')) return false;
  const named = /^oid sha256:([0-9a-f]{64})$/m.exec(lines)?.[1];
  return named !== undefined && named === createHash('sha256').update(bytes).digest('hex');
}
