import { nextTurn } from './turns.ts';

/** Changes that follow each other faster than this are somebody typing. All times in milliseconds. */
const typingGap = 600;
/** For so long nothing must have come before the typing counts as paused. */
const restAfterTyping = 200;
/** Longest time that typing, or an answer that is owed, puts other work off: hardly anyone types for so long without a rest between words. */
const longestWait = 4_000;
const lookAgain = 5;
/** Longest time that an answer that is owed puts off how a text is shown. */
const longestTurn = 100;

/**
 * When there is time for what nobody waits for at this moment: findings of other files, counts. It stands back while somebody types and
 * while an answer is owed. A change by itself puts nothing off.
 */
export class Lull {
  #lastChange = Number.NEGATIVE_INFINITY;
  #typing: 'yes' | 'no' = 'no';
  #owed = 0;
  #requests = 0;
  #line: Promise<void> = Promise.resolve();

  changed(): void {
    const now = performance.now();
    this.#typing = now - this.#lastChange < typingGap ? 'yes' : 'no';
    this.#lastChange = now;
  }

  /** A request has come for which nobody waits at the keyboard. */
  noted(): void {
    this.#requests++;
  }

  asked(): void {
    this.#requests++;
    this.#owed++;
  }

  answered(): void {
    this.#owed--;
  }

  /** How many requests have come so far. */
  get requests(): number {
    return this.#requests;
  }

  /** Resolves as soon as no answer is owed that somebody waits for at the keyboard, or after a moment: one may wait for a whole library. */
  async owesNothing(): Promise<void> {
    const end = performance.now() + longestTurn;
    while (this.#owed > 0 && performance.now() < end) await rest(lookAgain);
  }

  /**
   * Resolves in the next lull, at the earliest in the next turn of the loop and at the latest after some seconds. Of several who wait, one
   * goes on in a turn, so that all of them together take no more of it than one would.
   */
  async come(): Promise<void> {
    const end = performance.now() + longestWait;
    const mine = this.#line.then(() => this.#turnBefore(end));
    this.#line = mine;
    await mine;
  }

  async #turnBefore(end: number): Promise<void> {
    await nextTurn();
    for (let wait = this.#left(); wait > 0 && performance.now() < end; wait = this.#left()) await rest(wait);
  }

  #left(): number {
    if (this.#owed > 0) return lookAgain;
    return this.#typing === 'yes' ? this.#lastChange + restAfterTyping - performance.now() : 0;
  }
}

function rest(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
