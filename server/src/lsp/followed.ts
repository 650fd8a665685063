import { textHash } from './text-hash.ts';
import type { Workbench } from './workbench.ts';

/** Behind the findings: what a panel shows is dear, and nobody reads it while typing. Milliseconds after the last change. */
const restAfterChange = 250;

/** So many times as long as it took to make, at least, before it is made again. */
const restFor = 2;

/** What one panel shows: made anew when files have changed, and told when it is another one. */
export class Followed {
  readonly #workbench: Workbench;
  readonly #tell: (shown: unknown) => void;
  #make: (() => unknown) | undefined;
  #told = '';
  #took = 0;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(workbench: Workbench, tell: (shown: unknown) => void) {
    this.#workbench = workbench;
    this.#tell = tell;
  }

  /**
   * Makes it for the first time: that is told by whoever asked. Followed from then on in the place of anything else; where there is nothing
   * to show (null), what was followed goes on.
   */
  begin<Shown>(make: () => Shown): Shown {
    const shown = this.#timed(make);
    if (shown === null) return shown;
    clearTimeout(this.#waiting);
    this.#make = make;
    this.#told = textHash(JSON.stringify(shown));
    return shown;
  }

  /** Nothing is worked out any more. */
  end(): void {
    this.#make = undefined;
    clearTimeout(this.#waiting);
  }

  touched(): void {
    if (this.#make === undefined) return;
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => void this.#lookAgain(), Math.max(restAfterChange, restFor * this.#took));
  }

  async #lookAgain(): Promise<void> {
    await this.#workbench.settled();
    const make = this.#make;
    if (make === undefined) return;
    try {
      const shown = this.#timed(make);
      const told = textHash(JSON.stringify(shown));
      if (told === this.#told) return;
      this.#told = told;
      this.#tell(shown);
    } catch (reason) {
      this.#workbench.onFailure(reason);
    }
  }

  #timed<Shown>(make: () => Shown): Shown {
    const begun = performance.now();
    const shown = make();
    this.#took = performance.now() - begun;
    return shown;
  }
}
