import { counted } from '../report/words.ts';
import type { CommandIo } from './io.ts';

/** Below this many files a check is over before a person could read the line. */
const worthShowing = 300;
const every = 100;

export interface Progress {
  step(done: number, of: number): void;
  /** Of things that take long enough to be counted one by one. */
  slow?(done: number, of: number, what: string): void;
  end(): void;
}

export const silent: Progress = { step: () => undefined, end: () => undefined };

/** One line on a terminal's error stream that is written over and taken away at the end; nothing elsewhere. */
export function progressOn(io: CommandIo, verb: string, speaks: 'speaks' | 'quiet'): Progress {
  if (speaks === 'quiet' || !io.stderr.isTerminal || io.env.TERM === 'dumb') return silent;
  let shown = false;
  let last = 0;
  return {
    step: (done, of) => {
      const now = done - (done % every);
      if (of < worthShowing || now === 0 || now === last) return;
      io.stderr.write(`\r${verb} ${now} of ${counted(of, 'file')}`);
      last = now;
      shown = true;
    },
    slow: (done, of, what) => {
      io.stderr.write(`\r${verb} ${done} of ${counted(of, what)}`);
      shown = true;
    },
    end: () => {
      if (shown) io.stderr.write('\r\u001b[K');
      shown = false;
      last = 0;
    },
  };
}
