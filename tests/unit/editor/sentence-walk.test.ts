import { describe, expect, it } from 'vitest';
import { isSentencesDone, isServerSentence } from '../../../client/src/server-sentences.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { nextSentence, sameSentence } from '../../../server/src/editor/walk/sentence-walk.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { Encoded } from '../../support/encoding.ts';
import { encode, expectedOf, instruction, saidBy, withPages } from '../../support/encoding.ts';
import { testDay } from '../../support/examples.ts';

/** Two invented instructions of two pages, by different hands, and what they may cost at most. Neither figure may rise. */
const instructions = [
  { name: 'ringfield-punch', right: 24, of: 24, keys: 34, open: 0 },
  { name: 'halmoor-viewing-tube', right: 24, of: 24, keys: 28, open: 0 },
] as const;

function engineWith(text: string): Engine {
  const engine = new Engine({ rules: allRules, today: testDay });
  engine.set(file, text);
  return engine;
}

const file = fileId('devices/invented.ifu.yaml');

/** What the fields, as read, rightly bring up: questions for the maker or the department, and none about how they were written down. */
const asks: readonly string[] = [
  'detergent-ph-basis-unknown',
  'disassembly-missing',
  'only-manual-stated',
  'washer-route-none',
];

function enterOnly(name: string): Encoded {
  return encode(withPages(instruction(`${name}.txt`)), () => undefined);
}

describe('a whole instruction, sentence by sentence', () => {
  it.each(instructions)('$name: numbers become the right fields, by few keys', ({ name, right, of, keys, open }) => {
    const { text, actions, log, words } = enterOnly(name);
    const said = [...saidBy(text)];
    const expected = [...expectedOf(`${name}.csv`)];
    const wrong = expected.flatMap(([begin, means]) => {
      const found = said.find(([quote]) => quote.startsWith(begin))?.[1] ?? [];
      return [...found].sort().join() === [...means].sort().join() ? [] : [`${begin}: ${found.join(', ')}`];
    });
    expect(expected.length).toBe(of);
    expect(expected.length - wrong.length, wrong.join('\n')).toBeGreaterThanOrEqual(right);
    expect(actions).toBeLessThanOrEqual(keys);
    expect(log.filter(({ label }) => label === 'Leave it open').length).toBeLessThanOrEqual(open);
    expect(words).toContain(open === 0 ? 'none is left open' : `${open} left open`);
    // No number may stand in a field that a person would not have put it into.
    const all = new Set(expected.flatMap(([, means]) => means));
    expect(said.flatMap(([, found]) => found).filter((one) => !all.has(one))).toEqual([]);
  });

  it.each(instructions)('$name: what is taken is read as meant and adds no finding but a question', ({ name }) => {
    const { log } = enterOnly(name);
    let known = new Set<string>();
    for (const [at, { quote, label, after }] of log.entries()) {
      const findings = engineWith(after)
        .findings(file)
        .map(({ rule, path, message }) => ({ rule, all: `${rule} ${path} ${message}` }));
      // Statements that were just made have not been encoded yet.
      const added = findings.filter(({ rule, all }) => at > 0 && !known.has(all) && !asks.includes(rule));
      expect(added, `${quote} -> ${label}`).toEqual([]);
      known = new Set(findings.map(({ all }) => all));
    }
  });
});

const head = 'kind: device\nid: pale\nclass: critical\ncleaning: # to do\n';

function about(quote: string, section = ''): string {
  const above = section === '' ? '' : `section: ${section}, `;
  return `kind: device\nid: pale\nstatements:\n  s1: {doc: D, rev: A, page: 1, ${above}quote: "${quote}"}\ncleaning: # to do\n`;
}

/** The labels that are taken one after the other, and the text that comes of it. */
function taking(text: string, ...labels: readonly string[]): Encoded {
  const left = [...labels];
  return encode(text, (_quote, offered) => {
    const next = left[0];
    if (next !== undefined && offered.some((label) => label.startsWith(next))) left.shift();
    return next === undefined ? 'Leave it open' : offered.find((label) => label.startsWith(next));
  });
}

