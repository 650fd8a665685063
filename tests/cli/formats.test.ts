import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { checkFormats } from '../../server/src/cli/check-outputs.ts';
import { badText, cli, folderWith, goodText, libraryText } from '../support/cli.ts';

const root = new URL('../..', import.meta.url).pathname;
const samples = join(root, 'samples');

/** The problems that a JSON Schema finds in a text. The published schema of SARIF 2.1.0 is that of OASIS, as its own checking tool carries it. */
function problems(schema: string, text: string): unknown {
  const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
  const validate = ajv.compile(JSON.parse(readFileSync(join(root, schema), 'utf8')));
  validate(JSON.parse(text));
  return validate.errors ?? [];
}

interface Result {
  readonly ruleId: string;
  readonly level: string;
  readonly baselineState?: string;
  readonly suppressions?: readonly unknown[];
  readonly partialFingerprints: Readonly<Record<string, string>>;
  readonly locations: readonly { readonly physicalLocation: PhysicalLocation }[];
}

interface PhysicalLocation {
  readonly artifactLocation: { readonly uri: string };
  readonly region: { readonly startLine: number; readonly snippet?: { readonly text: string } };
  readonly contextRegion?: { readonly startLine: number; readonly snippet: { readonly text: string } };
}

function resultsIn(sarif: string): readonly Result[] {
  return (JSON.parse(sarif) as { runs: readonly { results: readonly Result[] }[] }).runs.flatMap(
    ({ results }) => results,
  );
}

const wet = (steps: string) => `kind: procedure\nid: wet\nowner: manager\nsteps:\n${steps}`;
const released = '  - {when: moisture-found, do: air-dry-then-release, why: the list is full}\n';
const unexplained = '  - {stage: cooling, do: cool, time: 60 min, release_temp: 24 C}\n';
const waiver = `kind: waiver
id: w
rule: step-without-why
reason: The reasons are in the old binder.
owner: manager
approved_by: educator-1
on: 2025-02-24
expires: 2025-12-31
`;

/** A prohibition, a finding that the baseline holds back, and one that a waiver covers. */
const wetDepartment = {
  'library.ifu.yaml': libraryText,
  'wet.ifu.yaml': wet(unexplained + released),
  'q.ifu.yaml': badText,
  'w.ifu.yaml': waiver,
};

const stood = ['unchanged step-without-why', 'unchanged unknown-field', 'unchanged wet-pack-released'];

const stateTrials: readonly (readonly [string, Readonly<Record<string, string>>, readonly string[]])[] = [
  ['marks as unchanged what stood, be it held back, waived, or a prohibition that nothing holds back', {}, stood],
  [
    'marks as unchanged what stood when its waiver ran out',
    { 'w.ifu.yaml': waiver.replace('2025-12-31', '2025-03-01') },
    ['new waiver-invalid', ...stood],
  ],
  [
    'marks as new what was not there',
    { 'x.ifu.yaml': badText.replace('q-bad', 'q-worse') },
    ['new unknown-field', ...stood],
  ],
  [
    'marks as absent what is settled, a prohibition as well',
    { 'q.ifu.yaml': goodText, 'wet.ifu.yaml': wet(unexplained) },
    ['absent unknown-field', 'absent wet-pack-released', 'unchanged step-without-why'],
  ],
];

/** State and rule of every result, sorted. */
function statesIn(sarif: string): readonly string[] {
  return resultsIn(sarif)
    .map(({ ruleId, baselineState }) => `${baselineState} ${ruleId}`)
    .sort();
}

