import type { Kind } from '../../schema/kinds.ts';
import { isKind } from '../../schema/kinds.ts';
import type { Field, NamedKey, Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { unquoted } from './writing-flow.ts';
import { slotAt } from './writing-place.ts';
import type { Frame, FramePath, Slot } from './writing-scan.ts';

/** What the schema wants at the place that is being written. */
export interface Wanted {
  readonly slot: Slot;
  /** Of the word that is written there: what stands in front of the cursor. */
  readonly typed: string;
  readonly kind: Kind | undefined;
  /** `key`: a key of `shape`. `value`: a value of `shape`. `item`: an item of a list whose items are of `shape`. */
  readonly as: 'key' | 'value' | 'item';
  readonly shape: Shape;
  /** The field whose value, or item, is written. */
  readonly field: Field | undefined;
  /** The row of a table with names of its own, such as a limit. */
  readonly named: NamedKey | undefined;
  /** Examples of the requirement that is written, or that the place lies in. */
  readonly typical: readonly string[];
  /** Keys that lead here from the top; items of lists are left out. */
  readonly keys: readonly string[];
  /** The innermost map around the place, with what stands in it. */
  readonly around: Frame | undefined;
  /** Keys that stand already in the map that a key is written in, with what stands behind them on the line. */
  readonly present: ReadonlyMap<string, string>;
}

/** The place at `cursor` with what the schema of the file's kind wants there; undefined where it wants nothing that is known. */
export function wantedAt(text: string, cursor: number): Wanted | undefined {
  const slot = slotAt(text, cursor);
  const root = slot?.path[0]?.frame;
  if (slot === undefined || root === undefined) return undefined;
  const named = unquoted(root.present.get('kind') ?? '');
  const kind = isKind(named) ? named : undefined;
  const around = slot.path.findLast(({ frame }) => frame.of === 'map')?.frame;
  const inner = follow(slot.path, kind === undefined ? undefined : shapeOf(kind));
  if (inner.shape === undefined) return undefined;
  const inside = slot.at === 'key' ? around : slot.below;
  const present = inside?.present ?? new Map<string, string>();
  const typed = text.slice(slot.word.start, cursor);
  return { slot, typed, kind, around, present, ...inner, shape: inner.shape, as: roleOf(slot, inner) };
}

interface Followed {
  readonly shape: Shape | undefined;
  readonly field: Field | undefined;
  readonly named: NamedKey | undefined;
  readonly typical: readonly string[];
  readonly keys: readonly string[];
  readonly inList: boolean;
}

function follow(path: FramePath, root: Shape | undefined): Followed {
  let shape = root;
  let field: Field | undefined;
  let named: NamedKey | undefined;
  let inList = false;
  let typical: readonly string[] = [];
  const keys: string[] = [];
  for (const { frame, key } of path) {
    if (frame.of === 'list') {
      shape = shape?.form === 'list' ? shape.item : shape?.form === 'citation' ? shape : undefined;
      inList = true;
      continue;
    }
    if (key === undefined) continue;
    keys.push(key);
    inList = false;
    if (shape?.form === 'table') {
      named = shape.keys.get(key);
      shape = shape.value;
      field = undefined;
    } else {
      field = shape?.form === 'record' ? shape.fields.get(key) : undefined;
      shape = field?.shape;
      if (shape?.form === 'record' && shape.dimension !== undefined) typical = field?.examples ?? [];
    }
  }
  return { shape, field, named, typical, keys, inList };
}

function roleOf(slot: Slot, { shape, inList }: Followed): Wanted['as'] {
  if (slot.at === 'key') return 'key';
  if (slot.at === 'content' && (shape?.form === 'record' || shape?.form === 'table')) return 'key';
  return inList ? 'item' : 'value';
}
