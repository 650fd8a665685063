import type { Fix } from '../../base/problem.ts';
import type { Span } from '../../base/span.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { keptPath, linkFrom, plainChecksum } from '../../library/kept-file.ts';
import { keptPathsIn } from '../../library/kept-paths.ts';
import type { Library } from '../../library/library.ts';
import type { LibraryView } from '../../library/view.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import { pathInPlaceOf } from '../writing/bare.ts';

/** A file that a document names and that is not where it says. */
export interface LostFile {
  readonly at: Text;
  readonly name: string;
  readonly checksum: string | undefined;
}

/** The PDFs that lie in a library, and what their bytes give. */
export interface PdfsAround {
  readonly paths: readonly string[];
  digests(paths: readonly string[]): ReadonlyMap<string, string>;
}

const mostOffers = 5;

/** The lost file whose name stands at `asked`. */
export function lostFileAt({ entity }: FileRecord, asked: Span, library: Library): LostFile | undefined {
  if (entity === undefined || !isOfKind(entity, 'document') || entity.file === undefined) return undefined;
  const { file: at, checksum } = entity;
  if (asked.end < at.at.span.start || at.at.span.end < asked.start) return undefined;
  const path = keptPath(at);
  if (path !== undefined && library.keptFile(path)?.state !== 'missing') return undefined;
  const name = at.text.slice(Math.max(at.text.lastIndexOf('/'), at.text.lastIndexOf('\\')) + 1);
  return { at, name, checksum: checksum === undefined ? undefined : plainChecksum(checksum.text) };
}

/**
 * Files elsewhere in the library that it may be: those with the stored checksum, whatever they are called, then those of its name. The
 * bytes of a file that another document names are not asked for: it is that document's.
 */
export function fixesOfLostFile(
  lost: LostFile,
  record: FileRecord,
  pdfs: PdfsAround,
  view: LibraryView,
): readonly Fix[] {
  const named = new Set(keptPathsIn(view));
  const hasName = (path: string): boolean => isSameName(path.slice(path.lastIndexOf('/') + 1), lost.name);
  const likely = pdfs.paths.filter((path) => hasName(path) || !named.has(path));
  likely.sort((a, b) => Number(hasName(b)) - Number(hasName(a)));
  const digests = lost.checksum === undefined ? undefined : pdfs.digests(likely);
  const isSame = (path: string): boolean => lost.checksum !== undefined && digests?.get(path) === lost.checksum;
  const found = [...likely.filter(isSame), ...likely.filter((path) => !isSame(path) && hasName(path))];
  return found.slice(0, mostOffers).flatMap((path) => {
    const link = linkFrom(rootOf(lost.at.at).file, path);
    if (link === undefined) return [];
    const { span } = lost.at.at;
    const text = pathInPlaceOf(record.text.slice(span.start, span.end), link);
    return [{ title: titleOf(link, lost, digests?.get(path)), edits: [{ span, text }] }];
  });
}

function titleOf(link: string, { checksum }: LostFile, digest: string | undefined): string {
  if (checksum === undefined || digest === undefined) return `Name "${link}": a file of that name lies there`;
  return digest === checksum
    ? `Name "${link}": that is the file with the stored checksum`
    : `Name "${link}": a file of that name, but not the one with the stored checksum`;
}

function isSameName(one: string, other: string): boolean {
  return one.normalize('NFC').toLowerCase() === other.normalize('NFC').toLowerCase();
}
