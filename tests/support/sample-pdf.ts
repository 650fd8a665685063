import { createHash } from 'node:crypto';
import { pdfOf } from './pdf.ts';

/** Where the invented PDF lies in each clinic of the samples, and the file that registers it. */
export const samplePdfPath = 'documents/FT-H-2.pdf';
export const samplePdfDocument = 'documents/FT-H-2.ifu.yaml';
export const samplePdfLibraries = ['saltmere-eye-clinic', 'saltmere-eye-clinic-corrected'] as const;

/** The two pages of the peroxide pouch's instruction, revision 2. Invented, like its maker. */
export function samplePdf(): Uint8Array<ArrayBuffer> {
  const first = [
    'Feltremy (invented)',
    'Peroxide pouch',
    'FT-H, instructions, revision 2',
    '',
    'Methods',
    'For vaporised hydrogen peroxide only. The film is polyolefin; no part of the',
    'pouch is paper.',
    '',
    'Limits',
    'Contents up to',
    '1.5 kg. Leave room for the seal on all sides.',
    '',
    'Page 1 of 2',
  ];
  const second = [
    'FT-H, instructions, revision 2',
    '',
    'Indicators',
    'Lay the indicator inside so that it can be read from out-',
    'side.',
    '',
    'Handling',
    'Feel for warmth on the porous side with a thermometer only.',
    '',
    'Storage',
    'Keep for no more than 183 days. Keep dry and out of the sun.',
    '',
    'Page 2 of 2',
  ];
  return pdfOf([{ lines: first }, { lines: second }]);
}

export function samplePdfChecksum(): string {
  return createHash('sha256').update(samplePdf()).digest('hex');
}
