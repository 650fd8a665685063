import type { List, Node, Rec } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Around, FieldClaim } from './field-claim.ts';
import { inside, placed } from './field-claim.ts';
import { cleaningStages } from './field-stages.ts';

interface StageCited {
  readonly stage: StageWord;
  readonly statements: readonly string[];
}

/** Stages that stand under one `all_of` or `any_of` and cite the same statement: one claim for two stages of different branches. */
export function structureClaims(record: Rec, around: Around): readonly FieldClaim[] {
  const claims: FieldClaim[] = [];
  for (const structure of ['all_of', 'any_of'] as const) {
    const list = fieldOf(record, structure);
    if (list?.node !== 'list') continue;
    for (const { stages, statement } of pairsIn(list, around)) {
      const under: Around = { ...around, statements: [statement] };
      claims.push({
        ...placed({ claim: 'structure', structure, stages }, list.at, record, under),
        repeats: 'everything',
      });
    }
  }
  return claims;
}

function* pairsIn(
  list: List<Node>,
  around: Around,
): Iterable<{ readonly stages: readonly StageWord[]; readonly statement: string }> {
  const branches = list.items.map((item) => (item.node === 'record' ? [...stagesIn(item, around)] : []));
  for (const [index, branch] of branches.entries()) {
    for (const first of branch) {
      for (const second of branches.slice(index + 1).flat()) {
        if (first.stage === second.stage) continue;
        for (const statement of first.statements) {
          if (second.statements.includes(statement)) yield { stages: [first.stage, second.stage], statement };
        }
      }
    }
  }
}

function* stagesIn(record: Rec, around: Around): Iterable<StageCited> {
  const here = inside(record, around);
  const stage = fieldOf(record, 'stage');
  const word = stage?.node === 'text' ? cleaningStages.get(stage.text) : undefined;
  if (word !== undefined) yield { stage: word, statements: here.statements };
  for (const key of ['all_of', 'any_of'] as const) {
    const list = fieldOf(record, key);
    if (list?.node !== 'list') continue;
    for (const item of list.items) if (item.node === 'record') yield* stagesIn(item, here);
  }
}
