import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printingOf } from '../../../server/src/print/amounts.ts';
import { plain } from '../../../server/src/print/piece.ts';
import { type Quiz, quizOf } from '../../../server/src/print/quiz/build.ts';
import { cell, quizCsv } from '../../../server/src/print/quiz/csv.ts';
import { quizQti } from '../../../server/src/print/quiz/qti.ts';
import { askFirst } from '../../../server/src/print/quiz/question.ts';
import { wordsOf } from '../../../server/src/print/words/languages.ts';
import { cli, folderWith } from '../../support/cli.ts';
import { openedSample } from '../../support/printed.ts';
import { structureFaults } from '../../support/qti.ts';
import { readXml, type XmlElement } from '../../support/xml.ts';

/* Questions for learning systems: the QTI 3 package against the published structure, and the table against RFC 4180. */

function quizFor(name: 'lanternfield-corrected' | 'saltmere-eye-clinic-corrected'): Quiz {
  const { engine, findings } = openedSample(name);
  return quizOf(printingOf(engine.view(), wordsOf('en')), findings, { seed: 'a', count: 200 });
}

function named(text: string, name: string): readonly XmlElement[] {
  return readXml(text).filter((one) => one.name === name);
}

describe.each(['lanternfield-corrected', 'saltmere-eye-clinic-corrected'] as const)('QTI package of %s', (name) => {
  const quiz = quizFor(name);
  const files = quizQti(quiz);

  it('keeps the structure of the standard, every file of it', () => {
    expect(files.size).toBe(quiz.questions.length + 2);
    for (const [file, text] of files) expect(structureFaults(text), file).toEqual([]);
  });

  it('holds the question, its choices and the one key that the sheet has', () => {
    for (const [index, { text, choices }] of quiz.questions.entries()) {
      const xml = files.get(`question-${index + 1}.xml`) ?? '';
      expect(named(xml, 'qti-prompt').map(({ words }) => words)).toEqual([plain(text)]);
      const shown = named(xml, 'qti-simple-choice');
      expect(shown.map(({ words }) => words)).toEqual(choices.map(({ line }) => plain(line)));
      const keys = named(xml, 'qti-value').map(({ words }) => words);
      const right = choices.findIndex((choice) => choice.right);
      expect(keys).toEqual([shown[right]?.attributes.identifier]);
      const [asking] = shown.filter(({ words }) => words === plain(askFirst));
      if (asking !== undefined) expect(asking.attributes.fixed).toBe('true');
    }
  });

  it('declares every name that it uses, once', () => {
    for (const [file, text] of files) {
      if (!file.startsWith('question-')) continue;
      const elements = readXml(text);
      const declared = elements
        .filter((one) => /-declaration$/.test(one.name))
        .map(({ attributes }) => attributes.identifier);
      expect(new Set(declared).size).toBe(declared.length);
      const used = elements.flatMap(({ name: element, attributes }) => [
        attributes['response-identifier'],
        attributes['outcome-identifier'],
        /-(?:variable|correct|set-outcome-value)$/.test(element) ? attributes.identifier : undefined,
      ]);
      for (const one of used) if (one !== undefined) expect(declared).toContain(one);
      const shown = named(text, 'qti-modal-feedback').map(({ attributes }) => attributes.identifier);
      expect(named(text, 'qti-base-value').map(({ words }) => words)).toEqual(expect.arrayContaining(shown));
    }
  });

  it('lists every file in the manifest, and the test refers to every item', () => {
    const manifest = files.get('imsmanifest.xml') ?? '';
    const resources = named(manifest, 'resource');
    expect(new Set(resources.map(({ attributes }) => attributes.identifier)).size).toBe(resources.length);
    const listed = resources.map(({ attributes }) => attributes.href);
    expect([...listed, 'imsmanifest.xml'].sort()).toEqual([...files.keys()].sort());
    for (const { attributes, children } of resources)
      expect(children.filter((one) => one.name === 'file').map((one) => one.attributes.href)).toEqual([
        attributes.href,
      ]);
    const items = resources.filter(({ attributes }) => attributes.type === 'imsqti_item_xmlv3p0');
    const ids = items.map(({ attributes }) => attributes.identifier);
    expect(named(manifest, 'dependency').map(({ attributes }) => attributes.identifierref)).toEqual(ids);
    const refs = named(files.get('test.xml') ?? '', 'qti-assessment-item-ref');
    expect(refs.map(({ attributes }) => attributes.href)).toEqual(items.map(({ attributes }) => attributes.href));
    const [{ words: schema } = { words: '' }] = named(manifest, 'schema');
    expect([schema, ...named(manifest, 'schemaversion').map(({ words }) => words)]).toEqual(['QTI Package', '3.0.0']);
  });
});

