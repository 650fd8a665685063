import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { printingOf } from '../../../server/src/print/amounts.ts';
import { receivingSheet } from '../../../server/src/print/answer/receive.ts';
import { urgentAnswer } from '../../../server/src/print/answer/urgent.ts';
import { wetLoadSheet } from '../../../server/src/print/answer/wet-load.ts';
import { type Paper, paperHtml } from '../../../server/src/print/paper.ts';
import { defaultPaper } from '../../../server/src/print/paper-size.ts';
import { poster } from '../../../server/src/print/posters/build.ts';
import { posterHtml } from '../../../server/src/print/posters/poster-html.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { cli, folderWith } from '../../support/cli.ts';
import { elementsIn, type HtmlElement, readHtml, textOf } from '../../support/html.ts';
import { amountIn, filesOf, isTable, type Plain, tablesIn } from '../../support/keys/asked.ts';
import { airKPa, saturatedKPa } from '../../support/keys/sums.ts';
import { openedSample } from '../../support/printed.ts';
import { demoDay } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';
import { numbersIn, valueAt } from '../../support/traced.ts';

/* Numbers on paper that no file holds: worked out or counted a second time, by the reader of the page alone. */

const root = join(import.meta.dirname, '../../..');

const printing = (name: Parameters<typeof openedSample>[0]) =>
  printingOf(openedSample(name).engine.view(), wordsOf('en'));

function pageOf(paper: Paper): HtmlElement {
  return readHtml(paperHtml(paper, defaultPaper));
}

function tablesOf(page: HtmlElement): readonly (readonly (readonly string[])[])[] {
  const named = (parent: HtmlElement, name: string): readonly HtmlElement[] =>
    [...elementsIn(parent)].filter((one) => one.name === name);
  return named(page, 'table').map((table) =>
    named(table, 'tr').map((row) => [...named(row, 'th'), ...named(row, 'td')].map((cell) => textOf(cell))),
  );
}

function first(text: string | undefined): number {
  return Number(numbersIn(text ?? '')[0]);
}

describe.each(['lanternfield-corrected', 'saltmere-eye-clinic'] as const)('worked out for %s', (name) => {
  const files = filesOf(readSample(name));

  it('the wall table of temperature and pressure', () => {
    const shown = poster('units', printing(name));
    const [table = []] = tablesOf(readHtml(posterHtml(shown, wordsOf('en'), defaultPaper, demoDay)));
    expect(table.length).toBeGreaterThan(5);
    for (const [celsius, fahrenheit, kPa, psi] of table.slice(1)) {
      const expected = saturatedKPa(first(celsius)) - airKPa(files);
      expect(first(fahrenheit), celsius).toBeCloseTo(first(celsius) * 1.8 + 32, -0.4);
      expect(Math.abs(first(kPa) - expected), `${celsius} ${kPa}`).toBeLessThan(0.02 * Math.abs(expected) + 1);
      expect(Math.abs(first(psi) * 6.894757 - first(kPa)), `${kPa} ${psi}`).toBeLessThan(1);
    }
  });

  it('the least time of urgent answers: no more than all stated times together', () => {
    let timed = 0;
    for (const device of printing(name).view.all('device')) {
      const page = pageOf(urgentAnswer({ device }, printing(name)));
      const rows = tablesOf(page).find(([head]) => head?.[0] === 'Step');
      if (rows === undefined) continue;
      timed++;
      const total = [...elementsIn(page)].find(
        ({ attributes }) => attributes.get('data-how') === 'computed' && attributes.has('data-from'),
      );
      const origins = (total?.attributes.get('data-from') ?? '').split(' ');
      const sum = origins.map((origin) => amountIn(String(valueAt(files, origin)))).reduce((a, b) => a + b, 0);
      expect(amountIn(total === undefined ? '' : textOf(total))).toBeLessThanOrEqual(sum);
      expect(amountIn(total === undefined ? '' : textOf(total))).toBeGreaterThan(sum - 60);
    }
    if (name === 'lanternfield-corrected') expect(timed).toBeGreaterThan(0);
  });

  it('the mass on each level, where shared equally', () => {
    const { findings } = openedSample(name);
    for (const set of printing(name).view.all('set')) {
      const page = pageOf(wetLoadSheet({ set, findings, changes: [] }, printing(name)));
      const rows = tablesOf(page).find(([head]) => head?.[0] === 'What') ?? [];
      const cell = (what: string): string | undefined => rows.find(([words]) => words?.startsWith(what))?.[1];
      const each = cell('mass on each level');
      if (each !== undefined) expect(first(each)).toBeCloseTo(first(cell('mass')) / first(cell('levels')), 2);
    }
  });
});

