import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity } from '../../model/node.ts';
import { cardStamp } from '../../route/stamp.ts';
import { amount, type Printing } from '../amounts.ts';
import type { Line } from '../piece.ts';
import { lineIf, originOf, said } from '../piece.ts';
import type { Card, Fact } from './card.ts';
import { cleaningBand } from './cleaning.ts';
import { coolingBand } from './cooling.ts';
import { draftReasons, type OpenFinding } from './draft.ts';
import { callLines, libraryNotes, whyLines } from './foot.ts';
import { inspectionBand } from './inspection.ts';
import { packagingOf, packingBand } from './packing.ts';
import { type CardSource, cardSource } from './source.ts';
import { sterilizingBand } from './sterilizing.ts';

/**
 * The work card of a set, or undefined when no file holds the set. `day` is the day of printing; `findings` are all that are open in the
 * library: the card takes those that concern it.
 */
export function workCard(
  id: string,
  printing: Printing,
  day: string,
  findings: readonly OpenFinding[],
): Card | undefined {
  const set = printing.view.get('set', id);
  const stamp = printing.view.ask(cardStamp, id);
  if (set?.id === undefined || stamp === undefined) return undefined;
  const source = cardSource(set, printing);
  return {
    set: id,
    name: said(set.name ?? set.id),
    stamp,
    day,
    facts: factsOf(source),
    bands: [cleaningBand, inspectionBand, packingBand, sterilizingBand, coolingBand].map((make) => make(source)),
    why: whyLines(source),
    call: callLines(printing),
    notes: libraryNotes(printing.view),
    draft: draftReasons(source, findings),
  };
}

function factsOf(source: CardSource): readonly Fact[] {
  const { set, printing } = source;
  const { head } = printing.words.card;
  const facts: Fact[] = [
    { label: head.items, line: itemCount(set) },
    { label: head.mass, line: massLine(set, printing) },
  ];
  const limit = massLimit(source);
  if (limit !== undefined) facts.push({ label: head.massLimit, line: [amount(limit, printing)] });
  for (const levels of lineIf(set.levels, (count): Line => [amount(count, printing)]))
    facts.push({ label: head.levels, line: levels });
  for (const owner of lineIf(set.owner, (role): Line => [said(role)])) facts.push({ label: head.owner, line: owner });
  return facts;
}

/** All pieces of the count sheet. A line without a number counts as one piece. */
function itemCount(set: EntityOf['set']): Line {
  let count = 0;
  const from: string[] = [];
  for (const line of set.members?.items ?? []) {
    const isReadable = line.qty !== undefined && line.qty.problem === undefined;
    count += isReadable ? (line.qty?.value ?? 1) : 1;
    from.push(originOf((line.qty ?? line).at));
  }
  return [{ text: String(count), from, how: 'sum' }];
}

function massLine(set: EntityOf['set'], printing: Printing): Line {
  const { head } = printing.words.card;
  if (set.mass === undefined) return [head.notWeighed];
  return head.weighed(
    amount(set.mass, printing),
    set.mass_measured === undefined ? undefined : said(set.mass_measured),
  );
}

/** The lowest of what the packaging, the site, the machine and the members' pages allow. */
function massLimit(source: CardSource): Quantity | undefined {
  const { way, members, printing } = source;
  const limits = [
    packagingOf(source)?.mass_max,
    printing.view.site()?.thresholds?.rows.get('set_mass')?.value.at_most,
    way?.cycle.item_mass_max,
    ...members.map(({ device }) => device?.packaging?.max_mass?.at_most),
  ];
  let lowest: Quantity | undefined;
  for (const limit of limits) {
    if (limit === undefined || limit.problem !== undefined) continue;
    if (lowest === undefined || limit.value < lowest.value) lowest = limit;
  }
  return lowest;
}
