import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { checkFormats } from '../../server/src/cli/check-outputs.ts';
import { badText, cli, folderWith, goodText, libraryText } from '../support/cli.ts';
import { readXml } from '../support/xml.ts';

const root = new URL('../..', import.meta.url).pathname;

/** What every form has to survive, in fields, reasons and names of files. */
const nasty = [
  '%0A::error::x',
  '::set-output name=a::b',
  '##[error]x',
  ']]>',
  '&amp; <b>',
  '<!-- -->',
  '|',
  '[x](command:workbench.action.terminal.new)',
  '![x](y)',
  '</failure></testcase>',
  '\u202egnitset',
  '\uffff\ufffe',
  '{0} [a](1)',
];
/** Of a waiver: its words come out in SARIF and JUnit. */
const nastyReason = nasty.join('\n');
const nastyName = 'a,b%0A::error::[x](y) &<é>#?:;|.ifu.yaml';
const files: Record<string, string> = {
  'library.ifu.yaml': `${libraryText}rules:\n  tab-after-sign: {severity: ignored, reason: "a [reason](1) & more"}\n`,
  'good.ifu.yaml': goodText,
  'bad.ifu.yaml': `${badText}also: "odd"\n`,
  'tabbed.ifu.yaml': 'kind: question\nid:\tq-tab\n',
  'waived.ifu.yaml':
    'kind: procedure\nid: p-waived\nsteps: [{stage: cooling, do: cool, time: 60 min, release_temp: 24 C}]\n',
  'w1.ifu.yaml': `kind: waiver\nid: w1\nrule: step-without-why\nscope: [p-waived]\nreason: ${JSON.stringify(nastyReason)}\nowner: manager\nexpires: 2026-01-01\n`,
  'line\nend \u001b[2J \u202e.ifu.yaml': badText.replace('q-bad', 'q-line'),
  [nastyName]: `kind: question\nid: q9\n${nasty.map((value, n) => `"odd${n} ${value}": "x"`).join('\n')}\n`,
};

async function printed(format: string, cwd: string): Promise<string> {
  return (await cli(['check', '--format', format], { cwd })).out;
}

/** Characters that a terminal, a log or a reader of text would not take as words. */
function acting(text: string): readonly string[] {
  return [...text].filter((character) => (character < ' ' && character !== '\n') || character === '\u202e');
}

interface Sarif {
  readonly runs: readonly {
    readonly invocations: readonly { readonly executionSuccessful: boolean }[];
    readonly results: readonly {
      readonly ruleId: string;
      readonly message: { readonly text: string };
      readonly suppressions?: readonly { readonly justification: string }[];
      readonly partialFingerprints: Readonly<Record<string, string>>;
      readonly locations: readonly {
        readonly physicalLocation: { readonly artifactLocation: { readonly uri: string } };
      }[];
    }[];
  }[];
}

async function resultsOf(cwd: string): Promise<Sarif['runs'][number]['results']> {
  return (JSON.parse(await printed('sarif', cwd)) as Sarif).runs[0]?.results ?? [];
}

