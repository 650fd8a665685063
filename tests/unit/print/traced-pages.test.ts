import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Printing, printingOf } from '../../../server/src/print/amounts.ts';
import { deviceAnswer } from '../../../server/src/print/answer/device-answer.ts';
import { receivingSheet } from '../../../server/src/print/answer/receive.ts';
import { urgentAnswer } from '../../../server/src/print/answer/urgent.ts';
import { wetLoadSheet } from '../../../server/src/print/answer/wet-load.ts';
import { type Paper, paperHtml } from '../../../server/src/print/paper.ts';
import { defaultPaper } from '../../../server/src/print/paper-size.ts';
import { poster, posterIds } from '../../../server/src/print/posters/build.ts';
import { posterHtml } from '../../../server/src/print/posters/poster-html.ts';
import { quizOf } from '../../../server/src/print/quiz/build.ts';
import { practicalChecklist } from '../../../server/src/print/quiz/checklist.ts';
import { groundOf } from '../../../server/src/print/quiz/ground.ts';
import { Random } from '../../../server/src/print/quiz/random.ts';
import { quizSheet } from '../../../server/src/print/quiz/sheet.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { cli, folderWith } from '../../support/cli.ts';
import { readHtml } from '../../support/html.ts';
import { filesOf } from '../../support/keys/asked.ts';
import { openedSample } from '../../support/printed.ts';
import { demoDay } from '../../support/routes.ts';
import { type DepartmentName, departments, readSample } from '../../support/samples.ts';
import { type Tellers, untraced } from '../../support/traced.ts';

/* Every number on every page that is not a card (those have a test of their own) is led back to a field, or to who says it. */

const root = join(import.meta.dirname, '../../..');
const arrival = { received: '2025-03-03T18:00', neededBy: '2025-03-04T07:30' };
const changes = [
  { day: '2025-02-24', commit: 'abcdef012345', subject: '12 weights', paths: ['sets/MINOR-A.ifu.yaml'] },
];

function printingFor(name: DepartmentName, language = 'en'): Printing {
  return printingOf(openedSample(name).engine.view(), wordsOf(language));
}

/** Who may say what on pages of this library; the tellers are the check itself and what the test asked. */
function tellersFor(name: DepartmentName): Tellers {
  const { findings } = openedSample(name);
  const said = new Set([...findings.map(({ message }) => message), ...allRules.map(({ id }) => id)]);
  return {
    check: (text) => said.has(text) || said.has(`${text}.`) || /^[\w/-]+\.ifu\.yaml:\d+$/.test(text),
    asked: (text) => ['2025-03-03 18:00', '2025-03-04 07:30', '13.5 h'].includes(text) || !/\d{3}/.test(text),
    print: (text) => text === demoDay || /^\d{1,2}\.?$/.test(text),
    history: (text) =>
      changes.some(({ day, commit, subject, paths }) => [day, commit, subject, ...paths].includes(text)),
    formula: (text) =>
      [
        '1 kg',
        '80 °C',
        '10 to the power of (T − 80) / 10',
        '5 %',
        '3 %',
        '0.2 %',
        '32',
        '°C times 1.8, plus 32',
      ].includes(text),
  };
}

function faultsOf(html: string, name: DepartmentName, tellers = tellersFor(name)): readonly string[] {
  return untraced(readHtml(html), filesOf(readSample(name)), ['stamp', 'day'], tellers);
}

/** Pages of one kind about everything in the library that it can be about. */
const kinds: Readonly<Record<string, (name: DepartmentName) => readonly Paper[]>> = {
  answer: (name) => {
    const { findings } = openedSample(name);
    const printing = printingFor(name);
    return printing.view.all('device').map((device) => {
      const number = device.id?.text ?? '';
      return deviceAnswer(device, { asked: number, number, devices: [device] }, printing, demoDay, findings);
    });
  },
  urgent: (name) => {
    const printing = printingFor(name);
    const { view } = printing;
    return [
      ...view.all('device').map((device) => urgentAnswer({ device }, printing)),
      ...view.all('set').map((set) => urgentAnswer({ set }, printing)),
    ];
  },
  receive: (name) => {
    const printing = printingFor(name);
    return printing.view.all('set').map((set) => receivingSheet([set], arrival, printing));
  },
  'wet-load': (name) => {
    const { findings } = openedSample(name);
    const printing = printingFor(name);
    return printing.view.all('set').map((set) => wetLoadSheet({ set, findings, changes }, printing));
  },
};

describe.each(departments)('numbers on pages of %s', (name) => {
  it.each(Object.keys(kinds))('%s', (kind) => {
    const papers = kinds[kind]?.(name) ?? [];
    expect(papers.length).toBeGreaterThan(3);
    for (const paper of papers) expect(faultsOf(paperHtml(paper, defaultPaper), name), paper.title).toEqual([]);
  });

  it('posters in both languages', () => {
    for (const language of ['en', 'de'])
      for (const id of posterIds) {
        const shown = poster(id, printingFor(name, language));
        const html = posterHtml(shown, wordsOf(language), defaultPaper, demoDay);
        expect(faultsOf(html, name), `${id} ${language}`).toEqual([]);
      }
  });

  it('questions, what to watch at the bench, and the key', () => {
    const printing = printingFor(name);
    const quiz = quizOf(printing, openedSample(name).findings, { seed: 'night', count: 200 });
    const checklist = practicalChecklist(groundOf(printing, openedSample(name).findings), new Random('night'), 200);
    const html = paperHtml(quizSheet(quiz, checklist, printing, demoDay), defaultPaper);
    const tellers = tellersFor(name);
    const own = new Set([quiz.stamp, 'night']);
    const print = (text: string): boolean => own.has(text) || /^\d{1,3}\.?$/.test(text) || text === demoDay;
    expect(faultsOf(html, name, { ...tellers, print })).toEqual([]);
  });

  it('the binder', async () => {
    const out = folderWith({});
    await cli(['binder', `samples/${name}`, '--day', demoDay, '--out', out], { cwd: root });
    const commits = execFileSync('git', ['log', '-50', '--format=%H'], { cwd: root, encoding: 'utf8' });
    const tellers = tellersFor(name);
    const version = (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }).version;
    const faults = faultsOf(readFileSync(join(out, `binder-${demoDay}.html`), 'utf8'), name, {
      ...tellers,
      history: (text) => commits.includes(text),
      print: (text) => text === version || tellers.print?.(text) === true,
      // Counted again in a test of their own.
      tally: () => true,
    });
    expect(faults).toEqual([]);
  }, 60_000);
});

describe('a forged number', () => {
  it.each(['answer', 'urgent', 'receive', 'wet-load'])('would be caught: %s', (kind) => {
    const [paper] =
      kinds[kind]?.('lanternfield-corrected').filter((one) =>
        / kg<| min<|page <|stock/.test(paperHtml(one, defaultPaper)),
      ) ?? [];
    if (paper === undefined) throw new Error('no page with a number');
    const html = paperHtml(paper, defaultPaper);
    const forged = html.replace(
      /(data-from="[^"]*">)(\d+)(?=[^<]*<)/,
      (_, start, number) => `${start}${Number(number) + 1000}`,
    );
    expect(forged).not.toBe(html);
    expect(faultsOf(forged, 'lanternfield-corrected').length).toBeGreaterThan(0);
  });
});
