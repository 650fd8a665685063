import type { Judgement } from '../judge/outcome.ts';
import { isSterilized } from './candidates.ts';
import { commonJudgements, optionFits } from './fits.ts';
import { allowedIn } from './governing.ts';
import type { NearMissCycle, NearMissRow } from './model.ts';
import { packingsOf } from './packings.ts';
import { bestFit, hasGate, rankOf } from './ranks.ts';
import type { Derivation } from './route.ts';
import { cyclesFor } from './table.ts';

/** What differs from cycle to cycle. Mass and lumens are the same in all of them and stand in the governing table. */
const byCycle: ReadonlySet<Judgement['parameter']> = new Set([
  'steam-temperature',
  'control-band',
  'exposure',
  'pulses',
  'steam-dry',
  'packaging-dry',
  'heat-limit',
  'ethylene-oxide',
  'aeration',
  'aeration-temperature',
]);

/**
 * For every number that some cycle of the right method misses: what is required, and what each cycle gives, in the packaging of the
 * chosen route, else in the set's own.
 */
export function nearMisses(derivation: Derivation): readonly NearMissRow[] {
  const { subject, department, sterilizing, route } = derivation;
  const packings = packingsOf(subject, department);
  const packing =
    packings.find(
      (one) => one.packaging?.id?.text === route.chosen?.packaging && one.namedCase === route.chosen?.namedCase,
    ) ?? packings[0];
  if (packing === undefined) return [];
  const rows = new Map<string, { row: Omit<NearMissRow, 'cycles'>; cycles: NearMissCycle[] }>();
  for (const cycle of cyclesFor(subject, department)) {
    const means = department.sterilizing[cycle];
    if (means === undefined) continue;
    const pack = { contents: sterilizing.table.contents, packing, at: cycle, department };
    const judgements = [...commonJudgements(pack)];
    for (const { device, quantity } of subject.members) {
      if (device === undefined || !isSterilized(device)) continue;
      const fits = optionFits({ device, quantity }, pack);
      const best = bestFit(fits.filter((fit) => !hasGate(fit.judgements)));
      judgements.push(...(best?.judgements ?? []));
    }
    for (const judgement of judgements)
      if (byCycle.has(judgement.parameter))
        addTo(rows, judgement, derivation, { cycle: means.id, packaging: packing.packaging?.id?.text ?? '' });
  }
  return [...rows.values()]
    .filter(({ cycles }) => cycles.some(({ outcome }) => rankOf(outcome) > 1))
    .map(({ row, cycles }) => ({ ...row, cycles }));
}

function addTo(
  rows: Map<string, { row: Omit<NearMissRow, 'cycles'>; cycles: NearMissCycle[] }>,
  judgement: Judgement,
  derivation: Derivation,
  means: Pick<NearMissCycle, 'cycle' | 'packaging'>,
): void {
  const { parameter, required, demandedBy: who, outcome, given, givenRange, gap } = judgement;
  const key = `${who} ${parameter} ${required}`;
  const known = rows.get(key) ?? { row: rowOf(judgement, derivation), cycles: [] };
  if (known.cycles.every((one) => one.cycle !== means.cycle))
    known.cycles.push({ ...means, outcome, given, ...(givenRange && { givenRange }), gap: gap ?? '' });
  rows.set(key, known);
}

function rowOf(judgement: Judgement, derivation: Derivation): Omit<NearMissRow, 'cycles'> {
  const { parameter, required, demandedBy: who, demandAt: at, says } = judgement;
  const allowed = allowedIn(judgement, derivation)?.interval;
  return { parameter, required, who, at, says, ...(allowed && { allowed }) };
}
