import { printable } from '../base/printable.ts';
import { PdfReader } from '../host/pdf/pdf-reader.ts';
import { findChromium, printPdf, printPdfOf } from '../host/pdf.ts';
import { readBytes } from '../host/read-text.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';

/** From the texts of the printed sheets, the same page with what only they can tell; undefined where it stays as it is. */
export type PrintAgain = (texts: readonly string[]) => string | undefined;

/**
 * With `--pdf`, a function that prints a written page beside itself, where asked a second time; it says so where there is no browser, and
 * the HTML stays.
 */
export function pdfPrinter(io: CommandIo, given: Arguments): ((page: string, again?: PrintAgain) => void) | undefined {
  if (!given.switches.has('pdf')) return undefined;
  const browser = findChromium(io.env);
  if (browser === undefined) {
    io.stderr.write('traywright: no Chromium was found, so no PDF was made; print the HTML from any browser.\n');
    return undefined;
  }
  return (page, again) => {
    const target = page.replace(/\.html$/, '.pdf');
    const done = printPdf(browser, page, target);
    if ('why' in done) {
      io.stderr.write(`traywright: ${printable(`${page}: ${done.why}`)}\n`);
      return;
    }
    const html = again === undefined ? undefined : again(textsOf(target, io));
    // Should the second print fail, the first one is whole and stays.
    if (html !== undefined) printPdfOf(browser, html, target);
  };
}

const largest = 64_000_000;

/** The text of each sheet; none where it can't be read. */
function textsOf(target: string, { pdfReader }: CommandIo): readonly string[] {
  const reader = pdfReader === undefined ? undefined : new PdfReader(pdfReader);
  const read = readBytes(target, largest);
  if (reader?.isThere !== true || !('bytes' in read)) return [];
  const found = reader.readNow(new Uint8Array(read.bytes));
  reader.end();
  return 'pages' in found ? found.pages.map(({ text }) => text) : [];
}
