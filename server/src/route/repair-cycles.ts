import type { Judgement } from '../judge/outcome.ts';
import { unitNamed } from '../judge/unit-named.ts';
import type { Quantity } from '../model/node.ts';
import { amountOf } from '../model/scalars.ts';
import type { QuantityValue } from '../quantity/quantity.ts';
import { fromBase } from '../quantity/units.ts';
import { newCycleName, withQualified, withTimes } from './altered.ts';
import { allowedBy } from './bounds-at.ts';
import { isSterilized } from './candidates.ts';
import type { SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import { commonJudgements, optionFits } from './fits.ts';
import type { Repair } from './model.ts';
import { packingsOf } from './packings.ts';
import { bestFit, failing, hasGate, rankOf } from './ranks.ts';
import { effectOf, repair, routeWords, stillOpen } from './repair-trial.ts';
import { type Derivation, derive } from './route.ts';
import { cyclesFor } from './table.ts';

/** Cycles that are programmed but not qualified, where the qualification would help. */
export function qualifyRepairs(before: Derivation): readonly Repair[] {
  return cyclesOf(before).flatMap((means) => {
    if (rankOf(means.evidence.outcome) < failing || isGone(means)) return [];
    const after = derive(before.subject, withQualified(before.department, means));
    const effect = effectOf(before, after);
    if (effect === undefined) return [];
    const verified = [
      after.route.status === 'none'
        ? `${means.id} would settle the sterilization clash`
        : `with it: ${after.route.status} ${routeWords(after)}`,
    ];
    const words = {
      words: `Qualify ${means.id} on ${means.machine.name?.text ?? idOf(means.machine)}.`,
      verified,
      leaves: stillOpen(after),
      about: [means.id],
    };
    return [repair('qualify-cycle', effect, words, { change: 'qualify', cycle: means.id })];
  });
}

/**
 * A cycle with other times at a temperature the machine already runs, where the times that all members and a packaging demand can be
 * met at once. One proposal a machine, method and temperature.
 */
export function programRepairs(before: Derivation): readonly Repair[] {
  const seen = new Set<string>();
  const repairs: Repair[] = [];
  for (const means of cyclesOf(before)) {
    const kind = `${idOf(means.machine)} ${(means.cycle.modality ?? means.machine.modality)?.text} ${means.cycle.temp?.value}`;
    if (seen.has(kind) || isGone(means)) continue;
    const times = timesNeeded(before, means);
    if (times === undefined) continue;
    const after = derive(before.subject, withTimes(before.department, means, times));
    const effect = effectOf(before, after);
    if (effect === undefined) continue;
    seen.add(kind);
    const name = newCycleName(means, { ...means.cycle, ...asQuantities(means, times) });
    const verified = [
      'the times meet every member and the packaging at once',
      ...(after.route.status === 'none' ? [] : [`with it: ${after.route.status} ${routeWords(after)}`]),
    ];
    const leaves = ['the machine’s own instruction must allow these times', ...stillOpen(after)];
    repairs.push(
      repair(
        'program-cycle',
        effect,
        { words: `Program and qualify a cycle: ${name}.`, verified, leaves, about: [idOf(means.machine)] },
        { change: 'cycle', like: means.id, ...times },
      ),
    );
  }
  return repairs;
}

function cyclesOf({ subject, department }: Derivation): readonly SterilizerMeans[] {
  return cyclesFor(subject, department).flatMap((at) => department.sterilizing[at] ?? []);
}

/** Proposed or withdrawn: that is not a matter of qualification. */
function isGone({ machine, cycle }: SterilizerMeans): boolean {
  return machine.proposed?.on === true || machine.withdrawn_on !== undefined || cycle.withdrawn_on !== undefined;
}

interface Times {
  exposure?: QuantityValue;
  dry?: QuantityValue;
}

function asQuantities({ cycle }: SterilizerMeans, times: Times) {
  const quantity = (value: QuantityValue | undefined) =>
    value && ({ ...value, node: 'quantity', at: cycle.at, text: '' } as const);
  const [exposure, dry] = [quantity(times.exposure), quantity(times.dry)];
  return { ...(exposure && { exposure }), ...(dry && { dry }) };
}

/** The least exposure and drying that everything demands of a cycle like this one; undefined when that changes nothing. */
function timesNeeded(before: Derivation, means: SterilizerMeans): Times | undefined {
  const { exposure, dry } = means.cycle;
  if (exposure === undefined || dry === undefined || exposure.problem !== undefined || dry.problem !== undefined)
    return undefined;
  const needed = demandsOn(before, means);
  const longer = leastOf(before, needed, new Set<Judgement['parameter']>(['exposure']), exposure);
  const drier = leastOf(before, needed, new Set<Judgement['parameter']>(['steam-dry', 'packaging-dry']), dry);
  if (longer === undefined && drier === undefined) return undefined;
  return { ...(longer && { exposure: longer }), ...(drier && { dry: drier }) };
}

/** Every judgement on a cycle like this one in the set's best packaging. */
function demandsOn({ subject, department, sterilizing }: Derivation, means: SterilizerMeans): readonly Judgement[] {
  const at = department.sterilizing.indexOf(means);
  const [packing] = packingsOf(subject, department);
  if (packing === undefined) return [];
  const pack = { contents: sterilizing.table.contents, packing, at, department };
  const judgements = [...commonJudgements(pack)];
  for (const { device, quantity } of subject.members) {
    if (device === undefined || !isSterilized(device)) continue;
    const fits = optionFits({ device, quantity }, pack).filter((fit) => !hasGate(fit.judgements));
    judgements.push(...(bestFit(fits)?.judgements ?? []));
  }
  return judgements;
}

function leastOf(
  { subject, department }: Derivation,
  judgements: readonly Judgement[],
  parameters: ReadonlySet<Judgement['parameter']>,
  ours: Quantity,
): QuantityValue | undefined {
  let low = Number.NEGATIVE_INFINITY;
  for (const judgement of judgements) {
    if (!parameters.has(judgement.parameter)) continue;
    const id = judgement.demandedBy.slice(judgement.demandedBy.indexOf('/') + 1);
    const entity = subject.members.find((member) => member.id === id)?.device ?? department.packagingById.get(id);
    const allowed = entity === undefined ? undefined : allowedBy(judgement, entity, department.setting);
    if (allowed !== undefined) low = Math.max(low, allowed.interval.low);
  }
  if (!Number.isFinite(low) || low === ours.value) return undefined;
  return { ...amountOf(ours), value: low, amount: fromBase(low, unitNamed(ours.dimension, ours.unit)) };
}
