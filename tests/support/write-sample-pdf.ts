// Writes the invented PDF of the samples anew, with its checksum: node server/build/run.mjs tests/support/write-sample-pdf.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { samplePdf, samplePdfChecksum, samplePdfDocument, samplePdfLibraries, samplePdfPath } from './sample-pdf.ts';

for (const library of samplePdfLibraries) {
  const folder = resolve('samples', library);
  writeFileSync(resolve(folder, samplePdfPath), samplePdf());
  const document = resolve(folder, samplePdfDocument);
  const text = readFileSync(document, 'utf8');
  writeFileSync(document, text.replace(/^checksum: .*$/m, `checksum: "${samplePdfChecksum()}"`));
}
