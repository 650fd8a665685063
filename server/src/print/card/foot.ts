import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { CycleDemand, CycleField } from '../../rules/support/set-demands.ts';
import { cycleFields, demandsOn } from '../../rules/support/set-demands.ts';
import { demanded, type Printing, term } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Value } from '../piece.ts';
import { originOf, said } from '../piece.ts';
import type { CardSource } from './source.ts';

/** `KL-3 rev. C, page 11`; every part keeps where it was read. */
export function citationLine(saying: Saying | undefined, { words }: Printing): Line {
  if (saying === undefined || saying.doc === '') return [];
  const at = originOf(saying.at);
  const part = (key: string, text: string): Value | undefined =>
    text === '' ? undefined : { text, from: [`${at}.${key}`] };
  const doc = part('doc', saying.doc);
  return doc === undefined ? [] : words.card.foot.citation(doc, part('rev', saying.rev), part('page', saying.page));
}

/** Of each number of the cycle, who sets it: the demand with the highest minimum, else the lowest maximum. */
export function whyLines({ way, printing }: CardSource): readonly Line[] {
  if (way === undefined) return [];
  const lines: Line[] = [];
  for (const field of [...cycleFields].reverse()) {
    const governing = governingOf(demandsOn(field, way.fit, printing.view));
    if (governing !== undefined) lines.push(whyLine(field, governing, printing));
  }
  return lines;
}

/** Of equal demands, the packaging's counts first: people forget that one. */
function governingOf(demands: readonly CycleDemand[]): CycleDemand | undefined {
  let best: CycleDemand | undefined;
  for (const one of demands) {
    if (best === undefined || weight(one) > weight(best)) best = one;
    else if (weight(one) === weight(best) && isOf(one, 'packaging') && !isOf(best, 'packaging')) best = one;
  }
  return best;
}

function isOf({ who }: CycleDemand, kind: string): boolean {
  return who.startsWith(`${kind}/`);
}

function weight({ demand }: CycleDemand): number {
  return Number.isFinite(demand.low) ? demand.low : -demand.high;
}

function whyLine(field: CycleField, { by, who, requirement, src }: CycleDemand, printing: Printing): Line {
  const { foot } = printing.words.card;
  const name = nameOf(by, who.slice(who.indexOf('/') + 1));
  return foot.reason(
    foot.reasons[field],
    demanded(requirement, printing),
    name,
    citationLine(sayingsOf(by, src)[0], printing),
  );
}

/** Whom to call, as the site file says. */
export function callLines(printing: Printing): readonly Line[] {
  const { view, words } = printing;
  return (view.site()?.contacts?.items ?? []).flatMap((contact) => {
    if (contact.role === undefined) return [];
    const topic = contact.for === undefined ? undefined : said(contact.for);
    const phone = contact.phone === undefined ? undefined : said(contact.phone);
    return [words.card.foot.contact(term(contact.role, printing), phone, topic)];
  });
}

/** What the library says about all of its papers, such as that it is a demonstration. */
export function libraryNotes(view: LibraryView): readonly Line[] {
  const library: EntityOf['library'] | undefined = view.all('library')[0];
  return (library?.notes?.items ?? []).map((note) => [said(note)]);
}
