import { printable } from '../base/printable.ts';
import type { Severity } from '../base/problem.ts';
import { baselineFileName } from '../check/baseline.ts';
import type { CatalogueEntry } from '../check/catalogue.ts';
import { fingerprintOf } from '../check/finding.ts';
import { explanationPage } from './explanation-page.ts';
import { jsonText } from './json.ts';
import type { AbsentFinding, CheckReport, LibraryReport, PlacedFinding, PlaceInText } from './model.ts';
import { pathShown } from './model.ts';
import { DistinctNames, keptBackWords, reasonWords, sayingWords } from './reasons.ts';
import { cautions, settlerWords } from './words.ts';

/** What SARIF needs besides the report: who made it, and what each finding means. */
export interface SarifAbout {
  readonly version: string;
  readonly catalogue: readonly CatalogueEntry[];
}

const levels: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', advice: 'note' };

/**
 * SARIF 2.1.0, one run: relative addresses, each rule that spoke with its help, fingerprints without line numbers, what was kept back as
 * suppressed results, and the state against the baseline where there is one. No time, no absolute path. Source: OASIS SARIF 2.1.0.
 */
export function sarifReport(report: CheckReport, { version, catalogue }: SarifAbout): string {
  const rules = rulesIn(report, catalogue);
  const indexOf = new Map(rules.map(({ id }, index) => [id, index]));
  const run = {
    tool: { driver: { name: 'Traywright', version, semanticVersion: version, rules: rules.map(descriptor) } },
    columnKind: 'utf16CodeUnits',
    invocations: [
      {
        executionSuccessful: !hasFaultOfOurs(report),
        toolExecutionNotifications: [...report.notices, ...cautions].map((text) => ({
          level: 'note',
          message: { text: withoutLinks(text) },
        })),
      },
    ],
    results: report.libraries.flatMap((library) => resultsOf(library, indexOf)),
  };
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [run],
  };
  return `${jsonText(log)}\n`;
}

/** A rule that failed has not judged its file. */
function hasFaultOfOurs({ libraries }: CheckReport): boolean {
  return libraries.some(({ findings }) => findings.some(({ finding }) => finding.rule === 'internal'));
}

function rulesIn({ libraries }: CheckReport, catalogue: readonly CatalogueEntry[]): readonly CatalogueEntry[] {
  const spoke = new Set<string>();
  for (const { findings, keptBack, baseline } of libraries) {
    for (const { finding } of [...findings, ...keptBack.map(({ placed }) => placed)]) spoke.add(finding.rule);
    for (const { fingerprint } of baseline?.absent ?? []) spoke.add(partsOf(fingerprint).rule);
  }
  return catalogue.filter(({ id }) => spoke.has(id)).sort((a, b) => (a.id < b.id ? -1 : 1));
}

function descriptor(entry: CatalogueEntry): unknown {
  return {
    id: entry.id,
    shortDescription: { text: entry.why },
    fullDescription: { text: entry.why },
    help: {
      text: `${entry.why} Who can settle it: ${settlerWords[entry.settledBy]}.`,
      markdown: explanationPage(entry),
    },
    defaultConfiguration: { level: levels[entry.severity] },
    properties: { tags: [entry.stage], settledBy: entry.settledBy },
  };
}

function resultsOf(library: LibraryReport, indexOf: ReadonlyMap<string, number>): readonly unknown[] {
  const names = new DistinctNames();
  const shown = library.findings.map((placed) => ({
    ...result(placed, library, indexOf, names),
    ...stateOf(placed, library),
  }));
  const kept = library.keptBack.map((one) => ({
    ...result(one.placed, library, indexOf, names),
    ...stateOf(one.placed, library),
    suppressions: [{ kind: 'external', status: 'accepted', justification: printable(keptBackWords(one)) }],
  }));
  const absent = library.baseline?.absent ?? [];
  return [...shown, ...kept, ...absent.map((one) => absentResult(one, library, indexOf, names))];
}

/** Never `updated`: the baseline keeps which findings there were, not their words. */
function stateOf(placed: PlacedFinding, { baseline }: LibraryReport) {
  return baseline === undefined ? {} : { baselineState: baseline.old.has(placed) ? 'unchanged' : 'new' };
}

