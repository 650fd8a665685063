import { describe, expect, it } from 'vitest';
import { isReview } from '../../../client/page/review.ts';
import { textOfBlocks } from '../../../server/src/report/blocks.ts';
import { plainPalette } from '../../../server/src/report/colour.ts';
import { compareHtml } from '../../../server/src/report/compare-html.ts';
import { compareJson } from '../../../server/src/report/compare-json.ts';
import { compareMarkdown } from '../../../server/src/report/compare-markdown.ts';
import { comparePage } from '../../../server/src/report/compare-page.ts';
import { classWords, countWords, effectOf } from '../../../server/src/report/compare-words.ts';
import { Placer } from '../../../server/src/report/model.ts';
import { reviewSheet } from '../../../server/src/report/review-sheet.ts';
import { reviewOf } from '../../../server/src/revision/review.ts';
import { needsDecision } from '../../../server/src/revision/sign-off.ts';
import { signOffDrafts } from '../../../server/src/revision/write-sign-off.ts';
import { fileEntity, reviewOfSamples, sampleEntities, sampleLibrary } from '../../support/revisions.ts';
import { demoDay } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

const review = reviewOfSamples('lanternfield-corrected', 'lanternfield-revision', 'part');
const head = { old: 'D', now: 'E', department: 'Effects are derived.', notices: [] };

describe('revision D to E of the take-apart scissors', () => {
  it('two stricter, a new prohibition, one looser, one re-citation, one became silent, each with its effect here', () => {
    expect(review.changes.map((change) => [change.here?.effect, change.class, change.path])).toEqual([
      ['route-breaks', 'stricter', 'sterilization.any_of[pv132].dry'],
      ['card-changes', 'stricter', 'sterilization.any_of[pv132].exposure'],
      ['card-changes', 'became-silent', 'inspection.insulation_test'],
      ['card-changes', 'looser', 'cleaning.all_of[manual].flush.volume'],
      ['nothing-visible', 're-citation', 'statements'],
      ['unused-only', 'new-prohibition', 'not[vh2o2]'],
    ]);
    expect(review.counts).toEqual({
      'new-prohibition': 1,
      stricter: 2,
      'became-silent': 1,
      looser: 1,
      're-citation': 1,
    });
  });

  it('breaks the route of the laparoscopic set, and says by how much and what is left', () => {
    expect(review.routes.map(({ of, effect }) => [of, effect])).toEqual([['set/LAP-CHOLE-B', 'route-breaks']]);
    expect(review.changes[0]?.here?.words).toMatch(
      /LAP-CHOLE-B: S1-pv132-4-30 in P3-rigid-container no longer holds: Drying time: .* at least 40 min, here 30 min \(10 min short\)/,
    );
    expect(review.changes[0]?.here?.words).toContain('S1-pv132-4-40 in P3-rigid-container');
    expect(review.changes[0]?.here?.governors).toEqual([
      {
        set: 'set/LAP-CHOLE-B',
        words: expect.stringMatching(
          /^Drying time: at least 30 min before .*, at least 40 min after \(duskwell-lap-scissors-takeapart\)$/,
        ),
      },
    ]);
  });

  it('shows the passage that is gone, with the change that tells of it', () => {
    const silent = review.changes.find((change) => change.class === 'became-silent');
    expect(review.lost.map(({ saying, reportedBy }) => [saying.quote, reportedBy])).toEqual([
      ['Test the insulation over the full length before each use.', [silent?.fingerprint]],
    ]);
  });

  it('reaches cards, procedures, quiz, training, machines and the shelf', () => {
    const impact = review.changes[0]?.impact;
    expect(impact).toMatchObject({
      sets: ['LAP-CHOLE-B'],
      cards: ['LAP-CHOLE-B'],
      quizzes: ['Q1-scissors-dry'],
      training: ['T3-insulation-test'],
      roles: ['technician'],
      stock: [{ set: 'LAP-CHOLE-B', packs: 4, usesAMonth: 22 }],
      shelfChoice: 'needed',
    });
    expect(impact?.procedures).toEqual(expect.arrayContaining(['PR24-takeapart-scissors', 'PR8-one-cycle']));
    expect(impact?.equipment).toEqual(expect.arrayContaining(['sterilizer/S1', 'packaging/P3-rigid-container']));
  });

  it('names the revision with its dates and the maker’s reason', () => {
    expect(review.revisions).toEqual([
      expect.objectContaining({
        doc: 'DW-REP-077',
        from: 'D',
        to: 'E',
        effective: '2025-04-01',
        reason: 'Sterilization table revised.',
      }),
    ]);
  });

  it('one change alone has the effect that it has among others', () => {
    const file = [...readSample('lanternfield-corrected')].find(([path]) => path.includes('duskwell-lap'))?.[1] ?? '';
    const alone = reviewOf({
      before: sampleEntities('lanternfield-corrected'),
      after: [fileEntity(file.replace('dry: {at_least: 30 min}', 'dry: {at_least: 40 min}'))],
      extent: 'part',
      library: sampleLibrary('lanternfield-corrected'),
      today: demoDay,
    });
    const dry = alone.changes.find(({ path }) => path.endsWith('.dry'));
    expect(dry?.here).toEqual(review.changes[0]?.here);
  });

  it('against the department as it is, nothing is missing either', () => {
    const seeded = reviewOfSamples('lanternfield', 'lanternfield-revision', 'part');
    expect(seeded.counts).toEqual(review.counts);
  });
});

