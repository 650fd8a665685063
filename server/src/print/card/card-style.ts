import type { PaperSize } from '../paper-size.ts';

/** How a card looks: black on white, weight and frames instead of colours, so that a grey printer loses nothing. */
export function cardStyle({ widthMm, heightMm, marginMm }: PaperSize, typePt: number): string {
  return `@page { size: ${widthMm}mm ${heightMm}mm; margin: ${marginMm}mm; }
* { box-sizing: border-box; }
html { font: ${typePt}pt/1.28 "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff; }
body { margin: 0 auto; max-width: ${widthMm - 2 * marginMm}mm; }
@media screen { body { padding: 1em; } }
header { display: flex; gap: 1em; align-items: flex-start; border-bottom: .22em solid #000; padding-bottom: .4em; }
header .who { flex: 1; }
h1 { font-size: 1.75em; line-height: 1.1; margin: 0; }
.kind { font-size: .82em; margin: 0; }
.photo { border: .08em dashed #000; width: 6.4em; align-self: stretch; min-height: 3.9em; font-size: .8em; display: flex; align-items: flex-end; justify-content: center; }
.seal { border: .12em solid #000; border-radius: .5em; padding: .25em .6em; text-align: center; font-size: .85em; }
.seal b { display: block; font: 700 1.5em/1.15 "Liberation Mono", "Courier New", monospace; letter-spacing: .06em; }
dl.facts { display: flex; flex-wrap: wrap; gap: .1em 1.6em; margin: .45em 0; }
dl.facts div { display: flex; gap: .4em; }
dt { font-weight: 400; } dt::after { content: ":"; } dd { margin: 0; font-weight: 700; }
.band { display: grid; grid-template-columns: 2.1em 1fr; border: .1em solid #000; margin-top: .45em; break-inside: avoid; }
.band > .tab { border-right: .1em solid #000; font-weight: 700; font-size: 1.35em; text-align: center; padding-top: .2em; }
.band > .in { padding: .3em .6em .4em; }
.band.side > .in { display: grid; grid-template-columns: 1fr auto; column-gap: .8em; }
.band.side > .in > h2, .band.side > .in > dl { grid-column: 1 / -1; }
h2 { font-size: 1.15em; margin: 0 0 .15em; text-transform: uppercase; letter-spacing: .04em; }
h3 { font-size: 1em; margin: .3em 0 0; display: inline; }
.block { margin: .18em 0 .3em; }
ul { margin: 0; padding-left: 1.05em; } li { margin: .04em 0; } li::marker { content: "\\25AA\\00A0"; }
.stop { border: .28em double #000; padding: .25em .5em; } .stop h3 { font-size: 1.3em; }
.less { font-size: .86em; border-top: .08em dashed #000; padding-top: .15em; margin-bottom: 0; }
.signs { display: inline-flex; flex-wrap: wrap; gap: .2em .5em; margin: 0 0 0 .6em; padding: 0; }
.sign { display: inline-flex; align-items: center; gap: .25em; border: .1em solid #000; border-radius: .3em; padding: 0 .35em 0 .2em; font-weight: 700; font-size: .92em; }
.sign svg { width: 1.25em; height: 1.25em; }
dl.figures { display: flex; flex-wrap: wrap; gap: .2em 1.4em; margin: .1em 0 .3em; }
dl.figures dt { font-size: .82em; } dl.figures dt::after { content: ""; }
dl.figures dd { font-size: 1.45em; line-height: 1.1; }
figure { margin: 0; width: 15.5em; text-align: center; } figure svg { width: 100%; height: auto; display: block; }
figcaption { font-size: .86em; font-weight: 700; }
footer { margin-top: .45em; font-size: .86em; } footer p { margin: .15em 0; }
footer ul { padding-left: 1em; } .cautions { font-size: .88em; columns: 2; column-gap: 1.4em; margin-top: .3em; }
.cautions li { break-inside: avoid; }
.n { white-space: nowrap; }
.draft-why { border: .2em solid #000; padding: .15em .5em; font-weight: 700; margin: .3em 0 0; }
.draft { position: fixed; inset: 0; display: flex; align-items: center; justify-content: center; pointer-events: none; z-index: 9; }
.draft span { font-size: 9em; font-weight: 700; transform: rotate(-32deg); letter-spacing: .08em; color: rgba(0, 0, 0, .17); white-space: nowrap; }
`;
}
