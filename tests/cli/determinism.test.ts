import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../server/src/base/brand.ts';
import { catalogueOf } from '../../server/src/check/catalogue.ts';
import { checkFormats } from '../../server/src/cli/check-outputs.ts';
import { judgedNow } from '../../server/src/cli/judged-library.ts';
import { reportOn } from '../../server/src/cli/library-report.ts';
import { openLibrary } from '../../server/src/cli/open-library.ts';
import { findLibraries } from '../../server/src/host/library-search.ts';
import { annotations } from '../../server/src/report/annotations.ts';
import { checkMarkdown } from '../../server/src/report/check-markdown.ts';
import { plainPalette } from '../../server/src/report/colour.ts';
import { jsonReport } from '../../server/src/report/json.ts';
import { junitReport } from '../../server/src/report/junit.ts';
import { sarifReport } from '../../server/src/report/sarif.ts';
import { textReport } from '../../server/src/report/text.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { Seeded } from '../bench/seeded.ts';
import { badText, cli, folderWith, goodText, libraryText } from '../support/cli.ts';

const files: Record<string, string> = {
  'library.ifu.yaml': libraryText,
  'a.ifu.yaml': badText,
  'b.ifu.yaml': badText,
  'B/c.ifu.yaml': badText,
  'b/c.ifu.yaml': goodText,
  'é.ifu.yaml': badText,
  'z.ifu.yaml': 'kind: set\nid: s1\nmembers:\n  - {device: nowhere, quantity: 1}\n',
};

const silent = { step: () => undefined, end: () => undefined };

function reportOf(root: string, order: (paths: readonly string[]) => readonly string[]): string {
  const [found] = findLibraries(['.'], root).libraries;
  if (found === undefined) throw new Error('no library');
  const shuffled = { ...found, listing: { ...found.listing, ruleFiles: order(found.listing.ruleFiles) } };
  const open = openLibrary(shuffled, {
    rules: allRules,
    asked: undefined,
    clock: '2025-03-03' as IsoDate,
    progress: silent,
  });
  const report = { libraries: [reportOn(shuffled, judgedNow(open), { label: '.', progress: silent })], notices: [] };
  return [
    textReport(report, { palette: plainPalette, columns: 100, detail: 'full' }),
    jsonReport(report),
    sarifReport(report, { version: '0', catalogue: catalogueOf(allRules) }),
    junitReport(report, 'error'),
    annotations(report),
    checkMarkdown(report, plainPalette),
  ].join('\n');
}

describe('the same library gives the same bytes', () => {
  it('in whatever order the disk lists its files', () => {
    const root = folderWith(files);
    const straight = reportOf(root, (paths) => paths);
    const random = new Seeded(20250303);
    for (let round = 0; round < 20; round++) expect(reportOf(root, (paths) => random.shuffled(paths))).toBe(straight);
  });

  it('in whatever order its files were made, and wherever it lies', async () => {
    const one = folderWith(files);
    const other = folderWith(Object.fromEntries(Object.entries(files).reverse()));
    for (const format of checkFormats) {
      const first = await cli(['check', '--format', format], { cwd: one });
      expect(await cli(['check', '--format', format], { cwd: other })).toEqual(first);
      expect(first.out).not.toContain(one);
    }
  });

  it('in whatever order paths are given', async () => {
    const cwd = folderWith({
      'one/library.ifu.yaml': libraryText,
      'one/a.ifu.yaml': badText,
      'two/library.ifu.yaml': libraryText,
    });
    const straight = await cli(['check', 'one', 'two'], { cwd });
    expect(await cli(['check', 'two', 'one', join(cwd, 'one')], { cwd })).toEqual(straight);
  });
});