describe('what a sentence leaves open is asked', () => {
  it.each([
    ['Cleaning by hand', 'steps:\n        - {do: rinse, time: {at_least: 1 min}, src: s1}'],
    ['The washer', '- stage: mechanical\n      rinse: {time: {at_least: 1 min, src: s1}}'],
    ['None of these', 'rinse:\n  time: {at_least: 1 min, src: s1}'],
  ])('the step: %s', (way, made) => {
    const { text, log } = taking(about('Rinse for at least 1 minute.'), way, '');
    expect(log[0]?.label).toContain(way);
    expect(text).toContain(made);
  });

  it('first of all to leave it open, so that a hasty Enter decides nothing', () => {
    const { text, log } = encode(about('Rinse for at least 1 minute.'), () => undefined);
    expect(log.map(({ label }) => label)).toEqual(['Leave it open']);
    expect(text).toBe(about('Rinse for at least 1 minute.'));
  });

  it('the method of sterilization', () => {
    const { text } = taking(about('Sterilize at 134 °C for 3 minutes.', 'Sterilization'), 'Pre-vacuum steam', '');
    expect(text).toContain('modality: steam-prevac, temp: {stated: 134 °C}, exposure: {stated: 3 min}');
  });

  it('another bound word, where the page is plainer than its sentence', () => {
    const quote = about('Soak for 5 minutes.', 'Manual cleaning');
    const { text, log } = taking(quote, 'Another word', 'time at least 5 min', '');
    expect(text).toContain('{do: soak, time: {at_least: 5 min}, src: s1}');
    expect(log.at(-1)?.label).toBe('Manual cleaning: soak, time at least 5 min');
  });

  it('the page leaves it unclear: the field says so with the words of the page', () => {
    const { text } = taking(about('Dry for 20 minutes.'), 'The page leaves it unclear');
    expect(text).toContain('drying:\n  time: {ambiguous: "Dry for 20 minutes.", src: s1}');
  });

  it('a sentence that needs no field is noted with the reason', () => {
    const { text, words } = taking(
      about('Return it to the maker to have the edge cut.'),
      'Nothing to encode here …',
      'describes',
    );
    expect(text).toContain(
      'not_needed: [{text: "Return it to the maker to have the edge cut.", reason: describes the device}]}',
    );
    expect(words).toContain('1 say nothing to encode, none is left open. Still to write: cleaning.');
  });

  it('goes on where it was left, and says so where there is nothing', () => {
    expect(encode(head, () => undefined).words).toContain('paste the text of the instruction under "statements:"');
    const two = `${about('Do not exceed 140 °C.').replace('cleaning: # to do\n', '')}  s2: {doc: D, rev: A, page: 1, quote: "Store for 6 months."}\n`;
    const once = encode(two, (_quote, labels) => (labels[0]?.startsWith('Limits') === true ? undefined : 'Stop here'));
    expect(once.text).toContain('limits:\n  temp: {at_most: 140 °C, src: s1}');
    expect(encode(once.text, () => undefined).log.map(({ quote }) => quote)).toEqual(['Store for 6 months.']);
  });
});

