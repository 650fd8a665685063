import { judgeContents, judgeDeviceContents } from '../../server/src/judge/contents.ts';
import { cleaningAlternatives } from '../../server/src/judge/demands.ts';
import { judgeCycleEvidence } from '../../server/src/judge/evidence.ts';
import { lumensOf } from '../../server/src/judge/lumens.ts';
import type { Judgement, Outcome } from '../../server/src/judge/outcome.ts';
import { outcomes } from '../../server/src/judge/outcome.ts';
import { judgePackaging } from '../../server/src/judge/packaging.ts';
import { judgePackagingStatement } from '../../server/src/judge/packaging-statement.ts';
import { routineSetting, type Setting } from '../../server/src/judge/setting.ts';
import { judgeSterilization } from '../../server/src/judge/sterilization.ts';
import { judgeWash } from '../../server/src/judge/washing.ts';
import type { LibraryView } from '../../server/src/library/view.ts';
import type { EntityOf } from '../../server/src/model/entities.generated.ts';
import type { RouteStatus } from '../../server/src/route/model.ts';

/*
 * Every way to process a set, tried one by one: no memory, no pruning, nothing shared with the solver but the judgements themselves.
 */

type Device = EntityOf['device'];

/** Which failing judgements count; everything that fails, unless a test leaves requirements out. */
export type InForce = (judgement: Judgement) => boolean;

export interface NaiveRoute {
  readonly status: RouteStatus;
  /** `P0 S0-c0 needs-answer` for every packaging and cycle that does not fail. */
  readonly feasible: readonly string[];
}

interface Line {
  readonly device: Device;
  readonly quantity: number;
}

const gates = new Set(['identity', 'modality', 'context', 'immediate-use']);

function linesOf(view: LibraryView, set: EntityOf['set']): readonly Line[] {
  return (set.members?.items ?? []).map(({ device, qty }) => {
    const found = device === undefined ? undefined : view.get('device', device.text);
    if (found === undefined) throw new Error('a random set names its devices');
    return { device: found, quantity: qty?.value ?? 1 };
  });
}

export function naiveRoute(view: LibraryView, set: EntityOf['set'], inForce: InForce = () => true): NaiveRoute {
  const lines = linesOf(view, set);
  const setting = routineSetting(view.today, view.site(), view.all('response'));
  const cleaning = worst(lines.map((line) => naiveCleaning(view, line, setting, inForce)));
  const found = sterilizations(view, set, lines, setting, inForce);
  const feasible = found.filter(({ outcome }) => outcome !== 'fails');
  const best = feasible.map(({ outcome }) => outcome).sort((a, b) => outcomes.indexOf(a) - outcomes.indexOf(b))[0];
  const names = feasible.map(({ name, outcome }) => `${name} ${outcome}`).sort();
  if (cleaning === 'fails' || best === undefined) return { status: 'none', feasible: names };
  return { status: cleaning === 'needs-answer' || best === 'needs-answer' ? 'provisional' : 'route', feasible: names };
}

/** The worst outcome, failing judgements that are not in force left out. */
function outcomeOf(judgements: readonly Judgement[], inForce: InForce): Outcome {
  return worst(judgements.filter((one) => one.outcome !== 'fails' || inForce(one)).map(({ outcome }) => outcome));
}

function worst(found: readonly Outcome[]): Outcome {
  return found.reduce<Outcome>((a, b) => (outcomes.indexOf(b) > outcomes.indexOf(a) ? b : a), 'meets');
}

function best(found: readonly Outcome[]): Outcome {
  return found.reduce<Outcome>((a, b) => (outcomes.indexOf(b) < outcomes.indexOf(a) ? b : a), 'fails');
}

function sterilizations(
  view: LibraryView,
  set: EntityOf['set'],
  lines: readonly Line[],
  setting: Setting,
  inForce: InForce,
) {
  const contents = {
    mass: set.mass,
    levels: set.levels,
    lumens: lines.flatMap(({ device, quantity }) => lumensOf(device, quantity)),
    accessories: [],
    others: [],
    inner: [],
    at: set.at,
  };
  const found: { name: string; outcome: Outcome }[] = [];
  for (const packaging of view.all('packaging')) {
    for (const machine of view.all('sterilizer')) {
      for (const cycle of machine.cycles?.items ?? []) {
        const common = [
          judgeCycleEvidence(machine, cycle, setting),
          ...judgePackaging({ packaging, machine, cycle, setting }),
          ...judgeContents({ packaging, contents, machine, cycle, setting }),
        ];
        const members = lines.map(({ device, quantity }) => {
          const options = (device.sterilization?.any_of?.items ?? []).map((option) => {
            const judged = judgeSterilization({ device, option, machine, cycle, quantity, setting });
            const own = judged.filter(({ parameter }) => parameter !== 'evidence');
            const otherKind = own.some(({ parameter, outcome }) => outcome === 'fails' && gates.has(parameter));
            const statements = otherKind ? [] : [option.packaging, device.packaging].filter((one) => one !== undefined);
            own.push(...statements.map((one) => judgePackagingStatement(device, one, { packaging }, setting)));
            return {
              otherKind,
              judgements: [...own, ...judgeDeviceContents(device, otherKind ? undefined : option, contents, setting)],
            };
          });
          const ofKind = options.filter(({ otherKind }) => !otherKind);
          return best((ofKind.length > 0 ? ofKind : options).map(({ judgements }) => outcomeOf(judgements, inForce)));
        });
        found.push({
          name: `${packaging.id?.text} ${cycle.id?.text}`,
          outcome: worst([outcomeOf(common, inForce), ...members]),
        });
      }
    }
  }
  return found;
}

/** The best complete way of cleaning one member. The random devices ask nothing of detergents at the sink. */
export function naiveCleaning(
  view: LibraryView,
  { device, quantity }: Line,
  setting: Setting,
  inForce: InForce,
): Outcome {
  const stock = { chemistry: (id: string) => view.get('chemistry', id), water: (id: string) => view.get('water', id) };
  const ways = cleaningAlternatives(device, setting).alternatives.map(({ stages }) =>
    worst(
      stages.map((demand) => {
        if (demand.stage === 'manual') return 'meets';
        const means: Outcome[] = [];
        for (const machine of view.all('washer')) {
          for (const cycle of machine.cycles?.items ?? [])
            means.push(outcomeOf(judgeWash({ device, demand, machine, cycle, stock, quantity, setting }), inForce));
        }
        return best(means);
      }),
    ),
  );
  return best(ways);
}
