import type { IsoDate } from '../../base/brand.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';

/** Senders whose word is not the manufacturer's instruction. */
const salesRoles = ['sales', 'representative', 'rep', 'distributor', 'dealer'] as const;

export interface ResponseFault {
  readonly at: Place;
  readonly words: string;
}

/** Why an answer can't settle anything, in words that follow "this answer"; empty when it can. */
export function faultsOfResponse(response: EntityOf['response'], today: IsoDate): readonly ResponseFault[] {
  const faults: ResponseFault[] = [];
  const { from, expires, status, date } = response;
  if (from === undefined) faults.push({ at: response.at, words: 'does not say who sent it' });
  else if (isFromSales(from.text))
    faults.push({
      at: from.at,
      words: `comes from a ${from.text.replaceAll('-', ' ')}, whose word is not the manufacturer’s instruction`,
    });
  if (date === undefined) faults.push({ at: response.at, words: 'has no date' });
  if (response.about === undefined && response.doc === undefined) {
    faults.push({ at: response.at, words: 'does not say which device or document it is about' });
  }
  if (expires !== undefined && expires.text < today)
    faults.push({ at: expires.at, words: `expired on ${expires.text}` });
  if (status !== undefined && status.text !== 'verified') faults.push({ at: status.at, words: `is ${status.text}` });
  return faults;
}

function isFromSales(sender: string): boolean {
  const words = sender
    .toLowerCase()
    .slice(0, 200)
    .split(/[^a-z]+/);
  return salesRoles.some((role) => words.includes(role));
}
