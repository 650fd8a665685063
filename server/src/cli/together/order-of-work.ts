import type { FileId } from '../../base/brand.ts';
import { neighbours } from '../../check/together/neighbours.ts';
import { mostPieces, sharesOf, workersOf } from '../../check/together/shares.ts';
import type { Library } from '../../library/library.ts';

/** Files that nobody shares out further: neighbours, which use each other's answers. */
const leastPiece = 8;

/** How many files a piece of work has. */
export function pieceLength(files: number): number {
  return Math.max(leastPiece, Math.ceil(files / (mostPieces - 1)));
}

export function piecesOf(files: number): number {
  return Math.ceil(files / pieceLength(files));
}

/**
 * The files that are asked for, piece by piece: everyone who has read the same files comes to the same. Neighbours are in one share. Within
 * it they are in the order of the library, which has files of a kind together: the same code over the same data is quicker by a tenth.
 */
export function piecesOfWork(
  library: Library,
  files: readonly FileId[],
  { asked, shares }: { readonly asked: Uint32Array; readonly shares: SharedArrayBuffer },
): readonly (readonly FileId[])[] {
  const wanted = new Set(asked);
  const order = neighbours(files.map((file) => library.record(file))).filter((place) => wanted.has(place));
  const length = pieceLength(asked.length);
  return sharesOf(piecesOf(asked.length), workersOf(shares)).flatMap(({ first, behind }) => {
    const places = order.slice(first * length, behind * length).sort((a, b) => a - b);
    return Array.from({ length: behind - first }, (_, piece) =>
      places.slice(piece * length, (piece + 1) * length).flatMap((place) => files[place] ?? []),
    );
  });
}