describe('SARIF', () => {
  const sarif = 'tests/support/sarif-2.1.0.schema.json';

  it('fits the published schema, holds every finding and names files relative to here', async () => {
    const { out, code } = await cli(['check', 'lanternfield', '--format', 'sarif'], { cwd: samples });
    expect(code).toBe(1);
    expect(problems(sarif, out)).toEqual([]);
    const results = resultsIn(out);
    expect(results.filter(({ level }) => level === 'error').length).toBeGreaterThan(50);
    expect(results.filter(({ suppressions }) => suppressions !== undefined).map(({ ruleId }) => ruleId)).toEqual([
      'route-single-point',
    ]);
    expect(out).not.toContain(samples);
    for (const { locations } of results)
      expect(locations[0]?.physicalLocation.artifactLocation.uri).toMatch(/^lanternfield\/[\w./-]+$/);
  });

  it('says what the baseline holds and what is new', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    await cli(['baseline'], { cwd });
    const { out, code } = await cli(['check', '--format', 'sarif'], { cwd });
    expect(code).toBe(0);
    expect(problems(sarif, out)).toEqual([]);
    expect(resultsIn(out).map(({ baselineState }) => baselineState)).toEqual(['unchanged']);
  });

  it.each(stateTrials)('%s', async (_, edits, expected) => {
    const cwd = folderWith(wetDepartment);
    await cli(['baseline'], { cwd });
    for (const [file, text] of Object.entries(edits)) writeFileSync(join(cwd, file), text);
    const { out } = await cli(['check', '--format', 'sarif'], { cwd });
    expect(problems(sarif, out)).toEqual([]);
    expect(statesIn(out)).toEqual(expected);
    const part = await cli(['check', 'library.ifu.yaml', '--format', 'sarif'], { cwd });
    expect(statesIn(part.out)).toEqual([]);
  });

  it('names what is absent by its fingerprint, at the baseline', async () => {
    const cwd = folderWith(wetDepartment);
    await cli(['baseline'], { cwd });
    writeFileSync(join(cwd, 'q.ifu.yaml'), goodText);
    const { out } = await cli(['check', '--format', 'sarif'], { cwd });
    const entries = readFileSync(join(cwd, '.traywright-baseline.json'), 'utf8').split('\n');
    expect(entries[4]).toContain('"unknown-field question/q-bad');
    expect(resultsIn(out).filter(({ baselineState }) => baselineState === 'absent')).toEqual([
      {
        ruleId: 'unknown-field',
        ruleIndex: expect.any(Number),
        message: { text: expect.stringContaining('not any more: unknown-field, question/q-bad') },
        locations: [
          {
            physicalLocation: { artifactLocation: { uri: '.traywright-baseline.json' }, region: { startLine: 5 } },
            logicalLocations: [{ fullyQualifiedName: expect.stringMatching(/^question\/q-bad/) }],
          },
        ],
        partialFingerprints: { 'traywrightFinding/v1': expect.stringMatching(/^unknown-field question\/q-bad/) },
        baselineState: 'absent',
      },
    ]);
  });

  it('carries the words at the place and their line, for readers that do not have the file', async () => {
    const { out } = await cli(['check', 'lanternfield', '--format', 'sarif'], { cwd: samples });
    const places = resultsIn(out).flatMap(({ locations }) => locations.map((one) => one.physicalLocation));
    for (const { artifactLocation, region, contextRegion } of places) {
      const lines = readFileSync(join(samples, artifactLocation.uri), 'utf8').split('\n');
      const line = lines[region.startLine - 1] ?? '';
      expect(line).toContain(region.snippet?.text ?? '');
      if (contextRegion !== undefined) expect(contextRegion.snippet.text).toBe(line);
    }
    expect(places.filter(({ region }) => region.snippet !== undefined).length).toBeGreaterThan(50);
  });

  it('escapes names of files as addresses', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a b/ä#1%:.ifu.yaml': badText });
    const { out } = await cli(['check', '--format', 'sarif'], { cwd });
    expect(resultsIn(out)[0]?.locations[0]?.physicalLocation.artifactLocation.uri).toBe(
      'a%20b/%C3%A4%231%25%3A.ifu.yaml',
    );
  });
});

