import { printable } from '../base/printable.ts';
import type { CheckReport, LibraryReport, PlacedFinding } from './model.ts';
import { pathShown } from './model.ts';
import { DistinctNames, keptBackWords, reasonWords } from './reasons.ts';
import { reaches } from './worst-first.ts';

/**
 * JUnit XML: a suite for each library, a passing case for each file without findings, a skipped one for each finding that is kept back, and
 * a case for each other finding, which fails when the finding is at or above `failOn` (the severity that fails the check). A case is named by what stays
 * the same when lines move, so that a build server knows old findings from new ones. No times: the same library gives the same bytes.
 */
export function junitReport(report: CheckReport, failOn: string): string {
  const suites = report.libraries.map((library) => suite(library, failOn));
  const sum = (of: (one: Suite) => number): number => suites.reduce((total, one) => total + of(one), 0);
  const totals = `tests="${sum(({ tests }) => tests)}" failures="${sum(({ failures }) => failures)}" errors="0"`;
  const lines = ['<?xml version="1.0" encoding="UTF-8"?>', `<testsuites name="Traywright" ${totals}>`];
  lines.push(...suites.flatMap(({ xml }) => xml), '</testsuites>');
  return `${lines.join('\n')}\n`;
}

interface Suite {
  readonly tests: number;
  readonly failures: number;
  readonly xml: readonly string[];
}

function suite(library: LibraryReport, failOn: string): Suite {
  const names = new DistinctNames();
  const byFile = new Map<string, string[]>(library.checked.map((file) => [file, []]));
  const add = ({ at, finding }: PlacedFinding, content: string): void => {
    const path = pathShown(library, at.file);
    const name = names.of(`${path} ${finding.rule} ${finding.path}`.trimEnd()).slice(path.length + 1);
    const place = `file=${quoted(path)} line="${at.start.line + 1}"`;
    const head = `    <testcase classname=${quoted(path)} name=${quoted(name)} ${place}>`;
    byFile.get(at.file)?.push(`${head}${content}</testcase>`);
  };
  for (const placed of library.findings) add(placed, content(placed, failOn));
  for (const one of library.keptBack) add(one.placed, `<skipped message=${quoted(keptBackWords(one))}/>`);
  const cases = [...byFile].flatMap(([file, found]) =>
    found.length > 0 ? found : [`    <testcase classname=${quoted(pathShown(library, file))} name="no finding"/>`],
  );
  const failures = library.findings.filter(({ finding }) => reaches(finding.severity, failOn)).length;
  const tests = cases.length;
  const counts = `tests="${tests}" failures="${failures}" errors="0" skipped="${library.keptBack.length}"`;
  const head = `  <testsuite name=${quoted(library.label)} ${counts}>`;
  return { tests, failures, xml: [head, ...cases, '  </testsuite>'] };
}

/** A finding that does not fail the check is written down beside a passing case. */
function content(placed: PlacedFinding, failOn: string): string {
  const { finding, at } = placed;
  const place = `In line ${at.start.line + 1}, column ${at.start.character + 1}.`;
  const text = [finding.message, ...reasonWords(placed), place].join('\n');
  if (!reaches(finding.severity, failOn)) return `<system-out>${escaped(`${finding.severity}: ${text}`)}</system-out>`;
  return `<failure type=${quoted(finding.severity)} message=${quoted(finding.message)}>${escaped(text)}</failure>`;
}

function quoted(text: string): string {
  return `"${escaped(text.replaceAll('\n', ' '))}"`;
}

/** XML has no place at all for most control characters: they are made visible. */
function escaped(text: string): string {
  const visible = text
    .split('\n')
    .map(printable)
    .join('\n')
    .replace(/[\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');
  return visible
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}
