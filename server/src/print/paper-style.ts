import type { PaperSize } from './paper-size.ts';

/**
 * How pages to read look: black on white, frames for answers, no colour that a grey printer would lose. A new page has a height, since
 * Chromium reads a heading that begins a sheet twice into its bookmark otherwise.
 */
export function paperStyle({ widthMm, heightMm, marginMm }: PaperSize, typePt: number): string {
  return `@page { size: ${widthMm}mm ${heightMm}mm; margin: ${marginMm + 3}mm;
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt "Liberation Sans", Arial, Helvetica, sans-serif; vertical-align: top; padding-top: 1.5mm; } }
* { box-sizing: border-box; }
html { font: ${typePt}pt/1.32 "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff; }
body { margin: 0 auto; max-width: ${widthMm - 2 * marginMm - 6}mm; }
@media screen { body { padding: 1em; } }
h1 { font-size: 1.6em; line-height: 1.15; margin: 0 0 .3em; border-bottom: .12em solid #000; padding-bottom: .2em; }
h2 { font-size: 1.15em; margin: .75em 0 .2em; break-after: avoid; }
h3 { font-size: 1.02em; margin: .65em 0 .15em; break-after: avoid; }
:is(h2, h3) + p:has(+ table) { break-after: avoid; }
p { margin: .3em 0; }
ul, ol { margin: .2em 0; padding-left: 1.4em; } ol { padding-left: 2.4em; } li { margin: .12em 0; break-inside: avoid; }
.verdict { border: .22em solid #000; padding: .4em .8em; margin: .5em 0; break-inside: avoid; }
.verdict .says { font-size: 1.5em; font-weight: 700; line-height: 1.2; margin: 0 0 .15em; }
blockquote { margin: .25em 0 .25em .6em; padding-left: .6em; border-left: .25em solid #000; break-inside: avoid; }
table { border-collapse: collapse; width: calc(100% - .14em); margin: .25em .07em; font-size: .95em; line-height: 1.25; }
table.whole { break-inside: avoid; } td.narrow { white-space: nowrap; }
th, td { border: .07em solid #000; padding: .12em .4em; text-align: left; vertical-align: top; }
th { background: #e6e6e6; } thead { display: table-header-group; } tr { break-inside: avoid; }
figure { margin: .4em 0; break-inside: avoid; text-align: center; } figure svg { max-width: 100%; height: auto; }
figcaption { font-size: .9em; font-weight: 700; }
.contents a { color: #000; } .contents li { max-width: 32em; } .contents .sheet { float: right; }
ul.choices { list-style: none; padding-left: .4em; break-inside: avoid; break-before: avoid; }
ul.cautions { font-size: .8em; line-height: 1.25; columns: 2; column-gap: 1.6em; padding-left: 1.2em; margin: .8em 0 0; border-top: .07em solid #000; padding-top: .35em; break-inside: avoid; }
.n { white-space: nowrap; }
.small { font-size: .86em; }
.blank { border-bottom: .07em solid #000; height: 1.9em; font-size: .9em; }
.new-page { break-before: page; height: 1px; }
.draft { position: fixed; inset: 0; }
`;
}
