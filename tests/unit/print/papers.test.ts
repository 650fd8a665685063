import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cli, folderWith } from '../../support/cli.ts';
import { git } from '../../support/git.ts';
import { elementsIn, type HtmlElement, pageFaults, readHtml, textOf } from '../../support/html.ts';
import { readSample } from '../../support/samples.ts';

/* Everything that is printed beside the cards: well-formed, without script, in a fixed order of parts, and no verdict of ours. */

const root = join(import.meta.dirname, '../../..');
const demo = 'samples/lanternfield';
const log = ['time (s),temperature (°C),pressure (kPa abs)'];
for (const second of [0, 10, 20, 30, 40, 120, 110, 130, 140, 150]) log.push(`${second},134.2,305`);

/** Words that a page may quote or refuse, but never says of an item, a load or the library. */
const verdict =
  /\b(?:is|are|was|were|has been|have been) (?:now )?(?:clean|sterile|safe|compliant|validated|approved|released)\b/i;

interface Printed {
  readonly page: HtmlElement;
  readonly html: string;
}

async function printed(words: readonly string[], cwd = root): Promise<Printed> {
  const { out, err } = await cli([...words, '--format', 'html'], { cwd });
  expect(err).toBe('');
  return { page: readHtml(out), html: out };
}

/** All but the cautions, which say what is not done. */
function saysOf(page: HtmlElement): string {
  const cautions = [...elementsIn(page)].filter(({ attributes }) => attributes.get('class') === 'cautions');
  return cautions.reduce((says, list) => says.replace(textOf(list), ''), textOf(page));
}

function headings({ page }: Printed): readonly string[] {
  return [...elementsIn(page)].filter(({ name }) => name === 'h1' || name === 'h2').map(textOf);
}

async function recordOf(library: string): Promise<Printed> {
  const folder = folderWith({ 'log.csv': `${log.join('\n')}\n` });
  return printed(['cycle-record', join(folder, 'log.csv'), '--cycle', 'S2-pv134-4-30', '--library', library]);
}

const pages: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  [
    'answer',
    ['answer', 'duskwell-lap-scissors-takeapart', '--library', demo],
    [
      'Take-apart scissors',
      'Current document',
      'What it says',
      'How it is processed here',
      'That it is followed',
      'Last review',
      'Open items',
    ],
  ],
  [
    'urgent',
    ['urgent', 'ORTHO-E', '--library', demo],
    ['Immediate use: Small bone E', 'A spare instead', 'Procedure: Dropped in theatre'],
  ],
  [
    'receive',
    ['receive', 'KNEE-C', '--library', demo, '--needed-by', '2025-03-04T07:30'],
    ['Receiving sheet', 'Letter to the vendor'],
  ],
  [
    'wet-load',
    ['wet-load', 'LAP-CHOLE-B', '--library', demo],
    [
      'Wet load: Laparoscopic cholecystectomy B',
      'Likely causes, first the one the files speak for most',
      'Nothing in the files, so ask',
      'Figures',
      'What changed in its files before',
    ],
  ],
  [
    'quiz',
    ['quiz', `${demo}-corrected`, '--seed', 'a'],
    ['Questions from our instructions', 'At the bench: watch and tick', 'Key of sheet '],
  ],
];

describe('printed answers', () => {
  it.each(pages)('%s: its parts in order, well-formed, no script, no verdict', async (_, words, expected) => {
    const paper = await printed(words);
    expect(pageFaults(paper.page)).toEqual([]);
    expect(headings(paper).map((heading) => heading.replace(/(Key of sheet ).*/, '$1'))).toEqual(expected);
    expect(saysOf(paper.page)).not.toMatch(verdict);
    expect(textOf(paper.page)).toContain('manufacturer’s current document');
  });

  it('a letter to a vendor holds only what the vendor can bring', async () => {
    const { page } = await printed(pages[2]?.[1] ?? []);
    const [sheet = '', letter = ''] = textOf(page).split('Letter to the vendor');
    expect(sheet).toContain('The page says "up to 10 minutes"');
    expect(letter).toContain('the revision it was taken from is not in force here.');
    expect(letter).not.toContain('The page says');
    expect(textOf(page)).not.toContain('..');
  });

  it('says no evidence twice', async () => {
    const { page } = await printed(['wet-load', 'LAP-CHOLE-B', '--library', demo]);
    for (const list of [...elementsIn(page)].filter(({ name }) => name === 'ul')) {
      const items = [...elementsIn(list)].filter(({ name }) => name === 'li').map(textOf);
      expect(new Set(items).size).toBe(items.length);
    }
  });

  it('a time that is called the least is never more than was stated', async () => {
    const { page } = await printed(['urgent', 'tarnwick-power-handpiece', '--library', `${demo}-corrected`]);
    // 4 min of exposure and 20 s of running with oil: under five minutes.
    expect(textOf(page)).toContain('At least 4 min by the times that are stated');
    expect(textOf(page)).toContain('Full cleaning first');
  });
});

describe('cycle records', () => {
  it('report gaps and disorder, count nothing for them, and plot', async () => {
    const paper = await recordOf(`${demo}-corrected`);
    expect(pageFaults(paper.page)).toEqual([]);
    expect([...elementsIn(paper.page)].some(({ name }) => name === 'svg')).toBe(true);
    const says = textOf(paper.page);
    expect(says).toContain('a gap after line 6');
    expect(says).toContain('time out of order after line 7');
    expect(saysOf(paper.page)).not.toMatch(verdict);
  });
});

