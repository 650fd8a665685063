import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../../server/src/base/brand.ts';
import type { Judgement } from '../../../server/src/judge/outcome.ts';
import { routineSetting } from '../../../server/src/judge/setting.ts';
import { LibraryView, QueryAnswers } from '../../../server/src/library/view.ts';
import { pathOf } from '../../../server/src/model/node.ts';
import { clashesOf } from '../../../server/src/route/clash.ts';
import type { Atom, Clash, Repair, RepairTrial } from '../../../server/src/route/model.ts';
import { repairsFor } from '../../../server/src/route/repairs.ts';
import { type Derivation, deriveSet } from '../../../server/src/route/route.ts';
import { Seeded } from '../../bench/seeded.ts';
import { type InForce, naiveCleaning, naiveRoute } from '../../support/naive-routes.ts';
import { libraryOf, type RuleFile, randomDepartment } from '../../support/random-department.ts';

const today = '2025-03-03';

function look(files: readonly RuleFile[]): LibraryView {
  return new LibraryView(libraryOf(files), new Set(), new QueryAnswers(today as IsoDate));
}

function derivedOf(view: LibraryView): Derivation {
  const set = view.get('set', 'SET');
  if (set === undefined) throw new Error('the set is there');
  return deriveSet(view, set);
}

/** Fields of a device or packaging that stand on their own; all else that a page says of a cycle is one statement. */
const apart = new Set([
  'prohibition',
  'packaging',
  'mass',
  'levels',
  'load',
  'lumen',
  'heat-limit',
  'accessory',
  'filter',
  'cellulose',
  'evidence',
]);

function isMatched(atom: Atom, judgement: Judgement): boolean {
  if (atom.who !== judgement.demandedBy) return false;
  if (atom.key.endsWith(' offers'))
    return (
      !apart.has(judgement.parameter) &&
      !['ph', 'chemistry', 'connector', 'machine-step', 'thermal-disinfection', 'wash-temperature'].includes(
        judgement.parameter,
      )
    );
  return atom.parameter === judgement.parameter && pathOf(atom.at) === pathOf(judgement.demandAt);
}

function only(atoms: readonly Atom[]): InForce {
  return (judgement) => atoms.some((atom) => isMatched(atom, judgement));
}

/** Is there a route as far as the clash goes, with only these requirements in force? Worked out by trying every way. */
function isPossible(view: LibraryView, { about, of }: Clash, atoms: readonly Atom[]): boolean {
  const set = view.get('set', 'SET');
  if (set === undefined) throw new Error('the set is there');
  if (about === 'sterilization') return naiveRoute(view, set, only(atoms)).feasible.length > 0;
  const device = view.get('device', of);
  const quantity = set.members?.items.find((member) => member.device?.text === of)?.qty?.value ?? 1;
  return (
    device !== undefined &&
    naiveCleaning(view, { device, quantity }, routineSetting(today, view.site()), only(atoms)) !== 'fails'
  );
}

describe('every reported clash', () => {
  it('leaves no route, and with any one of its elements gone leaves one', { timeout: 120_000 }, () => {
    let clashes = 0;
    for (let seed = 1; seed <= 1_500; seed++) {
      const view = look(randomDepartment(seed).files);
      const derivation = derivedOf(view);
      const found = clashesOf(derivation);
      expect(found.length > 0, `seed ${seed}`).toBe(derivation.route.status === 'none');
      for (const clash of found) {
        clashes++;
        expect(isPossible(view, clash, clash.atoms), `seed ${seed}: ${clash.words}`).toBe(false);
        for (const atom of clash.atoms) {
          const rest = clash.atoms.filter((other) => other !== atom);
          expect(isPossible(view, clash, rest), `seed ${seed}: ${clash.words}: without ${atom.words}`).toBe(true);
        }
      }
    }
    expect(clashes).toBeGreaterThan(1_000);
  });

  it('comes in the same order every time, device before packaging before equipment before policy', () => {
    const ranks = ['device', 'packaging', 'equipment', 'policy'];
    for (let seed = 1; seed <= 200; seed++) {
      const { files } = randomDepartment(seed);
      const once = clashesOf(derivedOf(look(files))).map(({ words }) => words);
      const again = clashesOf(derivedOf(look([...files].reverse())));
      expect(again.map(({ words }) => words)).toEqual(once);
      for (const { atoms } of again) {
        const order = atoms.map(({ rank }) => ranks.indexOf(rank));
        expect(order).toEqual([...order].sort());
      }
    }
  });
});

type Fields = Record<string, unknown>;

/** The files with the change of a repair made by hand. */
function applied(files: readonly RuleFile[], trial: RepairTrial): readonly (readonly RuleFile[])[] {
  switch (trial.change) {
    case 'packs':
      return trial.packs.map((pack) => files.map((file) => (file.kind === 'set' ? packOf(file, pack) : file)));
    case 'packaging':
      return [files.map((file) => (file.kind === 'set' ? { ...file, packaging: trial.packaging } : file))];
    case 'qualify':
      return [
        withCycles(files, 'sterilizer', (cycles) =>
          cycles.map((cycle) => (cycle.id === trial.cycle ? { ...cycle, qualified: today } : cycle)),
        ),
      ];
    case 'cycle': {
      const times = Object.fromEntries(
        (['exposure', 'dry'] as const).flatMap((name) =>
          trial[name] === undefined ? [] : [[name, `${trial[name].amount} ${trial[name].unit}`]],
        ),
      );
      const added = (cycle: Fields) => ({ ...cycle, id: 'new', qualified: today, ...times });
      return [
        withCycles(files, 'sterilizer', (cycles) =>
          cycles.flatMap((cycle) => (cycle.id === trial.like ? [cycle, added(cycle)] : [cycle])),
        ),
      ];
    }
    case 'detergent':
      return [
        [
          ...withCycles(files, 'washer', (cycles) =>
            cycles.map((cycle) =>
              cycle.id === trial.washerCycle ? { ...cycle, doses: [trial.chemistry ?? 'NEW'] } : cycle,
            ),
          ),
          ...(trial.ph === undefined
            ? []
            : [
                {
                  kind: 'chemistry',
                  id: 'NEW',
                  class: 'neutral',
                  foam: 'low',
                  methods: ['mechanical'],
                  ph_in_use: { between: [String(trial.ph.low), String(trial.ph.high)], of: 'in-use' },
                },
              ]),
        ],
      ];
    case 'answers':
      return [];
  }
}