describe('pages that no mark tells', () => {
  const pasted = 'kind: device\nid: pale\nstatements:\nRinse it. Dry it.\n\nStore it.\n';
  const pagesIn = (text: string): readonly string[] => [...text.matchAll(/page: (\d*)/g)].map(([, page = '']) => page);

  it.each([
    [
      ['Make 3', 'Page 4', 'Dry it', 'No:'],
      ['4', '5', '5'],
    ],
    [
      ['Make 3', 'Page 4', 'Dry it', 'Store it', 'Make 3'],
      ['4', '5', '6'],
    ],
    [
      ['Make 3', 'Page 12', 'No:'],
      ['12', '12', '12'],
    ],
    [
      ['Make 3', 'Leave the pages open'],
      ['', '', ''],
    ],
    [['Make 3', 'Page 4', 'Stop here'], []],
  ])('are asked for once: %s', (labels, pages) => {
    const { text, actions } = taking(pasted, ...labels);
    expect(pagesIn(text)).toEqual(pages);
    expect(actions).toBeGreaterThanOrEqual(labels.length);
  });

  it('a hasty Enter tells none', () => {
    expect(pagesIn(encode(pasted, () => undefined).text)).toEqual(['', '', '']);
  });

  it.each([
    ['At the head', ['', '1']],
    ['At the foot', ['1', '2']],
  ])('%s, where a mark may stand at either', (label, pages) => {
    const text = 'kind: device\nid: pale\nstatements:\nCLEANING\nRinse it.\nPage 1 of 2\nDry it.\n';
    expect(pagesIn(taking(text, 'Make 2', label, 'Make 2').text)).toEqual(pages);
  });

  it('says what is asked, and how far the page goes', () => {
    const open = readRuleFile(file, pasted);
    const first = sameSentence(open, undefined, '', { words: [], next: 'page' });
    expect(first.is === 'sentence' && first.asks).toBe(
      'Which page of the document does the pasted text begin on? No page mark stands in it.',
    );
    const next = sameSentence(open, undefined, '', { words: ['1'], next: 'page' });
    expect(next.is === 'sentence' && next.choices[0]?.label).toBe('No: it all stands on page 1, up to its end');
  });

  it('the head of the page is told to the file of its document, but the number is that of the source', () => {
    const sources = 'sources:\n  - {doc: PG-1, rev: B, role: device-specific}\n';
    const page = 'Pale Grove\nReprocessing of forceps\nPG-1 Rev. C, 2026-02, page 1 of 1\n\nRinse it.\n';
    const { tree } = readTree(`kind: device\nid: pale\n${sources}`);
    const record = readRuleFile(file, `kind: device\nid: pale\n${sources}statements:\n${page}`);
    const step = nextSentence(record, tree?.node === 'map' ? tree : undefined, '');
    expect(step.is === 'sentence' && step.choices[0]?.file).toEqual({
      kind: 'document',
      known: {
        doc: ['PG-1'],
        rev: ['B'],
        title: ['Reprocessing of forceps'],
        maker: ['Pale Grove'],
        lang: ['en'],
        issued: ['2026-02'],
        pages: ['1'],
      },
    });
  });

  it('what became no sentence is told', () => {
    const record = readRuleFile(file, 'kind: device\nid: pale\nstatements:\nCLEANING\nRinse it.\n- 1 -\n');
    const step = nextSentence(record, undefined, '');
    expect(step.is === 'sentence' && step.choices[0]).toMatchObject({
      label: 'Make a statement of the pasted sentence',
      detail: '1 page mark for the pages, 1 heading for the sections',
    });
  });
});

describe('a method that the sentence leaves open', () => {
  const cycles = '134 °C, 5 minutes; 121 °C, 20 minutes is acceptable as an alternative.';

  it('is asked once for all its cycles', () => {
    const { text, log } = taking(about(`Exposure: ${cycles}`, 'Sterilization'), 'Gravity steam', 'Sterilization');
    expect(log.filter(({ label }) => label === 'Gravity steam')).toHaveLength(1);
    expect(text.match(/modality: steam-gravity/g)).toHaveLength(2);
  });

  it('is offered before the others as another sentence of the section names it, behind leaving it open', () => {
    const text = about(`Exposure: ${cycles}`, 'Sterilization').replace(
      'cleaning:',
      '  s2: {doc: D, rev: A, page: 1, section: Sterilization, quote: "Method: steam, pre-vacuum.", not_needed: [x]}\ncleaning:',
    );
    const { tree } = readTree(text);
    const step = nextSentence(readRuleFile(file, text), tree?.node === 'map' ? tree : undefined, '');
    expect(step.is === 'sentence' && step.choices.slice(0, 2).map(({ label }) => label)).toEqual([
      'Leave it open',
      'Pre-vacuum steam',
    ]);
  });
});