describe('JSON', () => {
  it('fits the schema in server/docs', async () => {
    for (const library of ['lanternfield', 'saltmere-eye-clinic', 'lanternfield-corrected']) {
      const { out } = await cli(['check', library, '--format', 'json'], { cwd: samples });
      expect(problems('server/docs/check-report.schema.json', out)).toEqual([]);
    }
  });
});

describe('JUnit', () => {
  it('has a passing case for each file without findings and a failing one for each finding that counts', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText, 'b.ifu.yaml': goodText });
    const { out } = await cli(['check', '--format', 'junit'], { cwd });
    expect(out).toContain('<testsuite name="." tests="3" failures="1" errors="0" skipped="0">');
    expect(out).toContain('<testcase classname="b.ifu.yaml" name="no finding"/>');
    expect(out).toMatch(
      /<testcase classname="a\.ifu\.yaml" name="unknown-field" file="a\.ifu\.yaml" line="3"><failure type="error"/,
    );
    const never = await cli(['check', '--format', 'junit', '--fail-on', 'never'], { cwd });
    expect(never.out).toContain('failures="0"');
    expect(never.out).toContain('<system-out>error: ');
  });

  it('stays well formed whatever a file says', async () => {
    const hostile = 'kind: question\nid: q\n"]]></failure><x a=\'\\u0000\\u0007\\ud800&": yes\n';
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': hostile });
    const { out } = await cli(['check', '--format', 'junit'], { cwd });
    expect(isWellFormed(out)).toBe(true);
    expect([...out].filter((character) => character < ' ' && character !== '\n')).toEqual([]);
    const { out: demo } = await cli(['check', 'lanternfield', '--format', 'junit'], { cwd: samples });
    expect(isWellFormed(demo)).toBe(true);
  });
});

/** Tags are balanced, and no bare `<` or `&` stands in between. */
function isWellFormed(xml: string): boolean {
  const open: string[] = [];
  const rest = xml
    .replace(/^<\?xml[^>]*\?>/, '')
    .replace(/<(\/?)([a-z-]+)((?: [a-z]+="[^"<]*")*)(\/?)>/g, (_, closes: string, name: string, __, empty: string) => {
      if (closes !== '') return open.pop() === name ? '' : '<';
      if (empty === '') open.push(name);
      return '';
    });
  return open.length === 0 && !/[<>]|&(?!amp;|lt;|gt;|quot;|apos;)/.test(rest);
}

describe('annotations', () => {
  it('are escaped, the worst first, and no line of a file begins a command', async () => {
    const files = {
      'library.ifu.yaml': libraryText,
      'a,b:%.ifu.yaml': 'kind: question\nid: q\n"x\\n::error::owned%0A": yes\n',
      'set.ifu.yaml': 'kind: set\nid: s\nmembers: [{device: d, qty: 1}]\n',
      'd.ifu.yaml': 'kind: device\nid: d\nmanual: {use: required}\n',
    };
    const { out } = await cli(['check', '--format', 'annotations'], { cwd: folderWith(files) });
    const lines = out.split('\n').filter((line) => line.startsWith('::'));
    expect(lines.every((line) => /^::(?:error|warning|notice) [^\n]*::/.test(line))).toBe(true);
    const order = lines.map((line) => ['::error', '::warning', '::notice'].indexOf(line.split(' ')[0] ?? ''));
    expect(order).toEqual([...order].sort());
    expect(out).toContain('file=a%2Cb%3A%25.ifu.yaml');
    expect(out).not.toContain('\n::error::owned');
  });

  it('stop at fifty, and count the rest', async () => {
    const { out } = await cli(['check', 'lanternfield', '--format', 'annotations'], { cwd: samples });
    const lines = out.split('\n').filter((line) => line.startsWith('::'));
    expect(lines).toHaveLength(51);
    expect(lines[50]).toMatch(/^::notice title=Traywright::\d+ more findings not shown here; in all \d+ errors/);
  });
});

