import type { Line, Piece } from '../piece.ts';

/** A line with values in their places: line`at least ${volume}`. Lines inside lines are flattened. */
export function line(parts: TemplateStringsArray, ...values: readonly (Piece | Line)[]): Line {
  const pieces: Piece[] = [];
  for (const [index, part] of parts.entries()) {
    if (part !== '') pieces.push(part);
    const value = values[index];
    if (value === undefined) continue;
    if (typeof value === 'string' || !isLine(value)) pieces.push(value);
    else pieces.push(...value);
  }
  return pieces;
}

function isLine(value: Piece | Line): value is Line {
  return Array.isArray(value);
}
