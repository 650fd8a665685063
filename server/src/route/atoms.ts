import type { Judgement } from '../judge/outcome.ts';
import { pathOf, rootOf } from '../model/node.ts';
import { atomWords, type Met } from './clash-words.ts';
import type { Atom, AtomRank } from './model.ts';
import { gateParameters } from './ranks.ts';

/** One candidate that was tried: a packing with a cycle, or one means of cleaning. Identity is all that counts. */
export type Trial = object;

interface MetIn extends Met {
  readonly trial: Trial;
}

/** Every requirement and fact by which something fails, each once. */
export class AtomRegister {
  readonly #met = new Map<string, MetIn[]>();
  readonly #inTrial = new Map<Trial, Set<string>>();
  readonly #called: ReadonlyMap<string, string>;

  /** `called`: what people call the devices, by id. */
  constructor(called: ReadonlyMap<string, string>) {
    this.#called = called;
  }

  /** Keys of the failing judgements. `where` names the cycle or machine they were judged with. */
  keysOf(judgements: readonly Judgement[], where: string, trial: Trial): readonly string[] {
    const byKey = new Map<string, Judgement[]>();
    for (const judgement of judgements) {
      if (judgement.outcome !== 'fails') continue;
      const key = keyOf(judgement);
      const known = byKey.get(key);
      if (known === undefined) byKey.set(key, [judgement]);
      else known.push(judgement);
    }
    for (const [key, failing] of byKey) this.#remember(key, { failing, where, trial });
    return [...byKey.keys()];
  }

  #remember(key: string, met: MetIn): void {
    const known = this.#met.get(key);
    if (known === undefined) this.#met.set(key, [met]);
    else known.push(met);
    const together = this.#inTrial.get(met.trial) ?? new Set();
    this.#inTrial.set(met.trial, together.add(key));
  }

  /** In the order in which they are named, most telling first: that one is kept in a clash when one of two would do. */
  inOrder(keys: Iterable<string>): readonly Atom[] {
    const atoms: Atom[] = [];
    for (const key of keys) {
      const atom = atomOf(key, this.#met.get(key) ?? [], this.#called);
      if (atom !== undefined) atoms.push(atom);
    }
    return atoms.sort((a, b) => weightOf(a) - weightOf(b) || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  }

  /** The atom in the words that count beside these others: by what it fails where none of them does. */
  beside(atom: Atom, others: ReadonlySet<string>): Atom {
    const met = this.#met.get(atom.key) ?? [];
    const decisive = met.filter(({ trial }) => ![...(this.#inTrial.get(trial) ?? [])].some((key) => others.has(key)));
    return (decisive.length === 0 ? undefined : atomOf(atom.key, decisive, this.#called)) ?? atom;
  }
}

/** Parameters that make up a cycle as a page offers it: one statement, whose parts are not given up one by one. */
const offerParameters: ReadonlySet<Judgement['parameter']> = new Set([
  'steam-temperature',
  'control-band',
  'exposure',
  'pulses',
  'steam-dry',
  'packaging-dry',
  'container-cycle',
  'peroxide-cycle',
  'ethylene-oxide',
  'aeration',
  'aeration-temperature',
]);

function keyOf({ demandedBy, demandAt, parameter }: Judgement): string {
  if (gateParameters.has(parameter) || offerParameters.has(parameter)) return `${demandedBy} offers`;
  return `${demandedBy} ${pathOf(demandAt)} ${parameter}`;
}

/** What is shown are the demands that fail wherever the method is right, in the place where fewest fail. */
function atomOf(key: string, met: readonly Met[], called: ReadonlyMap<string, string>): Atom | undefined {
  const ofKind = met.filter(({ failing }) => !failing.some(({ parameter }) => gateParameters.has(parameter)));
  const [nearest] = (ofKind.length > 0 ? ofKind : met).toSorted(
    (a, b) => a.failing.length - b.failing.length || gapSize(a) - gapSize(b),
  );
  const first = nearest?.failing[0];
  if (nearest === undefined || first === undefined) return undefined;
  return {
    key,
    rank: rankOfDemander(first),
    words: atomWords(nearest, offersOf(met), called),
    who: first.demandedBy,
    at: first.demandAt,
    says: nearest.failing
      .flatMap(({ says }) => says)
      .filter((one, index, all) => all.findIndex(({ at }) => at === one.at) === index),
    parameter: first.parameter,
    ...(first.factAt && { factAt: first.factAt }),
  };
}

/** The number at the start of the gap's words (`10 min short`): the units of one requirement are the same everywhere. */
function gapSize({ failing }: Met): number {
  return Number.parseFloat(failing[0]?.gap ?? '0') || 0;
}

/** The methods that a page offers, where none of them is ours: each once. */
function offersOf(met: readonly Met[]): readonly string[] {
  const offers = met.flatMap(({ failing }) =>
    failing.filter(({ parameter }) => parameter === 'modality').map(({ required }) => required),
  );
  return [...new Set(offers)].sort();
}

function rankOfDemander({ demandAt }: Judgement): AtomRank {
  switch (rootOf(demandAt).kind) {
    case 'device':
      return 'device';
    case 'packaging':
      return 'packaging';
    case 'site':
      return 'policy';
    default:
      return 'equipment';
  }
}

const order: readonly AtomRank[] = ['device', 'packaging', 'equipment', 'policy'];

function weightOf({ rank, parameter, key }: Atom): number {
  const within = parameter === 'prohibition' ? 0 : key.endsWith(' offers') ? 1 : 2;
  return order.indexOf(rank) * 10 + within;
}
