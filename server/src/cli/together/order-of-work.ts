import type { FileId } from '../../base/brand.ts';
import { neighbours } from '../../check/together/neighbours.ts';
import { mostPieces } from '../../check/together/shares.ts';
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

/** The files that are asked for, piece by piece: everyone who has read the same files comes to the same. */
export function piecesOfWork(
  library: Library,
  files: readonly FileId[],
  asked: Uint32Array,
): readonly (readonly FileId[])[] {
  const wanted = new Set(asked);
  const order = neighbours(files.map((file) => library.record(file))).filter((place) => wanted.has(place));
  const length = pieceLength(asked.length);
  return Array.from({ length: piecesOf(asked.length) }, (_, piece) =>
    order.slice(piece * length, (piece + 1) * length).flatMap((place) => files[place] ?? []),
  );
}
