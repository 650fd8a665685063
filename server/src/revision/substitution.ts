import type { Judgement, Outcome } from '../judge/outcome.ts';
import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Node, Rec } from '../model/node.ts';
import { nodesIn } from '../model/walk.ts';
import type { CardCycle, MemberRoute } from '../route/model.ts';
import { rankOf } from '../route/ranks.ts';
import type { Kind } from '../schema/kinds.ts';
import { renamed } from './apply.ts';
import { reasonsOf } from './set-effect.ts';
import { type Standing, standingOfDevice, standingOfSet } from './standing.ts';
import type { Exchange, Trials } from './trials.ts';

/** One thing of the department in place of another: an agent, a packaging or a machine that goes, and the one that takes its place. */
export interface Swap {
  readonly kind: 'chemistry' | 'packaging' | 'washer' | 'sterilizer' | 'ultrasonic';
  readonly from: string;
  readonly to: string;
}

/** `ok`: nothing fails and nothing is open. `ask`: the maker has to answer first. `no`: something fails. */
export type SwapAnswer = 'ok' | 'ask' | 'no';

export interface SwapRow {
  /** `set/LAP-CHOLE-B`, `device/eye-tip`. */
  readonly of: string;
  /** What was looked at: `W1-std`, `by hand`, `S1-pv132-4-30 in P3-rigid-container`. */
  readonly where: string;
  readonly before: SwapAnswer | 'none';
  readonly after: SwapAnswer;
  /** Why it is not `ok` after. */
  readonly words: string;
}

/** The matrix of one swap: every set and every device family that it touches. Nothing is written; the department is only imagined. */
export interface Substitution {
  readonly swap: Swap;
  readonly sets: readonly SwapRow[];
  readonly families: readonly SwapRow[];
  /** Sets whose card names what goes: to be printed again. */
  readonly cards: readonly string[];
}

/** Undefined when the library holds neither, or only one, of the two. */
export function substitutionOf(swap: Swap, trials: Trials): Substitution | undefined {
  const view = trials.view();
  const [from, to] = [view.get(swap.kind, swap.from), view.get(swap.kind, swap.to)];
  if (from === undefined || to === undefined) return undefined;
  const users = usersOf(swap, view);
  const sets = setsTouched(swap, users, view);
  const devices = swap.kind === 'chemistry' ? [...view.ids('device')].sort() : [];
  const old = {
    sets: sets.map((id) => standingOfSet(view, id)),
    devices: devices.map((id) => standingOfDevice(view, id)),
  };
  const cycles = cyclesDosing(swap, view);
  const cards = sets.filter((id) => namesIt(view.get('set', id), swap, cycles, view));
  const exchanges: Exchange[] = users.map((entity) => ({
    old: entity,
    now: renamed(entity, swap.kind, swap.from, swap.to),
  }));
  return trials.with([...exchanges, { old: from as AnyEntity }], (after) => ({
    swap,
    sets: sets.flatMap((id, at) => setRows(old.sets[at], standingOfSet(after, id))),
    families: devices.flatMap((id, at) => familyRows(id, old.devices[at], standingOfDevice(after, id), swap, cycles)),
    cards,
  }));
}

const naming: readonly Kind[] = ['set', 'washer', 'ultrasonic', 'sterilizer', 'packaging', 'procedure'];

/** Files of the department that name what goes. What a maker's page names stays as the page has it. */
function usersOf({ kind, from }: Swap, view: LibraryView): readonly AnyEntity[] {
  return naming.flatMap((of) => view.users(kind, from, of)) as readonly AnyEntity[];
}

/** Sets that name it; of an agent and of a machine those whose card names one of the cycles. */
function setsTouched({ kind }: Swap, users: readonly AnyEntity[], view: LibraryView): readonly string[] {
  const named = users
    .filter((entity) => rootOfEntity(entity).kind === 'set')
    .map((entity) => rootOfEntity(entity).id as string);
  if (kind === 'packaging') return [...new Set(named)].sort();
  return [...view.ids('set')].sort();
}

function cyclesDosing({ kind, from }: Swap, view: LibraryView): ReadonlySet<string> {
  const cycles = new Set<string>();
  if (kind !== 'chemistry') return cycles;
  for (const washer of view.users('chemistry', from, 'washer'))
    for (const cycle of washer.cycles?.items ?? [])
      if (cycle.id !== undefined && mentions(cycle, from)) cycles.add(cycle.id.text);
  return cycles;
}

function mentions(node: Node, id: string): boolean {
  return nodesIn(node).some((one) => one.node === 'text' && one.text === id && one.refers !== undefined);
}