/** The mass of a pack that does not exist yet is not known; a light one stands for it. */
function packOf(file: RuleFile, pack: readonly string[]): RuleFile {
  const { packaging: _packaging, ...rest } = file;
  const members = (file.members as readonly Fields[]).filter(({ device }) => pack.includes(String(device)));
  return {
    ...rest,
    members,
    ...(members.length > 1 && { packaging: file.packaging }),
    mass: members.length === 1 ? '0.1 kg' : file.mass,
  } as RuleFile;
}

function withCycles(
  files: readonly RuleFile[],
  kind: string,
  change: (cycles: readonly Fields[]) => readonly Fields[],
): readonly RuleFile[] {
  return files.map((file) =>
    file.kind === kind ? { ...file, cycles: change(file.cycles as readonly Fields[]) } : file,
  );
}

const statuses = ['none', 'provisional', 'route'];

describe('every repair', () => {
  it('does what it says when it is made', { timeout: 180_000 }, () => {
    const tried = new Map<string, number>();
    for (let seed = 1; seed <= 1_000; seed++) {
      const { files } = randomDepartment(seed);
      const before = derivedOf(look(files));
      for (const repair of repairsFor(before)) {
        if (repair.trial === undefined || repair.trial.change === 'answers') continue;
        tried.set(repair.kind, (tried.get(repair.kind) ?? 0) + 1);
        const after = applied(files, repair.trial).map((changed) => derivedOf(look(changed)));
        expect(
          holds(repair, before, after),
          `seed ${seed}: ${repair.kind} ${repair.effect}: ${repair.words} ${after.map(({ route }) => route.status)}`,
        ).toBe(true);
      }
    }
    for (const kind of ['take-member-out', 'change-packaging', 'qualify-cycle', 'program-cycle', 'change-chemistry'])
      expect(tried.get(kind) ?? 0, kind).toBeGreaterThan(10);
  });
});

function holds({ effect, kind }: Repair, before: Derivation, after: readonly Derivation[]): boolean {
  const worst = Math.min(...after.map(({ route }) => statuses.indexOf(route.status)));
  if (effect === 'route' || effect === 'provisional') return worst >= statuses.indexOf(effect);
  // Part of a split: the rest has a route though one pack has none. Part of the rest: fewer things stand in the way.
  if (kind === 'take-member-out')
    return statuses.indexOf(after[0]?.route.status ?? 'none') > statuses.indexOf(before.route.status);
  return after.every((one) => one.route.status !== 'none' || clashesOf(one).length < clashesOf(before).length);
}

describe('adding a requirement', () => {
  it('never adds a route', { timeout: 60_000 }, () => {
    for (let seed = 1; seed <= 1_500; seed++) {
      const { files } = randomDepartment(seed);
      const before = derivedOf(look(files)).route;
      const after = derivedOf(look(stricter(files, new Seeded(seed)))).route;
      expect(statuses.indexOf(after.status), `seed ${seed}`).toBeLessThanOrEqual(statuses.indexOf(before.status));
      const fits = [before.chosen, ...before.alternatives].map((fit) => `${fit?.packaging} ${fit?.cycle}`);
      for (const fit of after.chosen === undefined ? [] : [after.chosen, ...after.alternatives])
        expect(fits).toContain(`${fit.packaging} ${fit.cycle}`);
    }
  });
});

/** One more demand, somewhere. */
function stricter(files: readonly RuleFile[], seeded: Seeded): readonly RuleFile[] {
  const device = (change: (file: RuleFile) => Fields) =>
    files.map((file) =>
      file.kind === 'device' && file.id === 'd0' ? ({ ...file, ...change(file) } as RuleFile) : file,
    );
  switch (seeded.below(5)) {
    case 0:
      return device((file) => ({
        not: [...((file.not as readonly unknown[]) ?? []), { what: seeded.pick(['steam', 'steam-prevac', 'vh2o2']) }],
      }));
    case 1:
      return device((file) => ({ limits: { ...(file.limits as Fields), temp: { at_most: '100 C' } } }));
    case 2:
      return device(() => ({ packaging: { max_mass: { at_most: '3 kg' } } }));
    case 3:
      return files.map((file) =>
        file.kind === 'packaging' && file.id === 'P0' ? ({ ...file, dry: { at_least: '40 min' } } as RuleFile) : file,
      );
    default:
      return files.map((file) =>
        file.kind === 'site'
          ? ({ ...file, thresholds: { set_mass: { at_most: '5 kg', src: 'policy' } } } as RuleFile)
          : file,
      );
  }
}
