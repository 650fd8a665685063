import { printable } from '../base/printable.ts';
import type { Severity } from '../base/problem.ts';
import { plainPalette } from './colour.ts';
import { harmlessLine } from './escape.ts';
import type { CheckReport } from './model.ts';
import { countsOf, pathShown } from './model.ts';
import { sayingWords } from './reasons.ts';
import { summaryLines } from './summary.ts';
import { counted } from './words.ts';
import type { FindingInLibrary } from './worst-first.ts';
import { worstFirst } from './worst-first.ts';

/** Build servers show only so many on a page. */
const most = 50;

const commands: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', advice: 'notice' };

/**
 * Workflow commands that a build server turns into notes beside the changed lines: `::error file=...,line=...::message`. Worst first, at
 * most 50, then one line that counts the rest. The summary follows as plain lines of the log: coverage, and what is kept back. Lines and
 * columns count from 1.
 */
export function annotations(report: CheckReport): string {
  const all = worstFirst(report);
  const lines = all.slice(0, most).map(annotation);
  if (all.length > most) lines.push(`::notice title=Traywright::${data(restWords(report, all.length - most))}`);
  lines.push(...summaryLines(report, plainPalette).map(harmlessLine));
  return `${lines.join('\n')}\n`;
}

function annotation({ placed, library }: FindingInLibrary): string {
  const { finding, at } = placed;
  const properties = [
    ['file', pathShown(library, at.file)],
    ['line', String(at.start.line + 1)],
    ['endLine', String(at.end.line + 1)],
    // Columns are taken for one line only.
    ...(at.start.line === at.end.line
      ? [
          ['col', String(at.start.character + 1)],
          ['endColumn', String(Math.max(at.end.character, at.start.character + 1))],
        ]
      : []),
    ['title', finding.rule],
  ].map(([name, value]) => `${name}=${property(value ?? '')}`);
  const [said] = finding.says;
  const quote = said === undefined ? '' : `\n${sayingWords(said)}`;
  return `::${commands[finding.severity]} ${properties.join(',')}::${data(`${finding.message}${quote}`)}`;
}

function restWords(report: CheckReport, rest: number): string {
  const { error, warning, advice } = countsOf(report);
  return `${counted(rest, 'more finding')} not shown here; in all ${counted(error, 'error')}, ${counted(warning, 'warning')} and ${counted(advice, 'piece of advice', 'pieces of advice')}.`;
}

/** Line ends stay; every other character that acts is made visible. Then what the form itself needs is escaped. */
function data(text: string): string {
  const lines = text.split('\n').map(printable).join('\n');
  return lines.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