describe('ways of cleaning', () => {
  it.each([
    ['Clean manually or in a washer-disinfector.', 'any_of', 'manual', 'mechanical'],
    ['Clean manually, then in a washer-disinfector.', 'all_of', 'manual', 'mechanical'],
    ['Clean in an ultrasonic bath and in a washer-disinfector.', 'all_of', 'ultrasonic', 'mechanical'],
  ])('as the words between them say: %s', (quote, together, first, second) => {
    const { text } = taking(about(quote), 'cleaning');
    expect(text).toContain(
      `cleaning:\n  ${together}:\n    - {stage: ${first}, src: s1}\n    - {stage: ${second}, src: s1}`,
    );
  });

  it.each([
    ['All of these', 'all_of'],
    ['Any one of these', 'any_of'],
  ])('asked where the words leave it open: %s', (answer, together) => {
    const quote = about('Clean manually and/or in a washer-disinfector.');
    const { text, log } = taking(quote, answer, 'cleaning');
    expect(log[0]?.label).toContain(answer);
    expect(text).toContain(`cleaning:\n  ${together}:\n    - {stage: manual, src: s1}\n`);
    expect(encode(quote, () => undefined).text).toBe(quote);
  });

  const washed = 'Wash at 55 °C for 5 min.';
  const another = ['Another way of cleaning …', 'Yes: one of the ways'];

  it('a stage beside another is done as well, or is another way when that is confirmed', () => {
    const quote = about(washed, 'Automated cleaning').replace('# to do', '\n  all_of:\n    - {stage: manual, src: s9}');
    expect(taking(quote, 'mechanical').text).toContain(
      '  all_of:\n    - {stage: manual, src: s9}\n    - stage: mechanical',
    );
    expect(taking(quote, ...another).text).toContain(
      'cleaning: \n  any_of:\n    - {stage: manual, src: s9}\n    - stage: mechanical\n      wash: {temp: {stated: 55 °C, src: s1}, time: {stated: 5 min, src: s1}}\n',
    );
  });

  it('several stages together are the one way, the new one is the other', () => {
    const stages =
      '\n  all_of:\n    - stage: manual\n      soak: {stated: 5 min, src: s9}\n    - {stage: ultrasonic, src: s9}';
    const { text } = taking(about(washed, 'Automated cleaning').replace('# to do', stages), ...another);
    expect(text).toContain(
      '  any_of:\n    - all_of:\n        - stage: manual\n          soak: {stated: 5 min, src: s9}\n        - {stage: ultrasonic, src: s9}\n    - stage: mechanical\n      wash:',
    );
  });

  it('a step that the page leaves unclear says so in its list', () => {
    const { text } = taking(about('Soak for 5 minutes.', 'Manual cleaning'), 'The page leaves it unclear');
    expect(text).toContain('- {do: soak, ambiguous: "Soak for 5 minutes.", src: s1}');
  });
});

describe('messages about sentences', () => {
  const range = { start: { line: 1, character: 2 }, end: { line: 1, character: 4 } };
  const choice = { label: 'a', detail: '', does: 'fields', edits: [{ range, newText: 'x' }] };
  const sentence = {
    is: 'sentence',
    statement: 's1',
    title: 't',
    quote: 'q',
    asks: 'a',
    place: range,
    version: 1,
    choices: [choice],
  };

  it('pass as they are meant, and no others', () => {
    expect(isServerSentence(sentence)).toBe(true);
    expect(
      isServerSentence({
        ...sentence,
        place: null,
        version: null,
        choices: [{ ...choice, told: { words: [''], next: 'bounds' } }],
      }),
    ).toBe(true);
    const piece = { label: 'Go on', detail: '', place: null, edits: [] };
    const done = { is: 'done', counts: '', words: 'all', version: 1 };
    const file = { kind: 'document', known: { doc: ['D-1'] } };
    expect(isSentencesDone({ ...done, next: [piece, { ...piece, file }] })).toBe(true);
    for (const next of [undefined, [{}], [{ ...piece, file: { kind: 'document', known: { doc: 'D-1' } } }]])
      expect(isSentencesDone({ ...done, next })).toBe(false);
    for (const wrong of [
      null,
      { ...sentence, html: '' },
      { ...sentence, version: -1 },
      { ...sentence, choices: [{ ...choice, does: 'run' }] },
      { ...sentence, choices: [{ ...choice, told: { words: 'x' } }] },
      { ...sentence, choices: [{ ...choice, edits: [{ range }] }] },
    ])
      expect(isServerSentence(wrong)).toBe(false);
    expect(isSentencesDone({ is: 'done' })).toBe(false);
  });
});
