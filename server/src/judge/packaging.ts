import type { Packaging, Validated } from '../model/entities/packaging.generated.ts';
import type { Sterilizer, SterilizerCycle } from '../model/entities/sterilizer.generated.ts';
import { isPast } from './evidence.ts';
import { givenOf } from './given.ts';
import { type CaseOf, factOf, judgeCase, judgeDemand } from './judgement.ts';
import { type Judgement, outcomeRanks, worstOf } from './outcome.ts';
import { isListed } from './peroxide.ts';
import { catchesSterilization, judgeProhibitions } from './prohibitions.ts';
import { holds, type Setting } from './setting.ts';
import { compareModality, contextOf } from './sterilization-gates.ts';
import { bandOf, hotEnd } from './temperature.ts';
import { isSteam } from './vocabulary.ts';

/** A packaging in a cycle of a machine, by the packaging's own instruction. */
export interface PackagingQuestion {
  readonly packaging: Packaging;
  readonly machine: Sterilizer;
  readonly cycle: SterilizerCycle;
  readonly setting: Setting;
}

/**
 * The packaging is a device with an instruction of its own: it must cover the cycle, and its demands bind together with those of what is
 * inside. Its entries are alternatives, each taken whole; the one that fits best is judged.
 */
export function judgePackaging(question: PackagingQuestion): readonly Judgement[] {
  const general = [...forbidden(question), ...discontinued(question)];
  const entry = bestEntry(question);
  return [...general, ...entry.judgements, ...judgeOwnDry(question), ...judgeOwnHeat(question)];
}

/** The entry for the cycle that fits best, with its judgements. No entry when none is for this kind of cycle. */
export function bestEntry(question: PackagingQuestion): {
  readonly entry?: Validated;
  readonly judgements: readonly Judgement[];
} {
  const { packaging, cycle } = question;
  const entries = packaging.validated?.items ?? [];
  let best: { entry: Validated; judgements: readonly Judgement[] } | undefined;
  for (const entry of entries) {
    const fit = fits(question, entry);
    if (fit === undefined) continue;
    const judgements = [cycleCase(question, fit, entry), ...judgeEntry(question, entry)];
    if (best === undefined || rank(judgements) < rank(best.judgements)) best = { entry, judgements };
  }
  if (best !== undefined) return best;
  const which = entries.length === 0 && packaging.validated === undefined ? 'not-encoded' : 'not-covered';
  const at = packaging.validated?.at ?? packaging.id?.at ?? packaging.at;
  const required =
    entries.map((entry) => `${entry.modality?.text ?? '?'} ${contextOf(entry.context)}`).join(' or ') ||
    'no cycle named';
  const given = describeCycle(question);
  return {
    judgements: [
      judgeCase('container-cycle', which, {
        by: packaging,
        required,
        given,
        at,
        factAt: cycle.id?.at,
        src: packaging.src,
      }),
    ],
  };
}

/** Lower fits better. Temperature and exposure tell which cycle an entry means; drying tells only how far ours falls short of it. */
function rank(judgements: readonly Judgement[]): number {
  let rank = outcomeRanks[worstOf(judgements)] * 1000;
  for (const { outcome, parameter } of judgements)
    if (outcome === 'fails') rank += parameter === 'packaging-dry' ? 1 : 10;
  return rank;
}

/** An entry without a method is for every method; without a use, for stored packs. */
function fits({ machine, cycle, setting }: PackagingQuestion, entry: Validated): CaseOf<'container-cycle'> | undefined {
  const modality = cycle.modality ?? machine.modality;
  if (modality === undefined || contextOf(entry.context) !== contextOf(cycle.context)) return undefined;
  const compared = entry.modality === undefined ? 'same' : compareModality(entry.modality.text, modality.text);
  if (compared === 'different') return undefined;
  if (compared === 'flush-pulse') return 'flush-pulse';
  if (entry.when !== undefined && !holds(setting, entry.when)) return 'conditional';
  const listed = entry.listed?.items;
  if (listed !== undefined && !isListed(new Set(listed.map((one) => one.text)), machine, cycle)) return 'listed-not';
  return 'covered';
}