describe('decisions', () => {
  const [draft] = signOffDrafts(review);
  const completed = (draft?.text ?? '')
    .replace(/decision: .*/g, 'decision: agree')
    .replace(/shelf_stock: {3,}.*/g, 'shelf_stock: reprocess')
    .replace(/reviewer: .*/, 'reviewer: educator-1')
    .replace(/second_reader: .*/, 'second_reader: educator-2')
    .replace(/manager: .*/, 'manager: manager')
    .replace(/^on: .*/m, 'on: 2025-03-03')
    .replace(/shelf_stock_reason: .*/, 'shelf_stock_reason: insulation was tested')
    .replace(/archived: .*/, 'archived: documents, kept');
  const input = { extent: 'part', library: sampleLibrary('lanternfield-corrected'), today: demoDay } as const;
  const [before, after] = [sampleEntities('lanternfield-corrected'), sampleEntities('lanternfield-revision')];
  const signed = (record: string, now = after) =>
    reviewOf({ ...input, before: [...before, fileEntity(record, 'record')], after: now }).signOffs;

  it('machine help writes one record whose every choice is empty', () => {
    expect(signOffDrafts(review)).toHaveLength(1);
    expect(draft?.text).toMatch(
      /doc: "DW-REP-077"\nabout: "duskwell-lap-scissors-takeapart"\nfrom_rev: "D"\nto_rev: "E"/,
    );
    expect(draft?.text).not.toMatch(/decision: (agree|disagree|ask)/);
    expect(draft?.text.match(/- fingerprint:/g)).toHaveLength(5);
  });

  it('a record of what was decided holds only that, under a name of its own', () => {
    const [first, second] = review.changes.filter(needsDecision);
    const decisions = new Map([[first?.fingerprint ?? '', 'ask' as const]]);
    const [partly, more] = signOffDrafts(review, { decisions, isTaken: (id) => id === 'SO-DW-REP-077-E' });
    expect(more).toBeUndefined();
    expect(partly?.id).toBe('SO-DW-REP-077-E-2');
    expect(partly?.text).toContain('\nid: SO-DW-REP-077-E-2\n');
    expect(partly?.text).toContain(`fingerprint: "${first?.fingerprint}"`);
    expect(partly?.text).toContain('decision: ask\n');
    expect(partly?.text).not.toContain(second?.fingerprint);
  });

  it('a completed record settles every change', () => {
    expect(review.signOffs.undecided).toBe(5);
    expect(signed(completed)).toMatchObject({ undecided: 0, unused: [], lacking: [] });
  });

  it('a record without a second reader settles nothing', () => {
    const check = signed(completed.replace('second_reader: educator-2', 'second_reader: educator-1'));
    expect(check.undecided).toBe(5);
    expect(check.lacking).toEqual(['SO-DW-REP-077-E: the same role as reviewer and second reader']);
  });

  it('any later edit of either side opens it again', () => {
    const text = [...readSample('lanternfield-revision').values()].find((one) => one.includes('kind: device')) ?? '';
    const edited = [fileEntity(text.replace('lang: en', 'lang: en\nnotes: [read again]'), 'edited')];
    const states = signed(completed, edited)
      .decisions.filter(({ record }) => record !== undefined)
      .map(({ state }) => state);
    expect(states.length).toBeGreaterThan(0);
    expect(new Set(states)).toEqual(new Set(['reopened']));
  });

  it('a record past its day, and a decision on a change that is not there, are told', () => {
    expect(signed(`${completed}expires: 2025-01-01\n`).decisions.some(({ state }) => state === 'expired')).toBe(true);
    const other = completed.replace(/fingerprint: "[0-9a-f]+"/, 'fingerprint: "00000000"');
    expect(signed(other)).toMatchObject({
      undecided: 1,
      unused: [{ record: 'SO-DW-REP-077-E', fingerprint: '00000000' }],
    });
  });
});

