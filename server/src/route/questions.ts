import type { Judgement } from '../judge/outcome.ts';
import { demanderCalled } from '../library/called.ts';
import type { LibraryView, Query } from '../library/view.ts';
import { pathOf, rootOf } from '../model/node.ts';
import { allOf } from './choice.ts';
import { citationWords } from './clash-words.ts';
import { judgementsOf } from './cleaning.ts';
import type { MakerLetter, SetRoute, UnlockingQuestion } from './model.ts';
import { type Derivation, deriveSet, routeOfSet } from './route.ts';
import { fitOf } from './sterilizing.ts';

/** Questions that stand between sets and a route: one letter a maker, those that free most sets first. */
export const openLetters: Query<string, readonly MakerLetter[]> = {
  name: 'open-letters',
  work: (view) => {
    const open = view.all('set').filter((set) => view.ask(routeOfSet, set.id?.text ?? '')?.status === 'provisional');
    return lettersOf(
      view,
      open.map((set) => deriveSet(view, set)),
    );
  },
};

/** The same for what is open in one set alone: cheap enough for every change. */
export const lettersOfSet: Query<string, readonly MakerLetter[]> = {
  name: 'letters-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? [] : lettersOf(view, [deriveSet(view, set)]);
  },
};

interface Gathered {
  readonly judgement: Judgement;
  readonly openIn: Set<string>;
  readonly unlocks: Set<string>;
}

function lettersOf(view: LibraryView, derivations: readonly Derivation[]): readonly MakerLetter[] {
  const gathered = new Map<string, Gathered>();
  for (const derivation of derivations) {
    const { route } = derivation;
    const settling = keysThatSettle(derivation);
    for (const judgement of openJudgements(route)) {
      const key = questionKey(judgement);
      const known = gathered.get(key) ?? { judgement, openIn: new Set<string>(), unlocks: new Set<string>() };
      known.openIn.add(route.id);
      if (settling.has(key)) known.unlocks.add(route.id);
      gathered.set(key, known);
    }
  }
  return merged([...gathered].map(([key, one]) => questionOf(view, key, one)));
}

/** As many ways are looked at for a single question that would settle the set. */
const waysLookedAt = 12;

/** Questions each of which is the only one left in some way to process the set. Nothing settles a set with unknown members. */
function keysThatSettle({ subject, department, sterilizing, route }: Derivation): ReadonlySet<string> {
  const settling = new Set<string>();
  if (route.members.some(({ unknown }) => unknown.length > 0)) return settling;
  for (const cell of sterilizing.feasible.slice(0, waysLookedAt)) {
    const chosen = fitOf(subject, sterilizing, cell, department);
    const keys = new Set(chosen === undefined ? [] : openJudgements({ ...route, chosen }).map(questionKey));
    const [only] = keys;
    if (only !== undefined && keys.size === 1) settling.add(only);
  }
  return settling;
}

/** What is open in the chosen route of a provisional set: only the maker of the device or packaging can settle it. */
export function openJudgements({ status, chosen, members }: SetRoute): readonly Judgement[] {
  if (status !== 'provisional') return [];
  const all = [
    ...(chosen === undefined ? [] : allOf(chosen)),
    ...members.flatMap(({ cleaning }) => (cleaning === undefined ? [] : judgementsOf(cleaning))),
  ];
  return all.filter(({ outcome }) => outcome === 'needs-answer');
}

export function questionKey({ demandedBy, demandAt }: Judgement): string {
  return `${demandedBy} ${pathOf(demandAt)}`;
}

function questionOf(view: LibraryView, key: string, { judgement, openIn, unlocks }: Gathered): UnlockingQuestion {
  const { demandedBy, says, demandAt } = judgement;
  return {
    key,
    maker: makerOf(view, judgement),
    about: demandedBy.slice(demandedBy.indexOf('/') + 1),
    words: questionWords(judgement, view),
    says,
    at: demandAt,
    unlocks: [...unlocks].sort(),
    openIn: [...openIn].sort(),
  };
}

/** What is asked, with its page: two sentences. */
export function questionWords({ demandedBy, says, required, given, reason }: Judgement, view: LibraryView): string {
  const about = demanderCalled(demandedBy, view);
  const citation = citationWords(says);
  return `${citation === '' ? about : `${about} (${citation})`}: the page gives ${required}; here it is ${given === '' ? 'not known' : given}. ${reason}`;
}

/** The maker of whoever demands, where the maker can settle it; else whoever can. */
function makerOf(view: LibraryView, { settledBy, demandAt }: Judgement): string {
  const { kind, id } = rootOf(demandAt);
  if (settledBy !== 'manufacturer' && settledBy !== 'vendor') return settledBy;
  const entity =
    kind === 'device' || kind === 'packaging' || kind === 'chemistry' || kind === 'sterilizer' || kind === 'washer'
      ? view.get(kind, id)
      : undefined;
  return entity?.maker?.text ?? settledBy;
}

function merged(questions: readonly UnlockingQuestion[]): readonly MakerLetter[] {
  const byMaker = new Map<string, UnlockingQuestion[]>();
  for (const question of questions) {
    const known = byMaker.get(question.maker);
    if (known === undefined) byMaker.set(question.maker, [question]);
    else known.push(question);
  }
  const letters = [...byMaker].map(([maker, own]) => ({
    maker,
    questions: own.sort(mostFreed),
    unlocks: [...new Set(own.flatMap(({ unlocks }) => unlocks))].sort(),
  }));
  return letters.sort((a, b) => b.unlocks.length - a.unlocks.length || (a.maker < b.maker ? -1 : 1));
}

function mostFreed(a: UnlockingQuestion, b: UnlockingQuestion): number {
  return b.unlocks.length - a.unlocks.length || b.openIn.length - a.openIn.length || (a.key < b.key ? -1 : 1);
}
