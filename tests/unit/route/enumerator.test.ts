import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../../server/src/base/brand.ts';
import type { Library } from '../../../server/src/library/library.ts';
import { LibraryView, QueryAnswers } from '../../../server/src/library/view.ts';
import type { SetRoute } from '../../../server/src/route/model.ts';
import { routeOfSet } from '../../../server/src/route/route.ts';
import { naiveRoute } from '../../support/naive-routes.ts';
import { libraryOf, randomDepartment } from '../../support/random-department.ts';

const cases = 5_000;

function look(library: Library): LibraryView {
  return new LibraryView(library, new Set(), new QueryAnswers('2025-03-03' as IsoDate));
}

function solved(view: LibraryView): SetRoute {
  const route = view.ask(routeOfSet, 'SET');
  if (route === undefined) throw new Error('the set is there');
  return route;
}

describe('small random departments', () => {
  it('agrees with trying every way, set by set', { timeout: 180_000 }, () => {
    const statuses = new Map<string, number>();
    for (let seed = 1; seed <= cases; seed++) {
      const view = look(libraryOf(randomDepartment(seed).files));
      const set = view.get('set', 'SET');
      if (set === undefined) throw new Error('the set is there');
      const expected = naiveRoute(view, set);
      const { status, chosen, alternatives } = solved(view);
      const feasible = [...(chosen === undefined ? [] : [chosen]), ...alternatives].map(
        (fit) => `${fit.packaging} ${fit.cycle} ${fit.outcome}`,
      );
      expect({ seed, status, feasible: feasible.sort() }).toEqual({
        seed,
        status: expected.status,
        feasible: [...expected.feasible].sort(),
      });
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
    }
    // All three kinds must be met often, or the agreement would say little.
    for (const status of ['route', 'provisional', 'none'])
      expect(statuses.get(status), status).toBeGreaterThan(cases / 20);
  });

  it('gives the same answer whatever the files are called', { timeout: 60_000 }, () => {
    for (let seed = 1; seed <= 500; seed++) {
      const { files } = randomDepartment(seed);
      const usual = solved(look(libraryOf(files)));
      const turned = solved(look(libraryOf(files, ({ kind, id }) => `${[...`${id}-${kind}`].reverse().join('')}`)));
      expect(summary(turned)).toEqual(summary(usual));
    }
  });
});

function summary({ status, chosen, alternatives, machines, washing, packagingChange }: SetRoute): unknown {
  const names = [...(chosen === undefined ? [] : [chosen]), ...alternatives].map(
    ({ packaging, cycle, outcome }) => `${packaging} ${cycle} ${outcome}`,
  );
  const options = chosen?.members.map(({ option }) => option);
  return { status, names, options, machines, washing, packagingChange };
}
