import type { AtomRegister } from './atoms.ts';
import { clashWords } from './clash-words.ts';
import { atomsIn, type Formula, isSmallest, smallestClash } from './formula.ts';
import type { Atom, Clash } from './model.ts';
import { type Block, type Obstacles, obstaclesOf } from './obstacles.ts';
import type { Derivation } from './route.ts';

/**
 * The smallest clashes of a set without a route, disjoint, most telling first; empty for a set with one. Each is minimal: with any one of
 * its atoms gone, a route appears as far as the clash goes.
 */
export function clashesOf(derivation: Derivation): readonly Clash[] {
  if (derivation.route.status !== 'none') return [];
  const obstacles = obstaclesOf(derivation);
  return obstacles.blocks.flatMap((block) => clashesIn(block, obstacles));
}

/** One block's clashes: after each, its atoms and whatever demands the same are left out, and the next is looked for. */
function clashesIn({ about, of, formula }: Block, { register, called }: Obstacles): readonly Clash[] {
  const clashes: Clash[] = [];
  let atoms: readonly Atom[] = register.inOrder(atomsIn(formula));
  for (;;) {
    const smallest = smallestClash(
      formula,
      atoms.map(({ key }) => key),
    );
    if (smallest === undefined) return clashes;
    const kept = new Set(smallest);
    const found = atoms.filter(({ key }) => kept.has(key));
    if (found.length === 0) return clashes;
    const others = atoms.filter(({ key }) => !kept.has(key));
    const standing = standIns(formula, found, others, register);
    const worded = found.map((atom) => register.beside(atom, keysBut(found, atom)));
    const told = { subject: called.get(of) ?? of, about, place: clashes.length === 0 ? 'first' : 'further' } as const;
    clashes.push({
      about,
      of,
      atoms: worded,
      alsoDemanded: standing,
      words: clashWords(told, worded),
    });
    const gone = new Set(
      [...found, ...standing, ...others.filter((other) => found.some((atom) => isSameFact(atom, other)))].map(
        ({ key }) => key,
      ),
    );
    atoms = atoms.filter(({ key }) => !gone.has(key));
  }
}

function keysBut(atoms: readonly Atom[], but: Atom): ReadonlySet<string> {
  return new Set(atoms.filter((atom) => atom !== but).map(({ key }) => key));
}

/** Atoms that demand the same as one of the clash: put in its place, the clash is as small and as hard. */
function standIns(
  formula: Formula,
  clash: readonly Atom[],
  others: readonly Atom[],
  register: AtomRegister,
): readonly Atom[] {
  const found: Atom[] = [];
  for (const other of others) {
    const replaced = clash.find(
      (one) => isAlike(one, other) && isSmallest(formula, [...keysBut(clash, one), other.key]),
    );
    if (replaced !== undefined) found.push(register.beside(other, keysBut(clash, replaced)));
  }
  return found;
}

const ofContents: ReadonlySet<Atom['parameter']> = new Set([
  'mass',
  'levels',
  'load',
  'accessory',
  'lumen',
  'cellulose',
]);

/** One fact of the set, such as its mass, may be too much for several: that is one cause. */
function isSameFact(a: Atom, b: Atom): boolean {
  return ofContents.has(a.parameter) && a.parameter === b.parameter && a.factAt !== undefined && a.factAt === b.factAt;
}

/** Of the same parameter whoever demands it, or what somebody offers at all against what somebody forbids. */
function isAlike(a: Atom, b: Atom): boolean {
  return a.parameter === b.parameter || (isAboutMethod(a) && isAboutMethod(b));
}

function isAboutMethod({ key, parameter }: Atom): boolean {
  return parameter === 'prohibition' || key.endsWith(' offers');
}
