import type { FileId } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import type { Severity } from '../base/problem.ts';
import type { SayingInFile } from '../check/finding.ts';
import type { Palette } from './colour.ts';
import { harmlessLine } from './escape.ts';
import type { Cause, CheckReport, LibraryReport, PlacedFinding, PlaceInText } from './model.ts';
import { causeElsewhere, pathShown } from './model.ts';
import { snippetOf } from './snippet.ts';
import { summaryLines } from './summary.ts';
import { settlerWords } from './words.ts';

export interface TextOptions {
  readonly palette: Palette;
  /** Columns that a source line may fill. */
  readonly columns: number;
  /** `full`: source line, quotes, who settles it; `brief`: one line a finding. The summary is printed either way. */
  readonly detail: 'full' | 'brief';
}

/** The report for people: each finding under the words it is about, then the summary. Ends with a line end. */
export function textReport(report: CheckReport, options: TextOptions): string {
  const lines: string[] = [];
  for (const library of report.libraries) {
    for (const placed of library.findings) {
      if (options.detail === 'brief') lines.push(briefLine(placed, library, options.palette));
      else lines.push(...findingLines(placed, library, options), '');
    }
  }
  if (options.detail === 'brief' && lines.length > 0) lines.push('');
  lines.push(...summaryLines(report, options.palette));
  return `${lines.map(harmlessLine).join('\n')}\n`;
}

function briefLine({ finding, at }: PlacedFinding, library: LibraryReport, palette: Palette): string {
  const why = causeWords(finding.file, library);
  return `${placeWords(at, library, palette)} ${severityWord(finding.severity, palette)} ${palette.rule(finding.rule)}: ${printable(finding.message)}${why === undefined ? '' : ` (shown because ${why})`}`;
}

function findingLines(placed: PlacedFinding, library: LibraryReport, options: TextOptions): readonly string[] {
  const { finding, at } = placed;
  const { palette } = options;
  return [
    `${placeWords(at, library, palette)} ${severityWord(finding.severity, palette)} ${palette.rule(finding.rule)}`,
    `  ${printable(finding.message)}`,
    ...sourceLines(placed, options),
    ...reasonLines(placed, library, palette),
  ];
}

function sourceLines({ finding, at }: PlacedFinding, { palette, columns }: TextOptions): readonly string[] {
  const isWholeFile = finding.span.end === 0;
  if (isWholeFile || at.line.trim() === '') return [];
  const gutter = String(at.start.line + 1);
  const last = at.end.line === at.start.line ? at.end.character : at.line.length;
  const { line, carets } = snippetOf(at.line, at.start.character, last, columns - gutter.length - 5);
  const bar = palette.faint('|');
  return [
    `  ${palette.faint(gutter)} ${bar} ${line}`,
    `  ${' '.repeat(gutter.length)} ${bar} ${carets.replace(/\^+/, palette.severity[finding.severity])}`,
  ];
}

function reasonLines(
  { finding, says, related }: PlacedFinding,
  library: LibraryReport,
  palette: Palette,
): readonly string[] {
  const lines = finding.says.map((saying, index) =>
    labelled('The instruction says', sayingWords(saying, says[index], library, palette)),
  );
  if (finding.does !== undefined) lines.push(labelled('We do', printable(finding.does)));
  if (finding.gap !== undefined) lines.push(labelled('Gap', printable(finding.gap)));
  lines.push(labelled('Who can settle it', settlerWords[finding.settledBy]));
  for (const [index, place] of finding.related.entries()) {
    const at = related[index];
    if (at !== undefined)
      lines.push(labelled('See also', `${placeWords(at, library, palette)} ${printable(place.note)}`));
  }
  const why = causeWords(finding.file, library);
  if (why !== undefined) lines.push(labelled('Shown because', why));
  return lines;
}

const changeWords: Readonly<Record<Cause['change'], string>> = {
  changed: 'which changed',
  new: 'which is new',
  gone: 'which is gone',
};

/** Why a finding is shown whose file did not change. */
function causeWords(file: FileId, library: LibraryReport): string | undefined {
  const cause = causeElsewhere(library, file);
  if (cause === undefined) return undefined;
  return `it depends on ${printable(pathShown(library, cause.file))}, ${changeWords[cause.change]}`;
}

function labelled(label: string, words: string): string {
  return `    ${`${label}:`.padEnd(22)}${words}`;
}

function sayingWords(
  saying: SayingInFile,
  at: PlaceInText | undefined,
  library: LibraryReport,
  palette: Palette,
): string {
  const quote = saying.quote === '' ? '' : `${palette.quote(`“${printable(saying.quote)}”`)} `;
  const source = [
    saying.doc,
    saying.rev === '' ? '' : `revision ${saying.rev}`,
    saying.page === '' ? 'no page given' : `page ${saying.page}`,
  ];
  const where = at === undefined ? '' : ` ${palette.faint(`[${placeOf(at, library)}]`)}`;
  return `${quote}(${printable(source.filter((part) => part !== '').join(', '))})${where}`;
}

function placeWords(at: PlaceInText, library: LibraryReport, palette: Palette): string {
  return palette.place(placeOf(at, library));
}

/** `devices/pale-forceps.ifu.yaml:22:14`, counted from one. */
function placeOf(at: PlaceInText, library: LibraryReport): string {
  const path = printable(pathShown(library, at.file));
  return `${path}:${at.start.line + 1}:${at.start.character + 1}`;
}

function severityWord(severity: Severity, palette: Palette): string {
  return palette.severity[severity](severity);
}
