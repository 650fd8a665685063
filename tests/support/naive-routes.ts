import { type Contents, judgeContents, judgeDeviceContents } from '../../server/src/judge/contents.ts';
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
import type { LibraryView, SterilizerCycle } from '../../server/src/library/view.ts';
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

/** The set's lines, and its case where that is a device of its own. */
function linesOf(view: LibraryView, set: EntityOf['set']): readonly Line[] {
  const lines = (set.members?.items ?? []).map(({ device, qty }) => {
    const found = device === undefined ? undefined : view.get('device', device.text);
    if (found === undefined) throw new Error(`a line of ${set.id?.text} names no device that is here`);
    return { device: found, quantity: qty?.value ?? 1 };
  });
  const box = set.case === undefined ? undefined : view.get('device', set.case.text);
  return box === undefined || lines.some(({ device }) => device === box)
    ? lines
    : [...lines, { device: box, quantity: 1 }];
}

/** Everything that lies in the package as the set's file packs it. */
function contentsOf(view: LibraryView, set: EntityOf['set'], lines: readonly Line[]): Contents {
  const { mass, levels, accessories, contents, filter, valve, bottom, inner, double, at } = set;
  return {
    mass,
    levels,
    filter,
    valve,
    bottom,
    lumens: lines.flatMap(({ device, quantity }) => lumensOf(device, quantity)),
    accessories: accessories?.items ?? [],
    others: contents?.items ?? [],
    inner: (inner?.items ?? []).flatMap(({ packaging }) => view.get('packaging', packaging?.text ?? '') ?? []),
    packedTwice: double?.on === true ? double.at : undefined,
    at,
  };
}

/** Not everything in a tray needs a sterilizer: what is used on skin may have no cycle on its page. */
function isSterilized({ sterilization, class: level }: Device): boolean {
  return sterilization?.any_of !== undefined || level === undefined || level.text === 'critical';
}

export function naiveRoute(view: LibraryView, set: EntityOf['set'], inForce: InForce = () => true): NaiveRoute {
  const packing = packingOf(view, set);
  const cleaning = worst(packing.lines.map((line) => naiveCleaning(view, line, packing.setting, inForce)));
  const found = sterilizations(packing, inForce);
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

/** Every packaging with every cycle. */
function sterilizations(packing: NaivePacking, inForce: InForce): readonly { name: string; outcome: Outcome }[] {
  const { view } = packing;
  return view.all('packaging').flatMap((packaging) =>
    view.all('sterilizer').flatMap((machine) =>
      (machine.cycles?.items ?? []).map((cycle) => ({
        name: `${packaging.id?.text} ${cycle.id?.text}`,
        outcome: packedIn(packing, { packaging, machine, cycle }, inForce),
      })),
    ),
  );
}

/** One packaging in one cycle: `fails` where the department has no such thing. */
export function naiveOutcome(
  view: LibraryView,
  set: EntityOf['set'],
  { packaging: pack, cycle: run }: { readonly packaging: string; readonly cycle: string },
  inForce: InForce = () => true,
): Outcome {
  const packaging = view.get('packaging', pack);
  const machine = view.all('sterilizer').find(({ cycles }) => cycles?.items.some(({ id }) => id?.text === run));
  const cycle = machine?.cycles?.items.find(({ id }) => id?.text === run);
  return packaging === undefined || machine === undefined || cycle === undefined
    ? 'fails'
    : packedIn(packingOf(view, set), { packaging, machine, cycle }, inForce);
}

interface NaivePacking {
  readonly view: LibraryView;
  readonly set: EntityOf['set'];
  readonly lines: readonly Line[];
  readonly contents: Contents;
  readonly setting: Setting;
}

function packingOf(view: LibraryView, set: EntityOf['set']): NaivePacking {
  const lines = linesOf(view, set);
  const setting = routineSetting(view.today, view.site(), view.answersOfMakers());
  return { view, set, lines, contents: contentsOf(view, set, lines), setting };
}

interface Way {
  readonly packaging: EntityOf['packaging'];
  readonly machine: EntityOf['sterilizer'];
  readonly cycle: SterilizerCycle;
}

function packedIn(packing: NaivePacking, way: Way, inForce: InForce): Outcome {
  const { view, set, lines, contents, setting } = packing;
  const box = set.case === undefined ? undefined : view.get('packaging', set.case.text);
  const around = box === undefined ? [way.packaging] : [way.packaging, box];
  const common = [
    judgeCycleEvidence(way.machine, way.cycle, setting),
    ...around.flatMap((packaging) => judgePackaging({ ...way, packaging, setting })),
    ...around.flatMap((packaging) => judgeContents({ ...way, packaging, contents, setting })),
  ].filter((one) => counts(one, way, packing));
  const members = lines
    .filter(({ device }) => isSterilized(device))
    .map((line) => memberIn(line, packing, way, inForce));
  return worst([outcomeOf(common, inForce), ...members]);
}

/** Mats and filters were chosen for the packaging of the set's file, and are chosen anew with another. */
function counts({ parameter }: Judgement, { packaging }: Way, { set }: NaivePacking): boolean {
  return packaging.id?.text === set.packaging?.text || (parameter !== 'accessory' && parameter !== 'filter');
}

function memberIn({ device, quantity }: Line, packing: NaivePacking, way: Way, inForce: InForce): Outcome {
  const { set, contents, setting } = packing;
  const options = (device.sterilization?.any_of?.items ?? []).map((option) => {
    const judged = judgeSterilization({ device, option, ...way, quantity, setting });
    const own = judged.filter(({ parameter }) => parameter !== 'evidence');
    const otherKind = own.some(({ parameter, outcome }) => outcome === 'fails' && gates.has(parameter));
    const statements = otherKind ? [] : [option.packaging, device.packaging].filter((one) => one !== undefined);
    const packed = { packaging: way.packaging, namedCase: set.case?.text, isTwice: set.double?.on === true };
    own.push(...statements.map((one) => judgePackagingStatement(device, one, packed, setting)));
    const beside = judgeDeviceContents(device, otherKind ? undefined : option, contents, setting);
    return { otherKind, judgements: [...own, ...beside.filter((one) => counts(one, way, packing))] };
  });
  const ofKind = options.filter(({ otherKind }) => !otherKind);
  return best((ofKind.length > 0 ? ofKind : options).map(({ judgements }) => outcomeOf(judgements, inForce)));
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
