import { fileId } from '../../server/src/base/brand.ts';
import { readRuleFile } from '../../server/src/library/file-record.ts';
import type { EntityOf } from '../../server/src/model/entities.generated.ts';
import { isOfKind } from '../../server/src/model/entity.ts';
import { nodesIn } from '../../server/src/model/walk.ts';
import type { Kind } from '../../server/src/schema/kinds.ts';

/**
 * The entity that a rule file of this text describes. `text` is the body; kind and id are put before it. A fault of form in a test's own
 * text fails the test, so that no test passes on a field that was never read.
 */
export function entityOf<K extends Kind>(kind: K, id: string, text: string): EntityOf[K] {
  const record = readRuleFile(fileId(`${id}.ifu.yaml`), `kind: ${kind}\nid: ${id}\n${text.trim()}\n`);
  const faults = record.problems.map((problem) => `${problem.rule}: ${problem.message}`);
  if (faults.length > 0) throw new Error(`${kind} ${id}: ${faults.join('; ')}`);
  if (record.entity === undefined || !isOfKind(record.entity, kind)) throw new Error(`${kind} ${id} was not read`);
  for (const node of nodesIn(record.entity)) {
    if (node.node === 'quantity' && node.problem !== undefined)
      throw new Error(`${kind} ${id}: ${node.text}: ${node.problem.fault}`);
  }
  return record.entity;
}
