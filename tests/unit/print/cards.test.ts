import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { printingOf } from '../../../server/src/print/amounts.ts';
import { workCard } from '../../../server/src/print/card/build.ts';
import type { Card } from '../../../server/src/print/card/card.ts';
import { cardHtml } from '../../../server/src/print/card/card-html.ts';
import { cardMark } from '../../../server/src/print/card/card-mark.ts';
import { defaultPaper, paperSizes } from '../../../server/src/print/paper-size.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { byClass, type HtmlElement, pageFaults, readHtml, textOf } from '../../support/html.ts';
import { demoDay } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';
import { plainFiles, untraced } from '../../support/traced.ts';

/** Letters and figures of these are names or facts of the print itself. */
const free = ['id', 'stamp', 'day', 'draft-why', 'tab'];

const samples = ['lanternfield', 'lanternfield-corrected', 'saltmere-eye-clinic-corrected'] as const;

interface Sample {
  readonly texts: ReadonlyMap<FileId, string>;
  readonly engine: Engine;
}

const opened = new Map<string, Sample>();

function sample(name: string): Sample {
  const known = opened.get(name);
  if (known !== undefined) return known;
  const texts = readSample(name);
  const engine = new Engine({ rules: allRules, today: demoDay });
  for (const [file, text] of texts) engine.set(file, text);
  opened.set(name, { texts, engine });
  return { texts, engine };
}

function cardsOf({ engine }: Sample, language: string): readonly Card[] {
  const findings = engine.library.files().flatMap((file) => engine.findings(file));
  const printing = printingOf(engine.view(), wordsOf(language));
  return [...engine.view().ids('set')].sort().flatMap((id) => workCard(id, printing, demoDay, findings) ?? []);
}

function pageOf(card: Card, language = 'en'): HtmlElement {
  return readHtml(cardHtml(card, wordsOf(language), defaultPaper));
}

function cardOf(name: string, set: string, language = 'en'): HtmlElement {
  const card = cardsOf(sample(name), language).find((one) => one.set === set);
  if (card === undefined) throw new Error(`no card of ${set}`);
  return pageOf(card, language);
}

describe.each(samples)('work cards of %s', (name) => {
  it.each(['en', 'de'])('are well-formed and lead every number back to its file (%s)', (language) => {
    const files = plainFiles(sample(name).texts);
    const cards = cardsOf(sample(name), language);
    expect(cards.length).toBeGreaterThan(0);
    for (const card of cards) {
      const page = pageOf(card, language);
      expect(pageFaults(page), card.set).toEqual([]);
      expect(untraced(page, files, free), card.set).toEqual([]);
    }
  });

  it('would be caught with a number that no file holds', () => {
    const files = plainFiles(sample(name).texts);
    const card = cardsOf(sample(name), 'en').find(({ draft }) => !draft.some((reason) => reason.includes('no route')));
    if (card === undefined) throw new Error('no card');
    const html = cardHtml(card, wordsOf('en'), defaultPaper);
    const forged = readHtml(html.replace(/>([\d.]+) kg</, (_, mass) => `>${Number(mass) + 0.5} kg<`));
    expect(untraced(forged, files, free)).toHaveLength(1);
  });

  it('differ between sheets in nothing but style', () => {
    const words = wordsOf('en');
    for (const card of cardsOf(sample(name), 'en')) {
      const bodies = Object.values(paperSizes).map((paper) => cardHtml(card, words, paper).split('</style>')[1]);
      expect(new Set(bodies).size).toBe(1);
    }
  });
});

