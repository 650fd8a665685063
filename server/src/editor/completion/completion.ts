import type { FileRecord } from '../../library/file-record.ts';
import type { LibraryView } from '../../library/view.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { Offer } from '../writing/offer.ts';
import { overMark, withoutMark } from '../writing/to-do.ts';
import { wantedAt } from '../writing/writing-shape.ts';
import type { NamedRule, Surroundings } from './completion-ids.ts';
import { holds, mostOffered } from './completion-ids.ts';
import type { Layout } from './completion-keys.ts';
import { keyOffers } from './completion-keys.ts';
import { kindOffers, ownIdOffers, settingOffers, statementOffers } from './completion-special.ts';
import { isOneOfMany, valueOffers } from './completion-values.ts';

/**
 * Part `completion`: what may be written at the cursor, best first. Knows nothing of sentences that are still to be read.
 */

export interface Offers {
  readonly offers: readonly Offer[];
  /** Set when more would fit: the editor should ask again as letters are typed. */
  readonly more: boolean;
}

/** What may be written at `cursor`, best first. The text need not be readable as a whole. */
export function completionsAt(
  record: FileRecord,
  cursor: number,
  view: LibraryView,
  rules: readonly NamedRule[],
): Offers {
  const open = withoutMark(record.text, cursor);
  const text = open?.text ?? record.text;
  const wanted = wantedAt(text, cursor);
  const isKindValue = wanted?.keys.join() === 'kind';
  if (wanted === undefined || isKindValue) return limited(kindOffers(record.text, cursor), record.text, cursor);
  const { slot } = wanted;
  const around: Surroundings = { entity: record.entity, view, rules };
  const style = slot.path[slot.path.length - 1]?.frame.style ?? 'block';
  const layout: Layout = {
    style,
    column: slot.column,
    step: fileForm(record.text).step,
    today: view.today,
    text,
  };
  const offers =
    wanted.as === 'key'
      ? [
          ...kindOffers(record.text, cursor),
          ...statementOffers(wanted, around),
          ...settingOffers(wanted, around),
          ...keyOffers(wanted, layout),
        ]
      : [...ownIdOffers(wanted, record.file), ...valueOffers(wanted, around, layout)];
  const whole = open === undefined ? offers : offers.map((offer) => overMark(offer, open));
  const { offers: few, more } = limited(whole, text, cursor);
  return { offers: few, more: more || (wanted.as !== 'key' && isOneOfMany(wanted, around)) };
}

/** Of very many only those that hold the typed letters in their order. */
function limited(offers: readonly Offer[], text: string, cursor: number): Offers {
  if (offers.length <= mostOffered) return { offers, more: false };
  const fitting = offers.filter(({ label, filter, span }) => holds(filter ?? label, text.slice(span.start, cursor)));
  return { offers: fitting.slice(0, mostOffered), more: true };
}
