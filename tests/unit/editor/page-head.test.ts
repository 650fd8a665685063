import { describe, expect, it } from 'vitest';
import { pageHead } from '../../../server/src/editor/page/page-head.ts';
import { printedDate } from '../../../server/src/editor/page/printed-dates.ts';

/** The head of a page, and what it says as one line a file: fields in their order. */
const heads: readonly (readonly [head: string, document: string, device: string])[] = [
  [
    `Merridew Instruments Ltd.
Cleaning, disinfection and sterilization of reusable dilators
MI-IFU-093 Version 7.1, valid from 2026-05-01                                    page 1 of 2

Product: dilator with stopcock, items 093-4, 093-5 and 093-6
Made of stainless steel.`,
    'doc MI-IFU-093 | rev 7.1 | title Cleaning, disinfection and sterilization of reusable dilators | maker Merridew Instruments Ltd. | lang en | effective 2026-05-01 | pages 2',
    'doc MI-IFU-093 | rev 7.1 | maker Merridew Instruments Ltd. | name dilator with stopcock | covers 093-4; 093-5; 093-6',
  ],
  [
    `CALDMOOR SURGICAL
Reprocessing instructions
CS-RPI-118 / edition 3 / 15 March 2026
page 1 of 4

Powered bone drill, REF 118-200`,
    'doc CS-RPI-118 | rev 3 | title Reprocessing instructions | maker CALDMOOR SURGICAL | lang en | issued 2026-03-15 | pages 4',
    'doc CS-RPI-118 | rev 3 | maker CALDMOOR SURGICAL | name Powered bone drill | covers 118-200',
  ],
  [
    `Lindau Medizintechnik - Aufbereitungsanleitung für Nadelhalter LM-AA-207, Ausgabe 4, 03/2026, Seite 1 von 1
Nadelhalter mit Hartmetalleinsatz, Artikelnummern LM 61-120 bis LM 61-126`,
    'doc LM-AA-207 | rev 4 | title Aufbereitungsanleitung für Nadelhalter | maker Lindau Medizintechnik | lang de | issued 2026-03 | pages 1',
    'doc LM-AA-207 | rev 4 | maker Lindau Medizintechnik',
  ],
  [
    `Fernhollow Orthopaedics - How to reprocess the drill guide and sleeves
FH/IFU/031, version 2.1.`,
    'doc FH/IFU/031 | rev 2.1 | title How to reprocess the drill guide and sleeves | maker Fernhollow Orthopaedics | lang en',
    'doc FH/IFU/031 | rev 2.1 | maker Fernhollow Orthopaedics',
  ],
  // Nothing but sentences: nothing is read.
  ['Rinse the device under running water for at least two minutes.', 'lang en', ''],
  // The number of a section is no title, and a page without a number no page.
  [
    `Hexley Surgical      Reprocessing      HX-12 Rev. 3

2 Automated cleaning
Rinse for 2 min.`,
    'doc HX-12 | rev 3 | maker Hexley Surgical | lang en',
    'doc HX-12 | rev 3 | maker Hexley Surgical',
  ],
];

function inOneLine(answers: Readonly<Record<string, readonly string[]>>): string {
  return Object.entries(answers)
    .map(([key, texts]) => `${key} ${texts.join('; ')}`)
    .join(' | ');
}

describe('the head of a page', () => {
  it.each(heads)('%s', (head, document, device) => {
    const read = pageHead(head);
    expect([inOneLine(read.document), inOneLine(read.device)]).toEqual([
      document === 'lang en' ? '' : document,
      device,
    ]);
  });
});

describe('a printed date', () => {
  it.each([
    ['Issued 2026-08', '2026-08'],
    ['of 2026-08-04', '2026-08-04'],
    ['15 March 2026', '2026-03-15'],
    ['March 5, 2026', '2026-03-05'],
    ['May 2026', '2026-05'],
    ['1. Juni 2026', '2026-06-01'],
    ['décembre 2025', '2025-12'],
    ['05.03.2026', '2026-03-05'],
    ['03/2026', '2026-03'],
    // Two days are meant by it.
    ['05/03/2026', undefined],
    ['FC-2026-99', undefined],
    ['99 mm', undefined],
  ])('%s', (text, date) => {
    expect(printedDate(text)?.date).toBe(date);
  });
});
