import type { FileId, IsoDate } from '../../../server/src/base/brand.ts';
import type { Severity } from '../../../server/src/base/problem.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { Finding } from '../../../server/src/check/finding.ts';
import { fingerprintOf } from '../../../server/src/check/finding.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { Seeded } from '../seeded.ts';
import { citingSlips } from './citing.ts';
import { copyingSlips } from './copying.ts';
import { departmentSlips } from './department.ts';
import type { Mistake, MistakeKind } from './mistake.ts';
import { Department, sitesOf } from './rule-files.ts';
import { typingSlips } from './typing.ts';

/** The kinds by what the person was doing. */
export const mistakeGroups: ReadonlyMap<string, readonly MistakeKind[]> = new Map([
  ['copying an instruction', copyingSlips],
  ['citing documents, pages and names', citingSlips],
  ['describing the department (some of these still meet every instruction)', departmentSlips],
  ['typing', typingSlips],
]);

export const mistakeKinds: readonly MistakeKind[] = [...mistakeGroups.values()].flat();

/** One mistake made in one file, and what the check of the whole library said about it. */
export interface Outcome {
  readonly kind: string;
  readonly library: string;
  readonly file: FileId;
  readonly path: string;
  readonly was: string;
  readonly becomes: string;
  /** Rules that said something, each once, in the order of their names. Empty: passed unseen. */
  readonly rules: readonly string[];
  /** The gravest of what was said. */
  readonly severity?: Severity;
  /** True when something was said in the file with the mistake, not only elsewhere. */
  readonly here: boolean;
}

export interface Trial {
  readonly seed: number;
  /** Findings on the libraries as they are, before and after the mistakes. */
  readonly untouched: number;
  readonly outcomes: readonly Outcome[];
}

interface Candidate extends Mistake {
  readonly kind: MistakeKind;
  readonly library: string;
  readonly file: FileId;
  readonly path: string;
  readonly text: string;
}

export type Libraries = ReadonlyMap<string, ReadonlyMap<FileId, string>>;

/** Makes at most `each` mistakes of every kind, chosen by the seed among all that can be made, and takes each back again. */
export function runTrial(libraries: Libraries, today: IsoDate, choice: { seed: number; each: number }): Trial {
  const engines = new Map([...libraries].map(([name, texts]) => [name, checked(texts, today)]));
  const before = new Set([...engines.values()].flatMap(findingsOf).map(nameOf));
  const outcomes = chosen(libraries, choice).flatMap((candidate) => {
    const engine = engines.get(candidate.library);
    return engine === undefined ? [] : [outcomeOf(candidate, engine, before)];
  });
  return { seed: choice.seed, untouched: before.size + countOf(engines), outcomes };
}

function checked(texts: ReadonlyMap<FileId, string>, today: IsoDate): Engine {
  const engine = new Engine({ rules: allRules, today });
  for (const [file, text] of texts) engine.set(file, text);
  return engine;
}

function countOf(engines: ReadonlyMap<string, Engine>): number {
  return [...engines.values()].reduce((sum, engine) => sum + findingsOf(engine).length, 0);
}

function nameOf(finding: Finding): string {
  return `${finding.file}: ${fingerprintOf(finding)}`;
}

function findingsOf(engine: Engine): readonly Finding[] {
  return engine.library.files().flatMap((file) => engine.findings(file));
}

function chosen(libraries: Libraries, { seed, each }: { seed: number; each: number }): readonly Candidate[] {
  const all = candidatesOf(libraries);
  // A stream of its own for each kind, so that a new kind does not change what is chosen of the others.
  return mistakeKinds.flatMap((kind) => {
    const random = new Seeded(seed ^ hashOf(kind.id));
    const left = [...(all.get(kind.id) ?? [])];
    const picked: Candidate[] = [];
    while (picked.length < each && left.length > 0) {
      const [candidate] = left.splice(random.below(left.length), 1);
      if (candidate !== undefined && isFair(candidate)) picked.push(candidate);
    }
    return picked;
  });
}

function candidatesOf(libraries: Libraries): ReadonlyMap<string, readonly Candidate[]> {
  const all = new Map<string, Candidate[]>(mistakeKinds.map(({ id }) => [id, []]));
  for (const [library, texts] of libraries) {
    const department = new Department(library, texts);
    for (const site of department.files.flatMap(sitesOf)) {
      for (const kind of mistakeKinds) {
        const { file, text } = site.of;
        for (const mistake of kind.mistakes(site, department))
          all.get(kind.id)?.push({ ...mistake, kind, library, file, path: site.path, text });
      }
    }
  }
  return all;
}

/** The mistake changes something, and leaves what its kind promises to leave. */
function isFair(candidate: Candidate): boolean {
  const applied = applyEdits(candidate.text, candidate.edits);
  if ('refused' in applied) throw new Error(`${candidate.kind.id} in ${candidate.file}: ${applied.refused}`);
  if (applied.text === candidate.text) return false;
  if (candidate.kind.leaves === 'anything') return true;
  if (!readTree(applied.text).unreadable) return true;
  throw new Error(`${candidate.kind.id} in ${candidate.file} at ${candidate.path} leaves nothing to read`);
}

/** What was said before the mistake does not count. */
function outcomeOf(candidate: Candidate, engine: Engine, before: ReadonlySet<string>): Outcome {
  const applied = applyEdits(candidate.text, candidate.edits);
  if ('refused' in applied) throw new Error(applied.refused);
  engine.set(candidate.file, applied.text);
  const found = findingsOf(engine).filter((finding) => !before.has(nameOf(finding)));
  engine.set(candidate.file, candidate.text);
  const { kind, library, file, path, was, becomes } = candidate;
  const severity = (['error', 'warning', 'advice'] as const).find((one) => found.some((each) => each.severity === one));
  return {
    kind: kind.id,
    library,
    file,
    path,
    was,
    becomes,
    rules: [...new Set(found.map(({ rule }) => rule))].sort(),
    ...(severity !== undefined && { severity }),
    here: found.some((finding) => finding.file === file),
  };
}

/** FNV-1a, 32 bits. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const character of text) hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193) >>> 0;
  return hash;
}