/** Values of hostile texts, as a field that every page prints. */
const attacks = [
  '</script><script>alert(1)</script>',
  '" onmouseover="alert(1)',
  '<img src=x onerror=alert(1)>',
  '&lt;b&gt; ]]> <!--',
  '=HYPERLINK(1)',
  '\u202egnitset \u2028line',
];

function hostileLibrary(attack: string): string {
  const value = JSON.stringify(attack);
  const read = (path: string): string => readFileSync(join(root, `${demo}-corrected`, path), 'utf8');
  const renamed = (path: string): string => read(path).replace(/^name:.*$/m, () => `name: ${value}`);
  return folderWith({
    'library.ifu.yaml': `kind: library\nid: hostile\nname: ${value}\n`,
    'site.ifu.yaml': read('site.ifu.yaml'),
    'sets/MINOR-A.ifu.yaml': renamed('sets/MINOR-A.ifu.yaml'),
    'devices/forceps.ifu.yaml': renamed('devices/quillmark-ringed-forceps.ifu.yaml'),
    'sterilizers/S2.ifu.yaml': renamed('sterilizers/S2.ifu.yaml'),
  });
}

describe.each(attacks)('[X07] hostile names on every page: %j', (attack) => {
  const commands = [
    ['answer', 'quillmark-ringed-forceps'],
    ['urgent', 'MINOR-A'],
    ['receive', 'MINOR-A', '--needed-by', '2025-03-04T07:30'],
    ['wet-load', 'MINOR-A'],
    ['quiz'],
  ];

  it.each(commands.map((words) => [words] as const))('%j', async (words) => {
    const folder = hostileLibrary(attack);
    const { page, html } = await printed([...words, '--library', folder], folder);
    expect(pageFaults(page)).toEqual([]);
    for (const hidden of ['\u202e', '\u2028']) expect(html).not.toContain(hidden);
  });

  it('posters, cycle record and binder', async () => {
    const folder = hostileLibrary(attack);
    const pagesFolder = join(folder, 'out');
    await cli(['posters', '--library', folder, '--out', pagesFolder], { cwd: folder });
    await cli(['binder', folder, '--day', '2025-03-03', '--out', pagesFolder], { cwd: folder });
    const names = ['poster-aim', 'poster-indicators', 'poster-immediate-use', 'binder-2025-03-03'];
    for (const name of names) {
      const html = readFileSync(join(pagesFolder, `${name}.html`), 'utf8');
      expect(pageFaults(readHtml(html)), name).toEqual([]);
      for (const hidden of ['\u202e', '\u2028']) expect(html, name).not.toContain(hidden);
    }
    expect(pageFaults((await recordOf(folder)).page)).toEqual([]);
  });

  it('a table of questions opens without a formula', async () => {
    const folder = hostileLibrary(attack);
    const { out } = await cli(['quiz', folder, '--format', 'csv'], { cwd: folder });
    for (const row of out.split(/\r?\n/)) expect(row).not.toMatch(/(?:^|,)"?[=+@]/);
  });
});

describe('the binder', () => {
  it('has a contents page that leads to each of its sections, and is the same to the byte', async () => {
    const [first, second] = [folderWith({}), folderWith({})];
    for (const out of [first, second])
      await cli(['binder', `${demo}-corrected`, '--day', '2025-03-03', '--out', out], { cwd: root });
    const [one, two] = [first, second].map((out) => readFileSync(join(out, 'binder-2025-03-03.html'), 'utf8'));
    expect(one).toBe(two);
    const page = readHtml(one ?? '');
    expect(pageFaults(page)).toEqual([]);
    const links = [...elementsIn(page)].flatMap(({ attributes }) => attributes.get('href') ?? []);
    const anchors = [...elementsIn(page)].map(({ attributes }) => `#${attributes.get('id')}`);
    expect(links).toHaveLength(12);
    for (const link of links) expect(anchors).toContain(link);
  }, 120_000);

  it('comes again to the byte from a commit and a day, whatever became of the files since, and wherever they lie', async () => {
    const texts = [...readSample('lanternfield-corrected')];
    const folder = folderWith(Object.fromEntries(texts.map(([file, text]) => [`library/${file}`, text])));
    git(folder, 'init', '--quiet');
    git(folder, 'add', '.');
    git(folder, 'commit', '--quiet', '-m', 'as it was');
    const commit = git(folder, 'rev-parse', 'HEAD').trim();
    const copy = join(folderWith({}), 'elsewhere');
    git(folder, 'clone', '--quiet', folder, copy);
    writeFileSync(join(folder, 'library/sets/MINOR-A.ifu.yaml'), 'kind: set\nid: MINOR-A\nname: Changed since\n');
    const made = async (cwd: string, day: string): Promise<string> => {
      const out = folderWith({});
      const words = ['binder', 'library', '--from', commit, '--day', day, '--out', out];
      expect(await cli(words, { cwd })).toMatchObject({ err: '' });
      return readFileSync(join(out, `binder-${day}.html`), 'utf8');
    };
    const first = await made(folder, '2025-03-03');
    expect(first).toContain(`Recorded state <span data-told="history">${commit}</span>.`);
    expect(first).not.toContain('Changed since');
    expect(await made(copy, '2025-03-03')).toBe(first);
    expect(await made(copy, '2026-03-03')).not.toBe(first);
  }, 120_000);
});
