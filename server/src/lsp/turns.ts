/** Lets everything that waits in line (further changes, cancellations) be taken in first. */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof setImmediate === 'function') setImmediate(resolve);
    else setTimeout(resolve, 0);
  });
}

/** For so many milliseconds long work keeps others waiting: a fraction of what a key costs. */
const slice = 4;

/** Long work in slices: `pause` gives others a turn whenever one has been used up. */
export class Slices {
  readonly #othersTurn: () => Promise<void>;
  #since = performance.now();

  constructor(othersTurn = nextTurn) {
    this.#othersTurn = othersTurn;
  }

  /** `then` is called after others had their turn. */
  async pause(then: () => void = () => undefined): Promise<void> {
    if (performance.now() - this.#since < slice) return;
    await this.#othersTurn();
    then();
    this.#since = performance.now();
  }
}

/** Longest time that a stream of changes may put a check off. */
const longestWait = 100;

/**
 * Waits until no further change stands in line. This is no debounce: with nothing in line it takes two turns of the loop, well under a
 * millisecond; in a burst the changes are taken in first and checked once.
 */
export async function untilQuiet(changesSoFar: () => number): Promise<void> {
  const end = performance.now() + longestWait;
  let still = 0;
  for (let seen = changesSoFar(); still < 2 && performance.now() < end; seen = changesSoFar()) {
    await nextTurn();
    still = changesSoFar() === seen ? still + 1 : 0;
  }
}
