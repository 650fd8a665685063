import type { Statement } from '../../model/entities/statement.generated.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Quantity } from '../../model/node.ts';
import type { SiteLimit } from './site-limits.ts';
import type { Transcribed } from './transcription.ts';
import { faultsNamed, readStatement } from './transcription.ts';
import { amountsIn } from './uncited.ts';
import type { Phrase } from './wording.ts';
import { isMentioned } from './wording.ts';

/** Words for a whole cycle. `cycles` is a count of uses. */
const wholeCycle: readonly Phrase[] = [['cycle'], ['programme'], ['program'], ['zyklus'], ['programm']];

export interface LongExposure {
  readonly quantity: Quantity;
  readonly at: Place;
  readonly statement: Statement;
}

/** Exposures of pre-vacuum options beyond the department's limit whose passage speaks of a cycle and not of a total time. */
export function* longExposures(entity: Transcribed, limit: SiteLimit): Iterable<LongExposure> {
  if (!isOfKind(entity, 'device')) return;
  const { sterilization } = entity;
  for (const { modality, exposure, total_time, src } of sterilization?.any_of?.items ?? []) {
    if (modality?.text !== 'steam-prevac' || exposure === undefined || total_time !== undefined) continue;
    const quantity = amountsIn(exposure).find((one) => one.value > limit.value);
    if (
      quantity === undefined ||
      faultsNamed(entity, 'exposure-vs-total-time').some(({ field }) => field?.record === exposure)
    )
      continue;
    const citation = exposure.src ?? src ?? sterilization?.src;
    for (const { text: id } of citation?.statements ?? []) {
      const read = readStatement(entity, id);
      if (read === undefined || !isMentioned(read.quote.text, wholeCycle)) continue;
      yield { quantity, at: exposure.at, statement: read.statement };
      break;
    }
  }
}
