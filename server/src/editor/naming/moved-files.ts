import type { FileId } from '../../base/brand.ts';
import { fileId } from '../../base/brand.ts';
import type { Edit } from '../../base/problem.ts';
import { keptPath, linkFrom, pathFrom } from '../../library/kept-file.ts';
import type { Library } from '../../library/library.ts';
import { namedFilesOf } from '../../library/named-files.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { pathInPlaceOf } from '../writing/bare.ts';

/** A file or folder that gets another place: paths below the library's root. Without `to` it leaves the library. */
export interface Move {
  readonly from: string;
  readonly to: string | undefined;
}

/**
 * What must be written anew so that every path in the library goes on leading where it leads, once these moves are made. A path that leads
 * nowhere already, and one to or from a file that leaves the library, stays as it is: a finding tells of it.
 */
export function editsForMoves(moves: readonly Move[], library: Library): ReadonlyMap<FileId, readonly Edit[]> {
  const edits = new Map<FileId, readonly Edit[]>();
  for (const file of library.files()) {
    const record = library.record(file);
    if (record?.entity === undefined) continue;
    const { entity, text } = record;
    const own = [...leftOutAfter(moves, entity), ...linksAfter(moves, entity, library)].map(({ at, now }): Edit => {
      const { span } = at.at;
      return { span, text: pathInPlaceOf(text.slice(span.start, span.end), now) };
    });
    if (own.length > 0) edits.set(file, own);
  }
  return edits;
}

interface Change {
  readonly at: Text;
  readonly now: string;
}

function linksAfter(moves: readonly Move[], entity: AnyEntity, library: Library): readonly Change[] {
  const file = placeAfter(moves, rootOfEntity(entity).file);
  if (file === undefined) return [];
  return namedFilesOf(entity).flatMap((at) => {
    const path = keptPath(at);
    const target = path === undefined || isMissing(path, library) ? undefined : placeAfter(moves, path);
    if (target === undefined || pathFrom(fileId(file), at.text) === target) return [];
    const now = linkFrom(fileId(file), target);
    return now === undefined ? [] : [{ at, now }];
  });
}

function isMissing(path: string, library: Library): boolean {
  return library.keptFile(path)?.state === 'missing';
}

/** The folders that the library's own file leaves out. */
function leftOutAfter(moves: readonly Move[], entity: AnyEntity): readonly Change[] {
  if (!isOfKind(entity, 'library')) return [];
  return (entity.generated?.items ?? []).flatMap((at) => {
    const [, before = '', name = '', after = ''] = /^(\.\/)?(.*?)(\/?)$/s.exec(at.text) ?? [];
    const now = name === '' ? undefined : placeAfter(moves, name);
    return now === undefined || now === name ? [] : [{ at, now: `${before}${now}${after}` }];
  });
}

/** Where a path lies after the moves. Of several that take it along, the nearest one counts. */
function placeAfter(moves: readonly Move[], path: string): string | undefined {
  let nearest: Move | undefined;
  for (const move of moves) {
    const isTaken = path === move.from || path.startsWith(`${move.from}/`);
    if (isTaken && (nearest === undefined || nearest.from.length < move.from.length)) nearest = move;
  }
  if (nearest === undefined) return path;
  return nearest.to === undefined ? undefined : `${nearest.to}${path.slice(nearest.from.length)}`;
}
