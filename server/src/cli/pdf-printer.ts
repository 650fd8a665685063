import { printable } from '../base/printable.ts';
import { findChromium, printPdf } from '../host/pdf.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';

/** With `--pdf`, a function that prints a written page beside itself; it says so where there is no browser, and the HTML stays. */
export function pdfPrinter(io: CommandIo, given: Arguments): ((page: string) => void) | undefined {
  if (!given.switches.has('pdf')) return undefined;
  const browser = findChromium(io.env);
  if (browser === undefined) {
    io.stderr.write('traywright: no Chromium was found, so no PDF was made; print the HTML from any browser.\n');
    return undefined;
  }
  return (page) => {
    const done = printPdf(browser, page, page.replace(/\.html$/, '.pdf'));
    if ('why' in done) io.stderr.write(`traywright: ${printable(`${page}: ${done.why}`)}\n`);
  };
}
