import { type MessagePort, parentPort, Worker } from 'node:worker_threads';

/** What a helper came to: the one thing it had to say, or why it said nothing. */
export type Answer = { readonly said: unknown } | { readonly why: string };

/** Room for what is young: half of what is usual needs less memory by a tenth beside another thread that has as much, for hardly any time. */
const youngMegabytes = 24;

/** A thread that runs a program of ours beside this one, is told things, and says one thing in the end. */
export class HelperThread {
  readonly #thread: Worker;
  readonly #answer: Promise<Answer>;

  /** `program`: an absolute path. `words`: what it is started with. `megabytes`: the most that it may have in memory, where that is limited. */
  constructor(program: string, words: readonly string[], megabytes?: number) {
    const resourceLimits = {
      maxYoungGenerationSizeMb: youngMegabytes,
      ...(megabytes !== undefined && { maxOldGenerationSizeMb: megabytes }),
    };
    const thread = new Worker(program, { env: {}, argv: [...words], execArgv: [], resourceLimits });
    // Whoever waits for the answer holds the program open, not the thread.
    thread.unref();
    this.#thread = thread;
    this.#answer = new Promise((resolve) => {
      thread.once('message', (said: unknown) => resolve({ said }));
      thread.once('error', (thrown) => resolve({ why: thrown instanceof Error ? thrown.message : String(thrown) }));
      thread.once('exit', () => resolve({ why: 'it ended too early' }));
    });
  }

  tell(message: unknown): void {
    this.#thread.postMessage(message);
  }

  async answer(): Promise<Answer> {
    this.#thread.ref();
    const answer = await this.#answer;
    this.#thread.unref();
    void this.#thread.terminate();
    return answer;
  }
}

/** The other side: undefined in a program that is not run as a helper. */
export function startedBy(): MessagePort | undefined {
  return parentPort ?? undefined;
}