function cycleCase(question: PackagingQuestion, which: CaseOf<'container-cycle'>, entry: Validated): Judgement {
  return judgeCase('container-cycle', which, {
    by: question.packaging,
    required:
      which === 'listed-not'
        ? (entry.listed?.items.map((one) => one.text).join(' or ') ?? '')
        : (entry.modality?.text ?? 'any method'),
    given: describeCycle(question),
    at: entry.at,
    factAt: question.cycle.id?.at,
    src: entry.src,
  });
}

function describeCycle({ machine, cycle }: PackagingQuestion): string {
  return `${(cycle.modality ?? machine.modality)?.text ?? '?'} ${contextOf(cycle.context)}`;
}

function judgeEntry(
  { packaging: by, machine, cycle, setting }: PackagingQuestion,
  entry: Validated,
): readonly Judgement[] {
  const { src } = entry;
  const judgements: Judgement[] = [];
  if (entry.temp !== undefined) {
    judgements.push(
      judgeDemand(
        { by, parameter: 'steam-temperature', requirement: entry.temp, src },
        factOf(cycle.temp, givenOf(cycle.temp)),
        setting,
      ),
    );
  }
  if (entry.exposure !== undefined) {
    judgements.push(
      judgeDemand(
        { by, parameter: 'exposure', requirement: entry.exposure, src },
        factOf(cycle.exposure, givenOf(cycle.exposure)),
        setting,
      ),
    );
  }
  if (entry.dry !== undefined && isSteam((cycle.modality ?? machine.modality)?.text)) {
    judgements.push(
      judgeDemand(
        { by, parameter: 'packaging-dry', requirement: entry.dry, src },
        factOf(cycle.dry, givenOf(cycle.dry)),
        setting,
      ),
    );
  }
  return judgements;
}

/** Drying demanded in every kind of steam cycle. */
function judgeOwnDry({ packaging, machine, cycle, setting }: PackagingQuestion): readonly Judgement[] {
  if (packaging.dry === undefined || !isSteam((cycle.modality ?? machine.modality)?.text)) return [];
  const demand = { by: packaging, parameter: 'packaging-dry', requirement: packaging.dry, src: packaging.src } as const;
  return [judgeDemand(demand, factOf(cycle.dry, givenOf(cycle.dry)), setting)];
}

function judgeOwnHeat({ packaging, cycle, setting }: PackagingQuestion): readonly Judgement[] {
  const setpoint = givenOf(cycle.temp);
  const requirement = packaging.limits?.temp;
  if (setpoint === undefined || requirement === undefined) return [];
  const given = hotEnd(bandOf(setpoint, cycle.band));
  return [
    judgeDemand(
      { by: packaging, parameter: 'heat-limit', requirement, src: packaging.limits?.src },
      factOf(cycle.temp, given),
      setting,
    ),
  ];
}

function forbidden({ packaging, machine, cycle, setting }: PackagingQuestion): readonly Judgement[] {
  const modality = (cycle.modality ?? machine.modality)?.text;
  const facts = { given: modality, factAt: cycle.modality?.at ?? cycle.at };
  return judgeProhibitions(
    packaging,
    (what) => catchesSterilization(what, modality, contextOf(cycle.context)),
    facts,
    setting,
  );
}

function discontinued({ packaging, setting }: PackagingQuestion): readonly Judgement[] {
  const { discontinued_on } = packaging;
  if (discontinued_on === undefined || !isPast(discontinued_on, setting.today)) return [];
  const facts = {
    by: packaging,
    required: 'packaging that is still made',
    given: `discontinued ${discontinued_on.text}`,
    at: discontinued_on.at,
  };
  return [judgeCase('packaging', 'discontinued', facts)];
}
