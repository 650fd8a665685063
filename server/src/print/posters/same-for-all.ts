import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { nodesIn } from '../../model/walk.ts';
import { demandOf } from '../../rules/support/limits-of.ts';
import { demanded, type Printing, term } from '../amounts.ts';
import { citationLine } from '../card/foot.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { joined, said } from '../piece.ts';
import { termIn } from '../words/words.ts';
import type { PosterBody } from './poster.ts';

const limitsShown = 4;

/** One cleaning for all; the exception with its number; longest soaking times that pages state, as the reason. */
export function sameForAll(printing: Printing): PosterBody {
  const { same } = printing.words.poster;
  const limits = printing.view.all('device').flatMap((device) => soakLines(device, printing));
  return {
    lines: [...same.steps.map((step): Line => [step]), ...limits.slice(0, limitsShown)],
    loud: [same.exception, ': ', ...callLine(printing)],
    sources: prionSources(printing),
  };
}

/** Whom the site names for it, else infection prevention without a number. */
function callLine(printing: Printing): Line {
  const { view, words } = printing;
  const contacts = view.site()?.contacts?.items ?? [];
  const contact =
    contacts.find(({ role }) => role?.text === 'infection-prevention') ??
    contacts.find((one) => one.for?.text.includes('prion') === true);
  if (contact?.role === undefined) return words.poster.same.call(termIn(words, 'infection-prevention'), undefined);
  return words.poster.same.call(
    term(contact.role, printing),
    contact.phone === undefined ? undefined : said(contact.phone),
  );
}

/** Soaks with a longest time. */
function soakLines(device: EntityOf['device'], printing: Printing): readonly Line[] {
  const lines: Line[] = [];
  for (const node of nodesIn(device)) {
    if (node.node !== 'record' || !('soak' in node)) continue;
    const { soak, src } = node as CleaningNode;
    if (soak === undefined || !Number.isFinite(demandOf(soak)?.high ?? Number.POSITIVE_INFINITY)) continue;
    const [saying] = sayingsOf(device, soak.src ?? src);
    if (saying === undefined) continue;
    lines.push(
      printing.words.poster.same.soak(nameOf(device, ''), demanded(soak, printing), citationLine(saying, printing)),
    );
  }
  return lines;
}

function prionSources({ view, words }: Printing): readonly Line[] {
  const lines = view
    .all('procedure')
    .filter(({ topics }) => topics?.items.some(({ text }) => text === 'prion') === true)
    .flatMap((procedure) =>
      (procedure.sources?.items ?? []).map(
        (source): Line =>
          joined(
            [
              [nameOf(procedure, procedure.id?.text ?? '')],
              source.doc === undefined ? [] : [said(source.doc)],
              source.clause === undefined ? [] : [said(source.clause)],
            ],
            ', ',
          ),
      ),
    );
  return lines.length > 0 ? lines : [[words.poster.noSource]];
}