it('hours that a tray on loan comes too late', () => {
  const sheet = printing('lanternfield');
  const set = sheet.view.get('set', 'KNEE-C');
  if (set === undefined) throw new Error('no KNEE-C');
  const says = textOf(
    pageOf(receivingSheet([set], { received: '2025-03-03T18:00', neededBy: '2025-03-04T07:30' }, sheet)),
  );
  const site = valueAt(filesOf(readSample('lanternfield')), 'site/lanternfield#policies.loaner_lead');
  expect(amountIn(String(site)) / 3600).toBe(48);
  expect(says).toContain('13.5 h are left, and the department needs 48 h: 34.5 h short.');
});

describe('the binder counts', () => {
  let page: HtmlElement;
  let status: readonly (readonly string[])[] = [];
  const files = filesOf(readSample('lanternfield'));

  beforeEach(async () => {
    if (status.length > 0) return;
    const out = folderWith({});
    await cli(['binder', 'samples/lanternfield', '--day', demoDay, '--out', out], { cwd: root });
    page = readHtml(readFileSync(join(out, `binder-${demoDay}.html`), 'utf8'));
    status = tablesOf(page).find(([head]) => head?.[1] === 'How many') ?? [];
  });

  const told = (what: string): string | undefined => status.find(([words]) => words?.startsWith(what))?.[1];
  const ofKind = (kind: string): readonly Plain[] =>
    [...files].flatMap(([name, file]) => (name.startsWith(`${kind}/`) && isTable(file) ? [file] : []));

  it('findings by weight, as many as it lists', () => {
    const listed = tablesOf(page).find(([head]) => head?.[0] === 'Weight') ?? [];
    for (const [weight, what] of [
      ['error', 'errors'],
      ['warning', 'warnings'],
      ['advice', 'advice'],
    ] as const)
      expect(first(told(`${what} open`)), what).toBe(listed.filter(([one]) => one === weight).length);
  });

  it('families in sets, and those that are encoded', () => {
    const named = new Set(
      ofKind('set').flatMap(({ members, case: box }) => [
        ...tablesIn(members).flatMap(({ device }) => (typeof device === 'string' ? [device] : [])),
        ...(typeof box === 'string' && files.has(`device/${box}`) ? [box] : []),
      ]),
    );
    const encoded = [...named].filter((id) => files.has(`device/${id}`)).length;
    expect(told('device families in sets')).toBe(`${encoded} of ${named.size}`);
  });

  it('reviews: current, overdue and without a day', () => {
    for (const kind of ['document', 'device', 'packaging', 'procedure', 'chemistry']) {
      const due = ofKind(kind).map(({ review }) => (isTable(review) ? review.due : undefined));
      const overdue = due.filter((day) => typeof day === 'string' && day < demoDay).length;
      const without = due.filter((day) => day === undefined).length;
      const current = due.length - overdue - without;
      expect(told(`${kind} files`), kind).toBe(`${current} current, ${overdue} overdue, ${without} without a day`);
    }
  });

  it('rule files read', () => {
    expect(textOf(page)).toContain(`Rule files read: ${readSample('lanternfield').size}.`);
  });
});

it('a binder gives of a set what the cycle on its card gives, where another one would do as well', async () => {
  const out = folderWith({});
  await cli(['binder', 'samples/lanternfield-corrected', '--day', demoDay, '--out', out], { cwd: root });
  const says = textOf(readHtml(readFileSync(join(out, `binder-${demoDay}.html`), 'utf8')));
  const minor = /\(MINOR-A\)\n(.*?)Small bone E/s.exec(says)?.[1] ?? '';
  expect(minor).toContain('PV132-4-20');
  expect(minor).toMatch(/at least 20 min\s*20 min/);
});

it('a logged curve: readings, time in the band, extremes and lethality', async () => {
  const rows = Array.from(
    { length: 31 },
    (_, index) => `${index * 10},${index === 7 ? 135.5 : 134.5},${index === 3 ? 300 : 310}`,
  );
  const folder = folderWith({ 'log.csv': ['time (s),temperature (°C),pressure (kPa abs)', ...rows, ''].join('\n') });
  const words = ['cycle-record', join(folder, 'log.csv'), '--cycle', 'S2-pv134-4-30', '--format', 'html'];
  const { out } = await cli([...words, '--library', 'samples/lanternfield-corrected'], { cwd: root });
  const page = readHtml(out);
  const seen = new Map(tablesOf(page)[0]?.map(([what = '', value = '']) => [what, value]));
  expect(textOf(page)).toContain('31 readings');
  expect(amountIn(seen.get('exposure in the band, without a break') ?? '')).toBe(300);
  expect(seen.get('temperature, highest in the whole log')).toBe('135.5 °C');
  expect(seen.get('temperature, lowest in the exposure')).toBe('134.5 °C');
  // Five minutes at 134.5 °C, counted as minutes at 121.11 °C, and a little more for the one warmer reading.
  const least = 5 * 10 ** ((134.5 - 121.11) / 10);
  expect(first(seen.get('F0 of the curve'))).toBeGreaterThan(least);
  expect(first(seen.get('F0 of the curve'))).toBeLessThan(least * 1.02);
  expect(first([...seen].find(([what]) => what.includes('lower bound'))?.[1])).toBeCloseTo(least, 0);
});
