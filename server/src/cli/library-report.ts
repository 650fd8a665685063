import { basename, isAbsolute, relative, sep } from 'node:path';
import type { FileId } from '../base/brand.ts';
import { BaselineFilter, type WrittenBaseline } from '../check/baseline.ts';
import { filesTogether } from '../check/engine.ts';
import type { FoundLibrary } from '../host/library-search.ts';
import { isBelow } from '../library/left-out.ts';
import type { Cause, KeptBack, LibraryReport, PlacedFinding, SinceBaseline } from '../report/model.ts';
import { counted } from '../report/words.ts';
import type { JudgedFile, JudgedLibrary } from './judged-library.ts';
import type { Progress } from './progress.ts';

export interface ReportOptions {
  readonly label: string;
  readonly progress: Progress;
  /** Findings that it holds are counted, not shown. */
  readonly baseline?: WrittenBaseline | undefined;
  /** Only these files, of those that were asked for; with each what makes it one of them. */
  readonly among?: ReadonlyMap<FileId, Cause> | undefined;
}

/** Gathers what was asked for of a library for a report. */
export function reportOn(
  found: FoundLibrary,
  judged: JudgedLibrary,
  { label, progress, baseline, among }: ReportOptions,
): LibraryReport {
  const { files, leftOut, about } = judged;
  const asked = files.flatMap(({ path, file }, at) =>
    (found.only.length === 0 || isBelow(path, found.only)) && among?.has(file) !== false ? [{ file, at }] : [],
  );
  const old = baseline === undefined ? undefined : new BaselineFilter(baseline.baseline);
  const findings: PlacedFinding[] = [];
  const keptBack: KeptBack[] = [];
  const keep = (placed: PlacedFinding, by: KeptBack['by']) => keptBack.push({ placed, by });
  for (const [index, { file, at }] of asked.entries()) {
    if (index % filesTogether === 0) judged.prepare(asked.slice(index, index + filesTogether));
    const one = judged.of(file, at);
    progress.step(index + 1, asked.length);
    // Most files: a walk through nothing, three times for each of thousands, can be seen in what a second check costs.
    if (isClean(one)) continue;
    for (const placed of one.findings) {
      if (old?.holdsBack(placed.finding) === true) keep(placed, 'baseline');
      else findings.push(placed);
    }
    for (const placed of one.heldBack) keep(placed, 'settings');
    for (const placed of one.waived) keep(placed, 'waiver');
  }
  progress.end();
  return {
    label,
    ...(about.asOf !== undefined && { asOf: about.asOf }),
    files: { listed: files.length, read: files.length - about.unread, leftOut },
    checked: asked.map(({ file }) => file),
    ...(among !== undefined && { shownBecause: among }),
    findings,
    keptBack,
    coverage: about.coverage,
    ...(baseline !== undefined &&
      old !== undefined && {
        baseline: sinceBaseline(
          old,
          { findings, keptBack },
          asked.length === files.length ? baseline.lines : undefined,
        ),
      }),
  };
}

function isClean({ findings, heldBack, waived }: JudgedFile): boolean {
  return findings.length + heldBack.length + waived.length === 0;
}

/** After everything that the baseline holds back was taken out of the findings. `lines`: of its entries, where the whole library was asked. */
function sinceBaseline(
  filter: BaselineFilter,
  { findings, keptBack }: Pick<LibraryReport, 'findings' | 'keptBack'>,
  lines: WrittenBaseline['lines'] | undefined,
): SinceBaseline {
  const settled = lines === undefined ? 0 : filter.settled();
  const old = new Set(keptBack.filter(({ by }) => by === 'baseline').map(({ placed }) => placed));
  for (const placed of [...findings, ...keptBack.map((one) => one.placed)])
    if (!old.has(placed) && filter.knows(placed.finding)) old.add(placed);
  const gone = lines === undefined ? [] : filter.absent();
  return { settled, old, absent: gone.map((fingerprint) => ({ fingerprint, line: lines?.get(fingerprint) ?? 1 })) };
}

/** A path for a reader who stands in `cwd`, `/`-separated and never absolute. */
export function labelOf(path: string, cwd: string): string {
  const label = relative(cwd, path);
  if (label === '') return '.';
  return isAbsolute(label) ? basename(path) : label.split(sep).join('/');
}

const listedInNotice = 5;

/** What a listing leaves unread besides rule files, in a sentence each. */
export function noticesOf(found: FoundLibrary, label: string): readonly string[] {
  const { nearMisses, links } = found.listing;
  const within = (path: string) => (label === '.' ? path : `${label}/${path}`);
  const notices: string[] = [];
  if (nearMisses.length > 0) {
    notices.push(`not read, because rule files end in ".ifu.yaml": ${someOf(nearMisses.map(within), 'file')}.`);
  }
  if (links.length > 0) notices.push(`links are not followed: ${someOf(links.map(within), 'link')}.`);
  return notices;
}

export function someOf(paths: readonly string[], one: string): string {
  const more = paths.length - listedInNotice;
  const shown = paths.slice(0, listedInNotice).join(', ');
  return more > 0 ? `${shown} and ${counted(more, `more ${one}`)}` : shown;
}
