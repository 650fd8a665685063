import { realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The path of a part that is delivered beside the program that runs, whatever link it was started by. Whether it is there is not looked at. */
export function besideProgram(name: string): string {
  const started = process.argv[1] ?? '.';
  try {
    return join(dirname(realpathSync.native(started)), name);
  } catch {
    return join(dirname(started), name);
  }
}