it('a departure from the structure would be seen', () => {
  const [text = ''] = quizQti(quizFor('lanternfield-corrected')).values();
  const spoilt: readonly (readonly [string, string])[] = [
    ['xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0"', 'xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1"'],
    [' time-dependent="false"', ''],
    ['cardinality="single"', 'cardinality="one"'],
    ['<qti-prompt>', '<qti-prompt> <p>x</p>'],
    [' max-choices="1"', ' maxChoices="1"'],
  ];
  for (const [from, to] of spoilt) expect(structureFaults(text.replace(from, to)), to).not.toEqual([]);
});

/** Rows of a table by RFC 4180; throws where the text is none. */
function readCsv(text: string): readonly (readonly string[])[] {
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  const rows: string[][] = [[]];
  while (field.lastIndex < text.length) {
    const parts = field.exec(text);
    if (parts === null) throw new Error('not a table by RFC 4180');
    rows.at(-1)?.push((parts[1] ?? parts[2] ?? '').replaceAll('""', '"'));
    if (parts[3] === '\r\n') rows.push([]);
  }
  if (rows.pop()?.length !== 0) throw new Error('the last row has no end');
  return rows;
}

describe('the table of questions', () => {
  it('is a table by RFC 4180: as many cells in every row, every text as it was', () => {
    const quiz = quizFor('saltmere-eye-clinic-corrected');
    const [head = [], ...rows] = readCsv(quizCsv(quiz));
    expect(rows).toHaveLength(quiz.questions.length);
    for (const [index, row] of rows.entries()) {
      expect(row).toHaveLength(head.length);
      const question = quiz.questions[index];
      const at = (column: string): string => (row[head.indexOf(column)] ?? '').replace(/^'/, '');
      expect(at('question')).toBe(plain(question?.text ?? []));
      const key = question?.choices.findIndex(({ right }) => right) ?? -1;
      expect(at('key')).toBe('abcde'.charAt(key));
      expect(at(at('key'))).toBe(plain(question?.choices[key]?.line ?? []));
    }
  });

  it.each(['=1+1', '+5', '-5', '@x', '\tx', '\rx', "'=x", '=HYPERLINK("http://x")'])(
    'defuses %j, and it can be taken back',
    (text) => {
      const [[shown = '']] = readCsv(`${cell(text)}\r\n`) as [[string]];
      expect(shown.startsWith("'")).toBe(true);
      expect(shown.slice(1)).toBe(text);
    },
  );

  it.each(['plain', 'a, b', 'say "no"', 'two\r\nlines', '3/4', '007'])('leaves %j as it is', (text) => {
    expect(readCsv(`${cell(text)}\r\n`)).toEqual([[text]]);
  });
});

it('the command writes the package as files, and the table on the output', async () => {
  const out = folderWith({});
  const root = join(import.meta.dirname, '../../..');
  const words = ['quiz', 'samples/lanternfield-corrected', '--seed', 'a', '--count', '5'];
  await cli([...words, '--format', 'qti', '--out', out], { cwd: root });
  const names = readdirSync(out).sort();
  expect(names).toEqual(['imsmanifest.xml', ...[1, 2, 3, 4, 5].map((number) => `question-${number}.xml`), 'test.xml']);
  for (const name of names) expect(structureFaults(readFileSync(join(out, name), 'utf8')), name).toEqual([]);
  const { out: table } = await cli([...words, '--format', 'csv'], { cwd: root });
  expect(readCsv(table)).toHaveLength(6);
});
