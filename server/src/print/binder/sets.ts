import { clashesOfSet, governingOfSet } from '../../route/explanation.ts';
import type { GoverningRow } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import type { Printing } from '../amounts.ts';
import { nameOf, screenName } from '../card/cleaning-stages.ts';
import { decidedFit } from '../card/source.ts';
import type { Part } from '../paper.ts';
import type { Line } from '../piece.ts';
import { joined, said } from '../piece.ts';
import { citationOf } from '../sayings.ts';

/** Each set: its way and its governing table, or what stands against it. */
export function setParts(printing: Printing): readonly Part[] {
  const { view } = printing;
  return view.all('set').flatMap((set): readonly Part[] => {
    const id = set.id?.text ?? '';
    const route = view.ask(routeOfSet, id);
    if (route === undefined) return [];
    const heading: Part = {
      is: 'heading',
      level: 2,
      line: [nameOf(set, id), ...(set.id === undefined ? [] : [' (', said(set.id), ')'])],
    };
    const fit = decidedFit(set, route);
    const found = fit === undefined ? undefined : view.sterilizerCycle(fit.cycle);
    if (fit === undefined || found === undefined) {
      const clashes = view.ask(clashesOfSet, id).map(({ words }): Line => [words]);
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
      { is: 'table', head: ['What', 'Asked for', 'Given', 'By'], rows: view.ask(governingOfSet, id).map(governingRow) },
    ];
  });
}

function governingRow({ parameter, required, gives, governedBy }: GoverningRow): readonly Line[] {
  const by = governedBy.map(({ who, says }): Line => {
    const cited = says[0] === undefined ? [] : citationOf(says[0]);
    return [who.slice(who.indexOf('/') + 1), ...(cited.length === 0 ? [] : [' (', ...cited, ')'])];
  });
  return [[parameter], [required], [gives], joined(by, ', ')];
}