describe('[X08] [X09] whatever names and values hold', () => {
  it.each([...checkFormats])('%s has nothing in it that acts, no absolute path, and no colour', async (format) => {
    const cwd = folderWith(files);
    const { out, err } = await cli(['check', '--format', format, '--colour', 'never'], { cwd, terminal: 'terminal' });
    expect(acting(out)).toEqual([]);
    expect(out).not.toContain(cwd);
    expect(err).toBe('');
    const isCommand = (line: string) => /^\s*(?:::|##\[)/.test(line);
    if (format !== 'annotations') expect(out.split('\n').filter(isCommand)).toEqual([]);
  });

  it('SARIF and JSON fit their schemas', async () => {
    const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true });
    for (const [format, schema] of [
      ['sarif', 'tests/support/sarif-2.1.0.schema.json'],
      ['json', 'server/docs/check-report.schema.json'],
    ] as const) {
      const fits = ajv.compile(JSON.parse(readFileSync(join(root, schema), 'utf8')));
      const holds = fits(JSON.parse(await printed(format, folderWith(files))));
      expect(holds, JSON.stringify(fits.errors?.slice(0, 3))).toBe(true);
    }
  });

  it('addresses in SARIF are relative and hold no character that has a meaning there', async () => {
    const uris = (await resultsOf(folderWith(files))).map(
      (one) => one.locations[0]?.physicalLocation.artifactLocation.uri,
    );
    expect(uris).toContain(encodeURIComponent(nastyName));
    for (const uri of uris) expect(uri).toMatch(/^[\w%.()!*'~/-]+$/);
  });

  it('JUnit is well-formed, and its counts are those of its cases', async () => {
    const text = await printed('junit', folderWith(files));
    const xml = readXml(text);
    const count = (element: string) => String(xml.filter(({ name }) => name === element).length);
    const suite = xml.find(({ name }) => name === 'testsuite')?.attributes;
    expect([suite?.tests, suite?.failures, suite?.skipped]).toEqual(['testcase', 'failure', 'skipped'].map(count));
    expect(suite?.skipped).toBe('2');
    expect(xml.some(({ attributes }) => attributes.classname === nastyName)).toBe(true);
    const cases = xml
      .filter(({ name }) => name === 'testcase')
      .map(({ attributes: { classname, name } }) => `${classname} ${name}`);
    expect(new Set(cases).size).toBe(cases.length);
    expect(text).not.toMatch(/[\ufffe\uffff]/);
  });

  it('annotations are one command a line, every property whole', async () => {
    const out = await printed('annotations', folderWith(files));
    const commands = out.split('\n').filter((line) => /^\s*(::|##)/.test(line));
    for (const command of commands) {
      const [, properties = '', message = ''] = /^::(?:error|warning|notice) ([^:]*)::(.*)$/.exec(command) ?? [];
      for (const one of properties.split(',')) expect(one).toMatch(/^(file|line|endLine|col|endColumn|title)=[^,:]*$/);
      expect(message).not.toBe('');
    }
    const odd = commands.find((command) => command.includes('odd0'));
    expect(odd).toContain('file=a%2Cb%250A%3A%3Aerror%3A%3A[x](y) &<é>#?%3A;|.ifu.yaml,');
    expect(odd).toContain('%250A::error');
  });

  it('Markdown has no link, picture or tag in it, and every row its cells', async () => {
    const out = await printed('markdown', folderWith(files));
    expect(out).not.toMatch(/(?<!\\)\]\(/);
    expect(out).not.toMatch(/(?<!\\)<[a-z!/]/);
    const rows = out.split('\n').filter((line) => line.startsWith('|'));
    for (const row of rows) expect(row.match(/(?<!\\)\|/g)).toHaveLength(6);
  });
});

describe('what is kept back', () => {
  it.each(['text', 'annotations', 'markdown'])('%s counts it, beside the coverage', async (format) => {
    const out = await printed(format, folderWith(files));
    expect(out).toContain('kept back by the library');
    expect(out).toContain('kept back by waivers in force');
    expect(out).toContain('Coverage');
  });

  it('SARIF and JUnit hold it, by whom', async () => {
    const cwd = folderWith(files);
    const held = (await resultsOf(cwd)).filter(({ suppressions }) => suppressions !== undefined);
    expect(held.map(({ ruleId }) => ruleId)).toEqual(['tab-after-sign', 'step-without-why']);
    expect(held[0]?.suppressions?.[0]?.justification).toBe(
      'Switched off in the library’s own settings: a [reason](1) & more',
    );
    const said = `Covered by a waiver in force: ${nasty.join(' ')} (risk owner: manager; through 2026-01-01)`;
    expect(held[1]?.suppressions?.[0]?.justification).toBe(said.replace('\u202e', '\\u{202e}'));
    const skipped = readXml(await printed('junit', cwd)).filter(({ name }) => name === 'skipped');
    expect(skipped.map(({ attributes }) => attributes.message?.slice(0, 32))).toContain(said.slice(0, 32));
  });
});

describe('what stays the same when lines move', () => {
  const moved = (before: string) =>
    folderWith({ 'library.ifu.yaml': libraryText, 'bad.ifu.yaml': `${before}${badText}also: "odd"\n` });

  it('are fingerprints in SARIF, no two alike', async () => {
    const prints = async (cwd: string) =>
      (await resultsOf(cwd)).map(({ partialFingerprints }) => partialFingerprints['traywrightFinding/v1']);
    const straight = await prints(moved(''));
    expect(straight).toHaveLength(2);
    expect(new Set(straight).size).toBe(2);
    expect(await prints(moved('# moved\n# down\n'))).toEqual(straight);
  });

  it('are names of cases in JUnit', async () => {
    const names = async (cwd: string) =>
      readXml(await printed('junit', cwd)).flatMap(({ name, attributes }) =>
        name === 'testcase' ? [attributes.name] : [],
      );
    expect(await names(moved('# moved\n# down\n'))).toEqual(await names(moved('')));
  });
});