/** Its place is the baseline, the only one that still names it; its level is that of the rule. */
function absentResult(
  { fingerprint, line }: AbsentFinding,
  library: LibraryReport,
  indexOf: ReadonlyMap<string, number>,
  names: DistinctNames,
) {
  const { rule, where } = partsOf(fingerprint);
  const index = indexOf.get(rule);
  return {
    ruleId: rule,
    ...(index !== undefined && { ruleIndex: index }),
    message: { text: withoutLinks(`Found when the baseline was written, and not any more: ${rule}, ${where}.`) },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: uriPath(pathShown(library, baselineFileName)) },
          region: { startLine: line },
        },
        logicalLocations: [{ fullyQualifiedName: where }],
      },
    ],
    partialFingerprints: { 'traywrightFinding/v1': names.of(fingerprint) },
    baselineState: 'absent',
  };
}

/** A fingerprint is the rule, then the entity and the path in it. */
function partsOf(fingerprint: string): { readonly rule: string; readonly where: string } {
  const [rule = '', ...where] = fingerprint.split(' ');
  return { rule, where: where.join(' ').trim() };
}

function result(
  placed: PlacedFinding,
  library: LibraryReport,
  indexOf: ReadonlyMap<string, number>,
  names: DistinctNames,
) {
  const { finding, at, says, related } = placed;
  const index = indexOf.get(finding.rule);
  const places = [
    ...finding.says.map((saying, one) => ({
      text: sayingWords(saying),
      place: says[one] ?? at,
    })),
    ...finding.related.map(({ note }, one) => ({ text: note, place: related[one] ?? at })),
  ];
  return {
    ruleId: finding.rule,
    ...(index !== undefined && { ruleIndex: index }),
    level: levels[finding.severity],
    message: { text: messageOf(placed) },
    locations: [
      {
        physicalLocation: { ...physical(at, library), ...inItsLine(at) },
        logicalLocations: [{ fullyQualifiedName: `${finding.entity}${finding.path === '' ? '' : ` ${finding.path}`}` }],
      },
    ],
    ...(places.length > 0 && {
      relatedLocations: places.map(({ text, place }, id) => ({
        id: id + 1,
        message: { text: withoutLinks(text) },
        physicalLocation: physical(place, library),
      })),
    }),
    partialFingerprints: { 'traywrightFinding/v1': names.of(fingerprintOf(finding)) },
    properties: { settledBy: finding.settledBy, stage: finding.stage },
  };
}

/** Readers of the form show little besides: so the quote, what we do and the gap stand in the message. */
function messageOf(placed: PlacedFinding): string {
  return withoutLinks([placed.finding.message, ...reasonWords(placed)].join('\n'));
}

/** In a message `[` would begin a link to a place. */
function withoutLinks(text: string): string {
  return text
    .split('\n')
    .map(printable)
    .join('\n')
    .replace(/[[\]\\]/g, '\\$&');
}

function physical(place: PlaceInText, library: LibraryReport) {
  return { artifactLocation: { uri: uriPath(pathShown(library, place.file)) }, region: regionOf(place) };
}

/** With the text at the place, for readers that do not have the file: only where it is one line of a length that people write. */
function regionOf({ start, end, line }: PlaceInText) {
  const text = line.slice(start.character, end.character);
  return {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
    ...(start.line === end.line && text !== '' && text.length <= longestShown && { snippet: { text } }),
  };
}

/** The whole line, where the place is a part of it. */
function inItsLine({ start, end, line }: PlaceInText) {
  const isPart = start.line === end.line && end.character - start.character < line.length;
  return isPart && line.length <= longestShown
    ? { contextRegion: { startLine: start.line + 1, endLine: start.line + 1, snippet: { text: line } } }
    : {};
}

/** Characters. */
const longestShown = 500;

/** A relative address: `/` stays, all else that an address can't hold is escaped; a colon in the first part would make a scheme. */
function uriPath(path: string): string {
  const parts = path.split('/').map((part) => encodeURIComponent(part.replace(/\p{Surrogate}/gu, '\ufffd')));
  return parts.join('/');
}
