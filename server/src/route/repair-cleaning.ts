import { isDetergent } from '../judge/agents.ts';
import type { Judgement } from '../judge/outcome.ts';
import { unitNamed } from '../judge/unit-named.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { formatInterval } from '../quantity/format.ts';
import { type Interval, intersectAll, isEmpty } from '../quantity/interval.ts';
import { imaginedDetergent, withDetergent } from './altered.ts';
import { allowedBy } from './bounds-at.ts';
import { type Department, idOf, type WasherMeans } from './equipment.ts';
import type { MemberRoute, Repair } from './model.ts';
import { effectOf, repair, stillOpen } from './repair-trial.ts';
import { type Derivation, derive } from './route.ts';

type Chemistry = EntityOf['chemistry'];

/** Another detergent in a washer cycle, for members that no washer cycle fits: one that is in stock first, else one of the pH demanded. */
export function chemistryRepairs(before: Derivation): readonly Repair[] {
  return before.route.members.flatMap((member) => (failsInWasher(member) ? (repairFor(before, member) ?? []) : []));
}

function failsInWasher({ cleaning }: MemberRoute): boolean {
  return cleaning?.stages.some(({ stage, outcome }) => stage === 'mechanical' && outcome === 'fails') === true;
}

function repairFor(before: Derivation, member: MemberRoute): Repair | undefined {
  const { department } = before;
  for (const chemistry of department.chemistry) {
    if (!isForMachines(chemistry)) continue;
    for (const means of department.washing) {
      const done = tryOut(before, member, means, chemistry, { chemistry: idOf(chemistry) });
      if (done !== undefined) return done;
    }
  }
  const ph = phDemanded(before, member);
  const like = department.chemistry.find(isForMachines);
  if (ph === undefined || like === undefined) return undefined;
  for (const means of department.washing) {
    const done = tryOut(before, member, means, imaginedDetergent(like, ph), { ph });
    if (done !== undefined) return done;
  }
  return undefined;
}

function isForMachines(chemistry: Chemistry): boolean {
  const agent = chemistry.id === undefined ? undefined : { word: chemistry.id, chemistry };
  return (
    agent !== undefined &&
    isDetergent(agent) &&
    chemistry.methods?.items.some(({ text }) => text === 'mechanical') === true
  );
}

function tryOut(
  before: Derivation,
  member: MemberRoute,
  means: WasherMeans,
  detergent: Chemistry,
  trial: { chemistry?: string; ph?: Interval },
): Repair | undefined {
  const changed = withDetergent(before.department, means, detergent, (word) => cleans(before.department, word));
  const after = derive(before.subject, changed);
  const now = after.route.members.find(({ device }) => device === member.device);
  if (now === undefined || now.cleaning?.outcome === 'fails') return undefined;
  const effect = effectOf(before, after);
  if (effect === undefined) return undefined;
  const words = `Use ${trial.ph === undefined ? idOf(detergent) : `a detergent of pH ${formatInterval(trial.ph, unitNamed('ph'))} as used`} in ${means.id} for ${member.device}.`;
  const leaves = [
    `every other family washed in ${means.id} must accept it`,
    'the cycle must be tested for cleaning again',
    ...stillOpen(after),
  ];
  const verified = [`${member.device} then fits ${means.id}`];
  return repair(
    'change-chemistry',
    effect,
    { words, verified, leaves, about: [member.device, means.id] },
    { change: 'detergent', washerCycle: means.id, ...trial },
  );
}

function cleans(department: Department, word: string): boolean {
  const chemistry = department.stock.chemistry(word);
  return chemistry?.id !== undefined && isDetergent({ word: chemistry.id, chemistry });
}

/** The pH that every statement of the member's page allows; undefined when none speaks of it, or when they leave nothing. */
function phDemanded({ subject, department }: Derivation, member: MemberRoute): Interval | undefined {
  const device = subject.members.find(({ id }) => id === member.device)?.device;
  const stage = member.cleaning?.stages.find((one) => one.stage === 'mechanical');
  if (device === undefined || stage === undefined) return undefined;
  const judged: readonly Judgement[] = [stage, ...stage.others].flatMap(({ judgements }) => judgements);
  const intervals = judged.flatMap((judgement) =>
    judgement.parameter === 'ph' ? (allowedBy(judgement, device, department.setting)?.interval ?? []) : [],
  );
  const common = intersectAll(intervals);
  return intervals.length === 0 || isEmpty(common) || !Number.isFinite(common.low + common.high) ? undefined : common;
}
