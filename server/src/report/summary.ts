import { printable } from '../base/printable.ts';
import type { Coverage } from '../check/coverage.ts';
import type { Palette } from './colour.ts';
import type { CheckReport, LibraryReport } from './model.ts';
import { causeElsewhere, countsOf, keptBackBy } from './model.ts';
import { cautions, counted, grouped } from './words.ts';

/** The end of every report: counts, what was read, coverage, what was kept back, and the cautions. Never left out. */
export function summaryLines(report: CheckReport, palette: Palette): readonly string[] {
  const lines = [headline(report, palette)];
  for (const library of report.libraries) {
    const name = report.libraries.length > 1 ? `${printable(library.label)}: ` : '';
    lines.push(`${name}${filesWords(library)}`, `${name}${coverageWords(library.coverage)}`);
    for (const line of heldBackLines(library)) lines.push(`${name}${line}`);
  }
  for (const notice of report.notices) lines.push(`Note: ${printable(notice)}`);
  for (const caution of cautions) lines.push(palette.faint(caution));
  return lines;
}

function headline(report: CheckReport, palette: Palette): string {
  const { error, warning, advice } = countsOf(report);
  const parts: string[] = [];
  if (error > 0) parts.push(palette.severity.error(counted(error, 'error')));
  if (warning > 0) parts.push(palette.severity.warning(counted(warning, 'warning')));
  if (advice > 0) parts.push(palette.severity.advice(counted(advice, 'piece of advice', 'pieces of advice')));
  return parts.length === 0 ? 'No findings.' : `${parts.join(', ')}.`;
}

function filesWords(library: LibraryReport): string {
  const { files, asOf, checked } = library;
  const unread = files.listed - files.read;
  const read = `Read ${counted(files.read, 'rule file')}`;
  const refused = unread === 0 ? '' : `; ${counted(unread, 'file')} could not be read`;
  const part =
    checked.length === files.listed
      ? ''
      : `; findings are shown for ${grouped(checked.length)} of them, as asked${changeWords(library)}`;
  const out =
    files.leftOut === 0
      ? ''
      : `; ${counted(files.leftOut, 'file')} left out, in folders that the library's settings name`;
  const day = asOf === undefined ? '' : ` Checked as of ${printable(asOf)}, the day that the library's own file names.`;
  return `${read}${refused}${part}${out}.${day}`;
}

/** How many of the shown files changed themselves, where a change was asked about. */
function changeWords(library: LibraryReport): string {
  const { checked, shownBecause } = library;
  if (shownBecause === undefined || checked.length === 0) return '';
  const dependent = checked.filter((file) => causeElsewhere(library, file) !== undefined).length;
  return `: ${grouped(checked.length - dependent)} changed, ${grouped(dependent)} ${dependent === 1 ? 'depends' : 'depend'} on what changed`;
}

const listed = 10;

/** Coverage as a sentence: families encoded of those that sets name, and which are not. */
export function coverageWords({ named, encoded, missing, unreadable }: Coverage): string {
  if (named === 0) return 'Coverage: no set names a device family yet, so there is nothing to measure it by.';
  const of = `Coverage: ${grouped(encoded)} of ${counted(named, 'device family', 'device families')} named in sets ${encoded === 1 ? 'is' : 'are'} encoded.`;
  const gaps = missing.length === 0 ? '' : ` Not encoded: ${listWords(missing)}.`;
  const broken = unreadable.length === 0 ? '' : ` Encoded, but cannot be read: ${listWords(unreadable)}.`;
  return `${of}${gaps}${broken}`;
}

function listWords(ids: readonly string[]): string {
  const shown = ids.slice(0, listed).map(printable).join(', ');
  return ids.length > listed ? `${shown} and ${grouped(ids.length - listed)} more` : shown;
}

/** Everything that was found and is not shown, by what keeps it back. */
export function heldBackLines(library: LibraryReport): readonly string[] {
  const lines: string[] = [];
  const suppressed = keptBackBy(library, 'settings');
  const waived = keptBackBy(library, 'waiver');
  const known = keptBackBy(library, 'baseline');
  if (suppressed.size > 0)
    lines.push(`${countWords(suppressed)} kept back by the library's own settings: ${namesOf(suppressed)}.`);
  if (waived.size > 0) lines.push(`${countWords(waived)} kept back by waivers in force: ${namesOf(waived)}.`);
  if (known.size > 0) lines.push(`${countWords(known)} kept back because the baseline holds them: ${namesOf(known)}.`);
  const settled = library.baseline?.settled ?? 0;
  if (settled > 0) {
    const are = settled === 1 ? 'is' : 'are';
    lines.push(
      `${counted(settled, 'finding')} of the baseline ${are} no longer found: "traywright baseline" takes them out.`,
    );
  }
  return lines;
}

function countWords(counts: ReadonlyMap<string, number>): string {
  let total = 0;
  for (const count of counts.values()) total += count;
  return `${counted(total, 'finding')} ${total === 1 ? 'was' : 'were'}`;
}

function namesOf(counts: ReadonlyMap<string, number>): string {
  return [...counts].map(([rule, count]) => `${printable(rule)} ${grouped(count)}`).join(', ');
}
