/** What it takes to have a route, over the requirements that stand in the way: all of, any of, or free of certain requirements. */
export type Formula =
  | { readonly is: 'free-of'; readonly atoms: readonly string[] }
  | { readonly is: 'all'; readonly parts: readonly Formula[] }
  | { readonly is: 'any'; readonly parts: readonly Formula[] };

/** True when the formula can be had with only these requirements in force. */
export function holdsWith(formula: Formula, inForce: ReadonlySet<string>): boolean {
  switch (formula.is) {
    case 'free-of':
      return formula.atoms.every((atom) => !inForce.has(atom));
    case 'all':
      return formula.parts.every((part) => holdsWith(part, inForce));
    case 'any':
      return formula.parts.some((part) => holdsWith(part, inForce));
  }
}

export function atomsIn(formula: Formula): ReadonlySet<string> {
  const atoms = new Set<string>();
  collect(formula, atoms);
  return atoms;
}

function collect(formula: Formula, atoms: Set<string>): void {
  if (formula.is === 'free-of') for (const atom of formula.atoms) atoms.add(atom);
  else for (const part of formula.parts) collect(part, atoms);
}

/**
 * A smallest subset of `atoms` with which the formula can't be had: without any one of them it can. Found by leaving out one after the
 * other, the last first, so that what stands first is kept where either would do. Undefined when the formula can be had anyway.
 */
export function smallestClash(formula: Formula, atoms: readonly string[]): readonly string[] | undefined {
  const inForce = new Set(atoms);
  if (holdsWith(formula, inForce)) return undefined;
  for (const atom of [...atoms].reverse()) {
    inForce.delete(atom);
    if (holdsWith(formula, inForce)) inForce.add(atom);
  }
  return atoms.filter((atom) => inForce.has(atom));
}

/** True when the formula can't be had with all of these in force, and can without any one of them. */
export function isSmallest(formula: Formula, atoms: readonly string[]): boolean {
  if (holdsWith(formula, new Set(atoms))) return false;
  return atoms.every((atom) => holdsWith(formula, new Set(atoms.filter((other) => other !== atom))));
}
