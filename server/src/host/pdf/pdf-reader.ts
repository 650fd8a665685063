import { existsSync } from 'node:fs';
import { MessageChannel, type MessagePort, receiveMessageOnPort, Worker } from 'node:worker_threads';
import type { PdfPages } from './pdf-pages.ts';

export interface PdfRequest {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly port: MessagePort;
  /** Becomes 1 when the answer lies at the port. */
  readonly done: Int32Array<SharedArrayBuffer>;
}

export interface PdfLimits {
  readonly milliseconds: number;
  /** How much the process may grow over one PDF, in bytes. */
  readonly growth: number;
}

export const pdfLimits: PdfLimits = { milliseconds: 20_000, growth: 1_000_000_000 };

const lookEveryMs = 100;
const oldSpaceMegabytes = 512;

/** Reads PDFs one by one in a thread that is started at the first, and stopped when one takes too long or too much memory. */
export class PdfReader {
  readonly #program: string;
  readonly #limits: PdfLimits;
  #thread: Worker | undefined;

  /** `program` is the bundled reader, an absolute path. */
  constructor(program: string, limits: PdfLimits = pdfLimits) {
    this.#program = program;
    this.#limits = limits;
  }

  get isThere(): boolean {
    return existsSync(this.#program);
  }

  /** Waits; for the command line. Takes the bytes over. */
  readNow(bytes: Uint8Array<ArrayBuffer>): PdfPages {
    const { answers, done } = this.#send(bytes);
    const watch = new Watch(this.#limits);
    while (Atomics.wait(done, 0, 0, lookEveryMs) === 'timed-out') if (watch.isOver()) return this.#stop(answers);
    return received(answers) ?? this.#stop(answers);
  }

  /** For a server, which has other things to do meanwhile. */
  async read(bytes: Uint8Array<ArrayBuffer>): Promise<PdfPages> {
    const { answers, done } = this.#send(bytes);
    const watch = new Watch(this.#limits);
    while (Atomics.load(done, 0) === 0) {
      await new Promise((resolve) => setTimeout(resolve, lookEveryMs / 10));
      if (watch.isOver()) return this.#stop(answers);
    }
    return received(answers) ?? this.#stop(answers);
  }

  end(): void {
    void this.#thread?.terminate();
    this.#thread = undefined;
  }

  #send(bytes: Uint8Array<ArrayBuffer>): { answers: MessagePort; done: PdfRequest['done'] } {
    const { port1, port2 } = new MessageChannel();
    const done = new Int32Array(new SharedArrayBuffer(4));
    const request: PdfRequest = { bytes, port: port2, done };
    this.#running().postMessage(request, [port2, bytes.buffer]);
    return { answers: port1, done };
  }

  #running(): Worker {
    if (this.#thread !== undefined) return this.#thread;
    const thread = new Worker(this.#program, {
      env: {},
      argv: [],
      execArgv: [],
      stdout: true,
      stderr: true,
      resourceLimits: { maxOldGenerationSizeMb: oldSpaceMegabytes },
    });
    // Whoever waits for an answer sees that none comes.
    thread.on('error', () => undefined);
    thread.unref();
    this.#thread = thread;
    return thread;
  }

  #stop(answers: MessagePort): PdfPages {
    answers.close();
    this.end();
    return { why: 'too-slow' };
  }
}

/** Whether one PDF has had its share of time and memory. */
class Watch {
  readonly #limits: PdfLimits;
  readonly #started = process.hrtime.bigint();
  readonly #memory = process.memoryUsage.rss();

  constructor(limits: PdfLimits) {
    this.#limits = limits;
  }

  isOver(): boolean {
    const milliseconds = Number((process.hrtime.bigint() - this.#started) / 1_000_000n);
    return milliseconds > this.#limits.milliseconds || process.memoryUsage.rss() - this.#memory > this.#limits.growth;
  }
}

function received(answers: MessagePort): PdfPages | undefined {
  const found = receiveMessageOnPort(answers);
  answers.close();
  return found?.message as PdfPages | undefined;
}