describe('every surface tells the same', () => {
  const texts = new Map([...readSample('lanternfield-corrected'), ...readSample('lanternfield-revision')]);
  const placer = new Placer((file) => texts.get(file) ?? '');
  const surfaces = {
    text: textOfBlocks(comparePage(review, head), plainPalette),
    markdown: compareMarkdown(review, head),
    html: compareHtml(review, head),
    json: compareJson(review, head, { before: placer, after: placer }),
  };

  it.each(Object.entries(surfaces))('%s', (name, shown) => {
    const plain = shown.replaceAll('\\', '');
    for (const change of review.changes) {
      expect(plain).toContain(name === 'json' ? `"class": "${change.class}"` : classWords[change.class]);
      expect(plain).toContain(change.path);
      expect(plain).toContain(name === 'json' ? `"effect": "${change.here?.effect}"` : effectOf(change));
      expect(plain).toContain((change.after ?? change.before)?.words.slice(0, 20));
    }
    expect(plain).toContain('Test the insulation over the full length before each use.');
    expect(plain).toContain('LAP-CHOLE-B');
    expect(plain).toContain('Consistent with the encoded instruction');
  });

  it('the view in the editor, each change in its own row', () => {
    const { sheet, places } = reviewSheet(review, head);
    expect(isReview(JSON.parse(JSON.stringify(sheet)))).toBe(true);
    expect(sheet.counts).toBe(countWords(review));
    expect(sheet.changes).toHaveLength(review.changes.length);
    for (const [index, row] of sheet.changes.entries()) {
      const change = review.changes[index];
      expect(row).toMatchObject({
        fingerprint: change?.fingerprint,
        title: classWords[change?.class ?? 'different'],
        where: `${change?.path} in device duskwell-lap-scissors-takeapart`,
        effect: change === undefined ? '' : effectOf(change),
        effectWords: change?.here?.words,
        old: { words: change?.before?.words ?? '' },
        now: { words: change?.after?.words ?? '' },
      });
      expect(surfaces.text).toContain(row.fingerprint);
      for (const text of [...row.reach, row.effectWords, row.action]) expect(surfaces.text).toContain(text);
      for (const { text } of [...row.old.quotes, ...row.now.quotes]) {
        expect(surfaces.text).toContain(text);
        expect(JSON.parse(surfaces.json).changes[index]).toSatisfy((one: unknown) =>
          JSON.stringify(one).includes(JSON.stringify(text)),
        );
      }
      expect(row.needs).toBe(change?.class === 're-citation' ? 'look' : 'decide');
    }
    expect(sheet.lost).toMatchObject([
      { quote: 'Test the insulation over the full length before each use.', see: review.lost[0]?.reportedBy },
    ]);
    expect(sheet.totals[0]).toEqual({ label: 'Sets on hold', ids: ['LAP-CHOLE-B'] });
    expect(sheet.totals).toContainEqual({ label: 'Roles to train', ids: ['technician'] });
    expect(sheet.totals).toContainEqual({ label: 'Training records to look at', ids: ['T3-insulation-test'] });
    expect(sheet.cautions).toEqual(JSON.parse(surfaces.json).cautions);
    expect(places.map(({ side }) => side)).toHaveLength(
      review.changes.flatMap(({ before, after }) => [before, after].filter((side) => side !== undefined)).length,
    );
  });

  it('worst first, whatever the form', () => {
    for (const shown of [surfaces.text, surfaces.html]) {
      const places = review.changes.map((change) => shown.indexOf(change.fingerprint));
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  it('the page to print runs nothing, loads nothing and keeps markup of files as text', () => {
    const hostile = { ...head, old: '<script>alert(1)</script>', notices: ['"><img src=x onerror=alert(1)>'] };
    const page = compareHtml(review, hostile);
    expect(page).not.toMatch(/<script|<img|<link|\s(?:src|href)="|https?:/i);
    expect(page).toContain('&lt;script&gt;');
    expect(page).toContain('@page');
  });
});
