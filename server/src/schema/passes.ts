import type { Tree } from '../syntax/tree.ts';
import type { ConditionTable } from './condition.ts';
import { ConditionWalk } from './condition.ts';
import { conditionTable } from './conditions.generated.ts';
import type { Kind } from './kinds.ts';

let made: { readonly begins: ConditionTable['begins']; readonly walk: ConditionWalk } | undefined;

/** Undefined when the compiled schema of `kind` takes the tree, else the path of what it refuses. */
export function passesSchema(tree: Tree, kind: Kind): string | undefined {
  if (made === undefined) {
    const { begins, rows } = JSON.parse(conditionTable) as ConditionTable;
    made = { begins, walk: new ConditionWalk(rows) };
  }
  const refused = made.walk.refusal(made.begins[kind], tree);
  return refused === undefined ? undefined : `${refused} is refused`.trim();
}
