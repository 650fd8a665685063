import type { Memento } from 'vscode';
import type { Decision, Given } from '../page/review.ts';
import { recordIn } from './answers.ts';

const key = 'traywright.review';
const most = 5_000;
const words: readonly unknown[] = ['agree', 'disagree', 'ask', 'looked'] satisfies readonly Given[];

/**
 * What a person has decided and not yet written down, kept with the folder, so that closing a window loses nothing. By fingerprint: what
 * was decided about one change is never taken for another.
 */
export class GivenDecisions {
  readonly #memory: Memento;

  constructor(memory: Memento) {
    this.#memory = memory;
  }

  of(fingerprint: string): Given | '' {
    const given = recordIn(this.#memory.get(key))[fingerprint];
    return words.includes(given) ? (given as Given) : '';
  }

  async give(fingerprint: string, given: Given | ''): Promise<void> {
    const { [fingerprint]: _before, ...others } = recordIn(this.#memory.get(key));
    const kept = Object.entries(others).slice(-most);
    await this.#memory.update(key, Object.fromEntries(given === '' ? kept : [...kept, [fingerprint, given]]));
  }

  /** The decisions among these changes. */
  among(fingerprints: readonly string[]): Readonly<Record<string, Decision>> {
    const decided: Record<string, Decision> = {};
    for (const fingerprint of fingerprints) {
      const given = this.of(fingerprint);
      if (given !== '' && given !== 'looked') decided[fingerprint] = given;
    }
    return decided;
  }
}
