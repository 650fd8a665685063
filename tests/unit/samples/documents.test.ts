import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cli, findingsIn } from '../../support/cli.ts';
import { builtPdfReader } from '../../support/pdf-reader.ts';
import {
  samplePdf,
  samplePdfChecksum,
  samplePdfDocument,
  samplePdfLibraries,
  samplePdfPath,
} from '../../support/sample-pdf.ts';

const samples = new URL('../../../samples/', import.meta.url).pathname;
const pdfReader = builtPdfReader();

describe.each(samplePdfLibraries)('the PDF of %s', (library) => {
  it('is as its script makes it, with its checksum stored', () => {
    expect(Uint8Array.from(readFileSync(`${samples}${library}/${samplePdfPath}`))).toEqual(samplePdf());
    expect(readFileSync(`${samples}${library}/${samplePdfDocument}`, 'utf8')).toContain(
      `checksum: "${samplePdfChecksum()}"`,
    );
  });

  it('holds every quote that is taken from it: with it, a check finds what it finds without', async () => {
    const words = ['check', library, '--format', 'json', '--today', '2025-03-03'];
    const [withIt, without] = [await cli(words, { cwd: samples, pdfReader }), await cli(words, { cwd: samples })];
    expect(findingsIn(withIt.out)).toEqual(findingsIn(without.out));
  });
});
