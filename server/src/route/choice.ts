import type { Judgement } from '../judge/outcome.ts';
import { pathOf } from '../model/node.ts';
import type { Candidate } from './candidates.ts';
import type { Department } from './equipment.ts';
import type { ChoiceFact } from './model.ts';

/**
 * The order of choice, one step after the other: a later one counts only where all earlier ones are equal. It is data that every report
 * can show; the tool proposes, the educator picks.
 */
const steps: readonly ((candidate: Candidate, around: Around) => ChoiceFact)[] = [
  ({ fit }) => {
    const open = openQuestions(allOf(fit));
    return {
      by: 'fewest-open-questions',
      rank: open,
      words: open === 0 ? 'no open question' : counted(open, 'open question'),
    };
  },
  ({ packing }) => {
    const words = ['packed as the set’s file says', 'another packaging of the same kind', 'another kind of packaging'];
    return { by: 'packaging-of-the-set', rank: packing.distance, words: words[packing.distance] ?? '' };
  },
  ({ at }, { department }) => {
    const terminal = (department.sterilizing[at]?.cycle.context?.text ?? 'terminal') === 'terminal';
    return { by: 'terminal', rank: terminal ? 0 : 1, words: terminal ? 'for stored packs' : 'for immediate use' };
  },
  ({ fit }) => {
    const notes = allOf(fit).filter(({ outcome }) => outcome === 'meets-with-note').length;
    return {
      by: 'no-exceptional-step',
      rank: notes,
      words: notes === 0 ? 'nothing out of the ordinary' : counted(notes, 'note'),
    };
  },
  (candidate, { machines, department }) => {
    const many = machines.get(likeness(candidate, department))?.size ?? 1;
    return {
      by: 'second-machine',
      rank: many > 1 ? 0 : 1,
      words: many > 1 ? `${many} machines can do it` : 'one machine only',
    };
  },
  ({ at }, { department }) => {
    const usual = department.sterilizing[at]?.cycle.default?.on === true;
    return { by: 'usual-cycle', rank: usual ? 0 : 1, words: usual ? 'the usual cycle here' : 'not the usual cycle' };
  },
  ({ at }, { department }) => amount('lowest-heat', department.sterilizing[at]?.cycle.temp, 'temperature'),
  ({ at }, { department }) => amount('lowest-heat', department.sterilizing[at]?.cycle.exposure, 'exposure'),
  ({ at }, { department }) => amount('lowest-heat', department.sterilizing[at]?.cycle.dry, 'drying'),
  ({ at }, { department }) => amount('shortest', department.sterilizing[at]?.cycle.total_time, 'total'),
];

interface Around {
  readonly department: Department;
  /** Machines by what they would do alike. */
  readonly machines: ReadonlyMap<string, ReadonlySet<string>>;
}

/** The candidates with the facts of the choice, best first. Equal in all steps: by the names of packaging and cycle. */
export function inOrderOfChoice(candidates: readonly Candidate[], department: Department): readonly Candidate[] {
  const machines = new Map<string, Set<string>>();
  for (const candidate of candidates) {
    const alike = likeness(candidate, department);
    machines.set(alike, (machines.get(alike) ?? new Set()).add(candidate.fit.machine));
  }
  const around = { department, machines };
  const placed = candidates.map((candidate) => ({
    ...candidate,
    fit: { ...candidate.fit, choice: steps.map((step) => step(candidate, around)) },
  }));
  return placed.sort((a, b) => compareChoice(a.fit.choice, b.fit.choice) || compareText(nameOf(a), nameOf(b)));
}

/** Two machines can stand in for each other where the packaging, the method and the numbers are the same. */
function likeness({ packing, at }: Candidate, department: Department): string {
  const means = department.sterilizing[at];
  const cycle = means?.cycle;
  const numbers = [cycle?.temp, cycle?.exposure, cycle?.dry].map((one) => one?.value ?? '').join(' ');
  return `${packing.key} ${(cycle?.modality ?? means?.machine.modality)?.text ?? ''} ${numbers}`;
}

function nameOf({ fit }: Candidate): string {
  return `${fit.packaging} ${fit.namedCase ?? ''} ${fit.machine} ${fit.cycle}`;
}

export function allOf(fit: Candidate['fit']): readonly Judgement[] {
  return [...fit.common, ...fit.members.flatMap(({ judgements }) => judgements)];
}

/** Distinct places of a page that are a question. */
function openQuestions(judgements: readonly Judgement[]): number {
  const places = new Set<string>();
  for (const { outcome, demandedBy, demandAt } of judgements)
    if (outcome === 'needs-answer') places.add(`${demandedBy} ${pathOf(demandAt)}`);
  return places.size;
}

function compareChoice(a: readonly ChoiceFact[], b: readonly ChoiceFact[]): number {
  for (const [index, fact] of a.entries()) {
    const difference = fact.rank - (b[index]?.rank ?? 0);
    if (difference !== 0 && !Number.isNaN(difference)) return difference;
  }
  return 0;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function amount(
  by: ChoiceFact['by'],
  quantity: { readonly value: number; readonly text: string } | undefined,
  what: string,
): ChoiceFact {
  return {
    by,
    rank: quantity === undefined || Number.isNaN(quantity.value) ? 0 : quantity.value,
    words: quantity === undefined ? `${what} not given` : `${what} ${quantity.text}`,
  };
}

function counted(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}