/** The set as it is used: its cycle in its packaging, and its washer cycle. Only what the swap changes makes a row. */
function setRows(before: Standing | undefined, after: Standing | undefined): readonly SwapRow[] {
  if (before === undefined || after === undefined) return [];
  const rows: SwapRow[] = [];
  const [was, is] = [before.used, after.used];
  if (was !== undefined && linesOf(was.judgements) !== linesOf(is?.judgements ?? []))
    rows.push(rowOf(before.id, is?.words ?? was.words, was.judgements, is?.judgements));
  const [washed, washes] = [before.washer, after.washer];
  if (washed !== undefined && washes !== undefined && isOther(washed, washes))
    rows.push(rowOf(before.id, washes.id, washed.judgements, washes.known ? washes.judgements : undefined));
  return rows;
}

function isOther(before: CardCycle, after: CardCycle): boolean {
  return before.known !== after.known || linesOf(before.judgements) !== linesOf(after.judgements);
}

function linesOf(judgements: readonly Judgement[]): string {
  return judgements
    .map(({ demandedBy, parameter, required, given, outcome }) =>
      [demandedBy, parameter, required, given, outcome].join(),
    )
    .join('|');
}

function rowOf(
  of: string,
  where: string,
  before: readonly Judgement[],
  after: readonly Judgement[] | undefined,
): SwapRow {
  const open = (after ?? []).filter(({ outcome }) => outcome === 'fails' || outcome === 'needs-answer');
  const words = after === undefined ? 'nothing here can do it' : reasonsOf(open);
  return {
    of,
    where,
    before: answerOf(worst(before)),
    after: after === undefined ? 'no' : answerOf(worst(after)),
    words,
  };
}

function worst(judgements: readonly Judgement[]): Outcome {
  let found: Outcome = 'meets';
  for (const { outcome } of judgements) if (rankOf(outcome) > rankOf(found)) found = outcome;
  return found;
}

function answerOf(outcome: Outcome): SwapAnswer {
  if (outcome === 'fails') return 'no';
  return outcome === 'needs-answer' ? 'ask' : 'ok';
}

interface Means {
  readonly outcome: Outcome;
  readonly judgements: readonly Judgement[];
}

/** A family in each washer cycle that doses the agent, and by hand. */
function familyRows(
  id: string,
  before: Standing | undefined,
  after: Standing | undefined,
  { from, to }: Swap,
  cycles: ReadonlySet<string>,
): readonly SwapRow[] {
  const [was, is] = [before, after].map((standing) => standing?.derivation.route.members[0]);
  const rows: SwapRow[] = [];
  for (const cycle of [...cycles].sort())
    rows.push(...meansRow(id, cycle, meansIn(was, 'mechanical', cycle), meansIn(is, 'mechanical', cycle)));
  const hand = meansIn(was, 'manual', from);
  if (hand !== undefined) rows.push(...meansRow(id, 'by hand', hand, meansIn(is, 'manual', to)));
  return rows;
}

function meansRow(id: string, where: string, before: Means | undefined, after: Means | undefined): readonly SwapRow[] {
  if (after === undefined) return [];
  const open = after.judgements.filter(({ outcome }) => outcome === 'fails' || outcome === 'needs-answer');
  return [
    {
      of: `device/${id}`,
      where,
      before: before === undefined ? 'none' : answerOf(before.outcome),
      after: answerOf(after.outcome),
      words: reasonsOf(open),
    },
  ];
}

/** How a stage goes with this means, over all ways of cleaning that the page offers: the best of them. */
function meansIn(member: MemberRoute | undefined, stage: string, means: string): Means | undefined {
  let best: Means | undefined;
  for (const way of member?.cleaning === undefined ? [] : [member.cleaning, ...member.otherCleaning]) {
    for (const fit of way.stages) {
      if (fit.stage !== stage) continue;
      const fitting = fit.fitting.find((one) => one.means === means);
      const other = fit.others.find((one) => one.means === means);
      const judgements = fit.means === means ? fit.judgements : (other?.judgements ?? []);
      const outcome = fit.means === means ? fit.outcome : (fitting?.outcome ?? (other && worst(other.judgements)));
      if (outcome !== undefined && (best === undefined || rankOf(outcome) < rankOf(best.outcome)))
        best = { outcome, judgements };
    }
  }
  return best;
}

/** The card names the packaging, or a cycle of the machine, or a cycle that doses the agent. */
function namesIt(
  set: EntityOf['set'] | undefined,
  { kind, from }: Swap,
  cycles: ReadonlySet<string>,
  view: LibraryView,
): boolean {
  const [cycle, wash] = [set?.cycle?.text, set?.washer_cycle?.text];
  switch (kind) {
    case 'packaging':
      return set?.packaging?.text === from;
    case 'chemistry':
      return wash !== undefined && cycles.has(wash);
    case 'sterilizer':
      return cycle !== undefined && ownerOf(view.sterilizerCycle(cycle)) === from;
    case 'washer':
      return wash !== undefined && ownerOf(view.washerCycle(wash)) === from;
    case 'ultrasonic':
      return false;
  }
}

function ownerOf(found: { readonly machine: Rec } | undefined): string | undefined {
  return found === undefined ? undefined : rootOfEntity(found.machine).id;
}