describe('Markdown', () => {
  it('is short, the worst first, with the cautions, and words of a file are no markup', async () => {
    const { out } = await cli(['check', 'lanternfield', '--format', 'markdown'], { cwd: samples });
    expect(out.split('\n').filter((line) => line.startsWith('| error')).length).toBe(40);
    expect(out).toContain('more findings not shown');
    expect(out).toContain('current document is the instruction');
    const files = {
      'library.ifu.yaml': libraryText,
      'a.ifu.yaml': 'kind: question\nid: q\n"<img src=x>|[a](b)": yes\n',
    };
    const hostile = await cli(['check', '--format', 'markdown'], { cwd: folderWith(files) });
    expect(hostile.out).toContain('\\<img src=x\\>\\|\\[a\\](b)');
  });
});

describe('several outputs', () => {
  it('in one run, each whole, and none changes the exit code', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    for (const format of checkFormats) expect((await cli(['check', '--format', format], { cwd })).code).toBe(1);
    const words = ['check', ...checkFormats.flatMap((format) => ['--output', `${format}=out.${format}`])];
    expect((await cli(words, { cwd })).code).toBe(1);
    for (const format of checkFormats.filter((one) => one !== 'text')) {
      const alone = await cli(['check', '--format', format], { cwd });
      expect(readFileSync(join(cwd, `out.${format}`), 'utf8')).toBe(alone.out);
    }
  });

  it('never over a rule file, nor into a folder that is not there; what can be written is written', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': goodText });
    await cli(['baseline'], { cwd });
    const baseline = readFileSync(join(cwd, '.traywright-baseline.json'), 'utf8');
    const over = await cli(['check', '--output', 'json=.traywright-baseline.json'], { cwd });
    expect([over.code, over.err]).toEqual([2, expect.stringContaining('is the baseline')]);
    expect(readFileSync(join(cwd, '.traywright-baseline.json'), 'utf8')).toBe(baseline);
    const words = ['--output', 'json=a.ifu.yaml', '--output', 'json=gone/x.json', '--output', 'json=x.json'];
    const { code, err } = await cli(['check', ...words], { cwd });
    expect(code).toBe(2);
    expect(err).toContain('would be a rule file');
    expect(err).toContain('there is no folder');
    expect(readFileSync(join(cwd, 'a.ifu.yaml'), 'utf8')).toBe(goodText);
    expect(readFileSync(join(cwd, 'x.json'), 'utf8')).toContain('traywright-check');
  });

  it.each([
    ['--output is a form and a file', ['--output', 'sarif']],
    ['--output is a form and a file', ['--output', 'json=']],
    ['one form, not both sarif and json', ['--output', 'sarif=-', '--output', 'json=-']],
    ['one form, not both sarif and sarif', ['--output', 'sarif=-', '--output', 'sarif=-']],
    ['one form, not both text and sarif', ['--format', 'text', '--output', 'sarif=-']],
    ['give "sarif=-" a file', ['--watch', '--output', 'sarif=-']],
  ])('that cannot be followed are said before anything is read: %s', async (words, options) => {
    const { code, err, out } = await cli(['check', ...options], { cwd: samples });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(words);
  });

  it('to "-" go to the output, alone there, and no file of that name is made', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    for (const format of checkFormats) {
      const { out, code } = await cli(['check', '--output', `${format}=-`, '--output', 'json=./-'], { cwd });
      expect([out, code]).toEqual([(await cli(['check', '--format', format], { cwd })).out, 1]);
    }
    expect(JSON.parse(readFileSync(join(cwd, '-'), 'utf8'))).toMatchObject({ format: 'traywright-check' });
    rmSync(join(cwd, '-'));
    await cli(['check', '--output', 'sarif=-'], { cwd });
    expect(existsSync(join(cwd, '-'))).toBe(false);
  });
});
