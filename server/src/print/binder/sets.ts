import type { LibraryView, SterilizerCycle } from '../../library/view.ts';
import { clashesOfSet } from '../../route/explanation.ts';
import { governingTable } from '../../route/governing.ts';
import type { GoverningRow } from '../../route/model.ts';
import { deriveSet } from '../../route/route.ts';
import type { Printing } from '../amounts.ts';
import { decidedFit } from '../card/source.ts';
import { nameOf, nameOfWho, screenName } from '../names.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { joined, judged, said } from '../piece.ts';
import { citationOf, clashLine } from '../sayings.ts';

/** Each set: its way and its governing table, or what stands against it. */
export function setParts(printing: Printing): readonly Part[] {
  const { view } = printing;
  return view.all('set').flatMap((set): readonly Part[] => {
    const id = set.id?.text ?? '';
    const derivation = deriveSet(view, set);
    const { route } = derivation;
    const heading: Part = {
      is: 'heading',
      level: 2,
      line: [nameOf(set, id), ...(set.id === undefined ? [] : [' (', said(set.id), ')'])],
    };
    const fit = decidedFit(set, route);
    const found = fit === undefined ? undefined : view.sterilizerCycle(fit.cycle);
    if (fit === undefined || found === undefined) {
      const clashes = view.ask(clashesOfSet, id).map(clashLine);
      return [heading, { is: 'text', line: ['NO ROUTE.'] }, { is: 'list', items: clashes }];
    }
    const packaging = view.get('packaging', fit.packaging);
    const way: Line = [
      packaging === undefined ? fit.packaging : nameOf(packaging, fit.packaging),
      ', ',
      nameOf(found.machine, fit.machine),
      ', ',
      screenName(found.cycle, fit.cycle),
      route.status === 'provisional'
        ? '. Only if an open question is answered so.'
        : '. Consistent with the encoded instructions.',
    ];
    return [
      heading,
      { is: 'text', line: way },
      {
        is: 'table',
        head: ['What', 'Asked for', 'Given', 'By'],
        rows: governingTable(derivation, fit).map((row) => governingRow(row, found.cycle, view)),
      },
    ];
  });
}

function governingRow(
  { parameter, required, gives, givenAt, governedBy }: GoverningRow,
  cycle: SterilizerCycle,
  view: LibraryView,
): readonly Line[] {
  const by = governedBy.map(({ who, says }): Line => {
    const cited = says[0] === undefined ? [] : citationOf(says[0]);
    return [nameOfWho(who, view), ...(cited.length === 0 ? [] : [' (', ...cited, ')'])];
  });
  const asked = judged(
    required,
    governedBy.map(({ at }) => at),
  );
  return [[parameter], [asked], [judged(gives, [givenAt, cycle.band?.at])], joined(by, ', ')];
}
