import type { Kind } from './kinds.ts';
import { schemas } from './schemas.generated.ts';
import type { RecordShape } from './shape.ts';
import { ShapeReader } from './shape.ts';

const reader = new ShapeReader(schemas);
const made = new Map<Kind, RecordShape>();

/** The shape of one kind's file. Made at first use: a check of one file needs one or two. */
export function shapeOf(kind: Kind): RecordShape {
  const known = made.get(kind);
  if (known !== undefined) return known;
  const shape = reader.kind(kind);
  made.set(kind, shape);
  return shape;
}
