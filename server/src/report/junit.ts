import { printable } from '../base/printable.ts';
import type { CheckReport, LibraryReport, PlacedFinding } from './model.ts';
import { pathShown } from './model.ts';
import { settlerWords } from './words.ts';
import { reaches } from './worst-first.ts';

/**
 * JUnit XML: a suite for each library, a passing case for each file without findings, and a case for each finding, which fails when the
 * finding is at or above `failOn` (as `--fail-on` has it). No times: the same library gives the same bytes.
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
  const byFile = new Map<string, PlacedFinding[]>(library.checked.map((file) => [file, []]));
  for (const placed of library.findings) byFile.get(placed.at.file)?.push(placed);
  const cases = [...byFile].flatMap(([file, found]) => casesOf(pathShown(library, file), found, failOn));
  const failures = library.findings.filter(({ finding }) => reaches(finding.severity, failOn)).length;
  const tests = cases.length;
  const head = `  <testsuite name=${quoted(library.label)} tests="${tests}" failures="${failures}" errors="0" skipped="0">`;
  return { tests, failures, xml: [head, ...cases, '  </testsuite>'] };
}

function casesOf(path: string, found: readonly PlacedFinding[], failOn: string): readonly string[] {
  if (found.length === 0) return [`    <testcase classname=${quoted(path)} name="no finding"/>`];
  return found.map((placed) => {
    const { finding, at } = placed;
    const line = at.start.line + 1;
    const name = `${finding.rule} in line ${line}, column ${at.start.character + 1}`;
    const head = `    <testcase classname=${quoted(path)} name=${quoted(name)} file=${quoted(path)} line="${line}">`;
    return `${head}${content(placed, failOn)}</testcase>`;
  });
}

/** A finding that does not fail the check is written down beside a passing case. */
function content({ finding }: PlacedFinding, failOn: string): string {
  const says = finding.says.map(
    ({ quote, doc, rev, page }) => `The instruction says: “${quote}” (${doc}, ${rev}, page ${page})`,
  );
  const does = finding.does === undefined ? [] : [`We do: ${finding.does}`];
  const gap = finding.gap === undefined ? [] : [`Gap: ${finding.gap}`];
  const text = [
    finding.message,
    ...says,
    ...does,
    ...gap,
    `Who can settle it: ${settlerWords[finding.settledBy]}`,
  ].join('\n');
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
