/** Compile-time proof that a closed union was handled in full. Throws only if types were bypassed. */
export function assertNever(value: never): never {
  throw new Error(`unhandled case: ${JSON.stringify(value)}`);
}

/** States a fact of the program (never of the user's input). Throws an Error with `fact` when it does not hold. */
export function invariant(holds: unknown, fact: string): asserts holds {
  if (!holds) throw new Error(`broken invariant: ${fact}`);
}
