import type { Diagnostic, DiagnosticRelatedInformation } from 'vscode-languageserver';
import { DiagnosticSeverity } from 'vscode-languageserver';
import type { FileId } from '../base/brand.ts';
import { printable } from '../base/printable.ts';
import type { Severity } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { Finding, SayingInFile } from '../check/finding.ts';
import { fingerprintOf } from '../check/finding.ts';
import { whereSaid } from '../editor/naming/cited.ts';
import { settlerWords } from '../report/words.ts';
import { stillToWrite } from '../schema/to-do.ts';
import type { ClientAbilities } from './client-abilities.ts';
import { rangeOf } from './places.ts';
import type { Home } from './workbench.ts';

/** How findings of one file become what the editor shows. */
export interface Showing {
  readonly home: Home;
  /** The editor's URI of another file of the library. */
  uriOf(file: FileId): string;
  readonly abilities: ClientAbilities;
}

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  advice: DiagnosticSeverity.Information,
};

/** What is only not written yet is no mistake: whoever begins a file is not met by a page in red. A check fails on it all the same. */
function severityOf({ rule, severity }: Finding): DiagnosticSeverity {
  return rule === stillToWrite ? DiagnosticSeverity.Information : severities[severity];
}

/** What `data` of a diagnostic holds: enough to find the finding again when a fix or a waiver is asked for. */
export interface FindingData {
  readonly fingerprint: string;
}

/** The finding in the editor's form: the command line's words, at the same place. */
export function diagnosticOf(finding: Finding, showing: Showing): Diagnostic {
  const { abilities } = showing;
  const related = abilities.relatedInformation ? relatedOf(finding, showing) : [];
  const data: FindingData = { fingerprint: fingerprintOf(finding) };
  return {
    range: rangeIn(showing.home, finding.file, finding.span),
    severity: severityOf(finding),
    code: finding.rule,
    source: 'Traywright',
    message: messageOf(finding, abilities),
    ...(abilities.ruleLinkScheme !== undefined && {
      codeDescription: { href: `${abilities.ruleLinkScheme}:/${finding.rule}.md` },
    }),
    ...(related.length > 0 && { relatedInformation: related }),
    ...(abilities.diagnosticData && { data }),
  };
}

/** The message first, then what we do, the gap and who settles it. An editor without related places gets the quotes here too. */
function messageOf(finding: Finding, abilities: ClientAbilities): string {
  const lines = [finding.message];
  if (!abilities.relatedInformation) lines.push(...finding.says.map(quoteLine));
  if (finding.does !== undefined) lines.push(`We do: ${finding.does}`);
  if (finding.gap !== undefined) lines.push(`Gap: ${finding.gap}`);
  lines.push(`Who can settle it: ${settlerWords[finding.settledBy]}`);
  return lines.map(printable).join('\n');
}

function quoteLine(saying: SayingInFile): string {
  return `The instruction says: “${saying.quote}” (${whereSaid(saying)})`;
}

/** Every quoted statement, then every other place that has to do with it. */
function relatedOf(finding: Finding, showing: Showing): DiagnosticRelatedInformation[] {
  const at = (file: FileId, span: Span) => ({ uri: showing.uriOf(file), range: rangeIn(showing.home, file, span) });
  return [
    ...finding.says.map((saying) => ({
      location: at(saying.file, saying.span),
      message: printable(quoteLine(saying)),
    })),
    ...finding.related.map(({ file, span, note }) => ({ location: at(file, span), message: printable(note) })),
  ];
}

function rangeIn({ engine }: Home, file: FileId, span: Span): Diagnostic['range'] {
  const record = engine.library.record(file);
  const start = { line: 0, character: 0 };
  return record === undefined ? { start, end: start } : rangeOf(record, span);
}
