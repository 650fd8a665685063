import type { Finding } from '../check/finding.ts';
import type { OpenLibrary } from './open-library.ts';

/** Everything that is open in the whole library, in the order of its files. */
export function openFindings({ engine, files }: OpenLibrary): readonly Finding[] {
  engine.judgeAll(files.map(({ file }) => file));
  return files.flatMap(({ file }) => engine.findings(file));
}