describe('a work card', () => {
  it('has its five bands in working order, each with a title', () => {
    const page = cardOf('lanternfield-corrected', 'LAP-CHOLE-B');
    expect(byClass(page, 'band').map((band) => textOf(band).slice(0, 2).charAt(0))).toEqual(['A', 'B', 'C', 'D', 'E']);
    const order = ['decontamination', 'inspection', 'packing', 'sterilizing', 'cooling'];
    expect(byClass(page, 'band').map((band) => band.attributes.get('class')?.split(' ')[1])).toEqual(order);
  });

  it('gives one route full weight, as the department decided it, and a second one small', () => {
    const page = cardOf('lanternfield-corrected', 'MINOR-A');
    const figures = byClass(page, 'figures').map(textOf).join(' ');
    expect(figures).toContain('PV132-4-20');
    expect(byClass(page, 'figures')).toHaveLength(1);
    expect(byClass(page, 'less').map(textOf).join(' ')).toContain('Ask first');
  });

  it('draws as many indicators as this packaging asks for on each level', () => {
    const marksOn = (set: string): number =>
      (cardHtmlOf(set).match(/<polygon points="[^"]*" fill="#000"/g) ?? []).length;
    const perLevel = { 'LAP-CHOLE-B': 2, 'MINOR-A': 1, 'KNEE-C': 2 };
    // Besides the marks a drawing holds six vents of a lid and the head of an arrow.
    expect(marksOn('LAP-CHOLE-B')).toBe(perLevel['LAP-CHOLE-B'] + 6 + 1);
    expect(marksOn('MINOR-A')).toBe(perLevel['MINOR-A'] + 1);
    expect(marksOn('KNEE-C')).toBe(perLevel['KNEE-C'] + 1);
  });

  it('stops where no route exists, with the words that clash, and is a draft', () => {
    const page = cardOf('lanternfield', 'LAP-CHOLE-B');
    const [stop] = byClass(page, 'stop').map(textOf);
    expect(stop).toContain('Do not use steam.');
    expect(byClass(page, 'figures')).toEqual([]);
    expect(byClass(page, 'draft').map(textOf)).toEqual(['DRAFT']);
    expect(byClass(page, 'draft-why').map(textOf).join('')).toContain('there is no route');
  });

  it('is no draft where nothing is open; an old card on the wall makes no draft', () => {
    for (const card of cardsOf(sample('lanternfield-corrected'), 'en')) expect(card.draft, card.set).toEqual([]);
  });

  it('carries its stamp for the check of printed cards', () => {
    const [card] = cardsOf(sample('lanternfield-corrected'), 'en');
    if (card === undefined) throw new Error('no card');
    const mark = cardMark(cardHtml(card, wordsOf('en'), defaultPaper));
    expect(mark).toEqual({ set: card.set, stamp: card.stamp, day: demoDay });
    expect(cardMark('<html><body>some page</body></html>')).toBeUndefined();
  });

  it('never says more than that something is consistent', () => {
    for (const name of samples) {
      for (const card of cardsOf(sample(name), 'en')) {
        const says = textOf(pageOf(card)).toLowerCase();
        for (const word of ['validated', 'compliant', 'approved', 'is sterile', 'is clean', 'is safe'])
          expect(says, card.set).not.toContain(word);
      }
    }
  });
});

function cardHtmlOf(set: string): string {
  const card = cardsOf(sample('lanternfield-corrected'), 'en').find((one) => one.set === set);
  if (card === undefined) throw new Error(`no card of ${set}`);
  return cardHtml(card, wordsOf('en'), defaultPaper);
}

describe('[X07] hostile values', () => {
  const attacks = [
    '</script><script>alert(1)</script>',
    '" onmouseover="alert(1)',
    // The text itself, not a template.
    '$' + '{7*7}',
    '<img src=x onerror=alert(1)>',
    "' style='x",
    '&lt;b&gt; &amp; &#x3c;',
    ']]> <!-- \u0007 \u202egnitset\u2066',
    '\u2028line\u2029',
  ];

  it.each(attacks)('stay text on a card: %j', (attack) => {
    const engine = new Engine({ rules: allRules, today: demoDay });
    for (const [file, text] of hostileSet(attack)) engine.set(file, text);
    const card = workCard('bad', printingOf(engine.view(), wordsOf('en')), demoDay, []);
    if (card === undefined) throw new Error('no card');
    const html = cardHtml(card, wordsOf('en'), defaultPaper);
    const page = readHtml(html);
    expect(pageFaults(page)).toEqual([]);
    for (const hidden of ['\u0007', '\u202e', '\u2066', '\u2028', '\u2029']) expect(html).not.toContain(hidden);
  });
});

function hostileSet(attack: string): readonly (readonly [FileId, string])[] {
  const value = JSON.stringify(attack);
  return [
    ['library.ifu.yaml' as FileId, `kind: library\nid: l\nnotes: [${value}]\n`],
    [
      'set.ifu.yaml' as FileId,
      `kind: set\nid: bad\nname: ${value}\nowner: ${value}\nlabel: ${value}\nmembers: [{device: d, qty: 1, instructions: [${value}]}]\n`,
    ],
    [
      'device.ifu.yaml' as FileId,
      `kind: device\nid: d\nname: ${value}\nclass: non-critical\nsources: [{doc: D-1, rev: A}]\ncleaning: {stage: manual, steps: [{do: ${value}}]}\ndisassembly: {steps: [{do: ${value}}]}\ninspection: {criteria: [${value}]}\n`,
    ],
    ['doc.ifu.yaml' as FileId, 'kind: document\nid: D-1-A\ndoc: D-1\nrev: A\nstatus: current\n'],
  ];
}
