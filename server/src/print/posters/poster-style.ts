import type { PaperSize } from '../paper-size.ts';

/** Read from two metres: large, black on white, nothing that needs colour. */
export function posterStyle({ widthMm, heightMm, marginMm, typePt }: PaperSize): string {
  return `@page { size: ${widthMm}mm ${heightMm}mm; margin: ${marginMm}mm; }
* { box-sizing: border-box; }
html { font: ${typePt * 1.22}pt/1.3 "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff; }
body { margin: 0 auto; max-width: ${widthMm - 2 * marginMm}mm; }
@media screen { body { padding: 1em; } }
h1 { font-size: 2.3em; line-height: 1.05; margin: 0 0 .2em; }
.claim { font-size: 1.3em; font-weight: 700; border-top: .2em solid #000; border-bottom: .2em solid #000; padding: .3em 0; margin: 0 0 .6em; }
.figures { display: flex; flex-wrap: wrap; justify-content: center; gap: .6em 1.2em; }
figure { margin: 0; width: 15em; text-align: center; break-inside: avoid; } .figures.one figure { width: 24em; }
figure svg { width: 100%; height: auto; } figcaption { font-weight: 700; font-size: .95em; }
ul.say { padding-left: 1.1em; font-size: 1.12em; } ul.say li { margin: .25em 0; }
ol.path { list-style: none; padding: 0; margin: .4em 0; }
ol.path li { display: grid; grid-template-columns: 1fr 1fr; margin-bottom: .55em; break-inside: avoid; position: relative; }
ol.path .ask { border: .14em solid #000; border-radius: 1.2em; padding: .4em .9em; font-weight: 700; }
ol.path .else { border: .1em dashed #000; border-left: none; padding: .4em .8em; margin: .25em 0; }
ol.path li:not(:last-child)::after { content: "\\25BC"; position: absolute; left: 24%; bottom: -.95em; font-size: .8em; }
.loud { border: .3em double #000; padding: .35em .7em; font-size: 1.5em; font-weight: 700; line-height: 1.2; margin: .5em 0; break-inside: avoid; }
table { border-collapse: collapse; width: 100%; } th, td { border: .08em solid #000; padding: .18em .5em; text-align: left; vertical-align: top; }
table.long { font-size: .8em; } .long th, .long td { padding: .04em .5em; } .n { white-space: nowrap; }
th { background: #e6e6e6; } td:first-child { font-weight: 700; }
.foot { font-size: .72em; margin-top: .9em; } .foot .cautions { columns: 2; column-gap: 1.6em; margin: .4em 0; } .cautions p { break-inside: avoid; margin: 0 0 .2em; } .foot p { margin: .2em 0; }
.foot b.stamp { font-family: "Liberation Mono", "Courier New", monospace; }
`;
}
