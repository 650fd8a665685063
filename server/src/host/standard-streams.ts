import { fstatSync, writeSync } from 'node:fs';

/** One of the two streams that a program prints to. */
export interface StandardStream {
  write(text: string): void;
  readonly isTerminal: boolean;
  readonly columns?: number;
}

/** 1 prints results, 2 prints what concerns the run itself. */
export type StreamNumber = 1 | 2;

/**
 * A terminal is left to Node's own stream. A file or pipe is written to directly, at once and in order: loading Node's streams would cost
 * a short check a tenth of its time. A reader that has seen enough (`| head`) is no fault: what follows is dropped.
 */
export function standardStream(number: StreamNumber): StandardStream {
  if (isCharacterDevice(number)) {
    const stream = number === 1 ? process.stdout : process.stderr;
    if (stream.isTTY) return { isTerminal: true, columns: stream.columns, write: (text) => void stream.write(text) };
  }
  let isOpen = true;
  return {
    isTerminal: false,
    write: (text) => {
      isOpen = isOpen && writeAll(number, text) === 'written';
    },
  };
}

function isCharacterDevice(number: StreamNumber): boolean {
  try {
    return fstatSync(number).isCharacterDevice();
  } catch {
    return false;
  }
}

function writeAll(number: StreamNumber, text: string): 'written' | 'closed' {
  const bytes = Buffer.from(text, 'utf8');
  for (let at = 0; at < bytes.length; ) {
    try {
      at += writeSync(number, bytes, at);
    } catch (thrown) {
      const code = thrown instanceof Error && 'code' in thrown ? thrown.code : undefined;
      if (code !== 'EAGAIN') return 'closed';
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
  return 'written';
}
