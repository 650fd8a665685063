import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { badText, cli, findingsIn, folderWith, goodText, libraryText, namesIn } from '../support/cli.ts';

const library = { 'library.ifu.yaml': libraryText, 'good.ifu.yaml': goodText, 'bad.ifu.yaml': badText };

/** Control characters besides the line end, and marks that turn the reading direction. */
function acts(text: string): boolean {
  return [...text].some((character) => {
    const code = character.codePointAt(0) ?? 0;
    return (code < 0x20 && code !== 0x0a) || (code >= 0x7f && code <= 0x9f) || (code >= 0x202a && code <= 0x202e);
  });
}

/** Whatever lies beside it, this finding is still made. */
const others = 'bad.ifu.yaml unknown-field';

describe('[X02] names of rule files that are no ordinary files', () => {
  it('are refused in the same words, whether or not what they lead to exists', async () => {
    const outside = folderWith({ 'secret.ifu.yaml': badText });
    const cwd = folderWith({ ...library, 'devices/d.ifu.yaml': 'kind: device\nid: d\n' });
    const links: Record<string, string> = {
      'to-password.ifu.yaml': '/etc/passwd',
      'to-outside.ifu.yaml': join(outside, 'secret.ifu.yaml'),
      'up.ifu.yaml': '../../../../etc/passwd',
      'dangling.ifu.yaml': '/nowhere/at/all',
      'loop.ifu.yaml': 'loop.ifu.yaml',
      'zero.ifu.yaml': '/dev/zero',
      'inside.ifu.yaml': 'good.ifu.yaml',
      'to-folder.ifu.yaml': 'devices',
    };
    for (const [name, target] of Object.entries(links)) symlinkSync(target, join(cwd, name));
    execFileSync('mkfifo', [join(cwd, 'pipe.ifu.yaml')]);
    mkdirSync(join(cwd, 'folder.ifu.yaml'));
    const { out } = await cli(['check', '--format', 'json'], { cwd });
    const refused = findingsIn(out).filter(({ rule }) => rule === 'file-refused');
    expect(refused.map(({ at }) => at.file)).toEqual(
      [...Object.keys(links), 'pipe.ifu.yaml', 'folder.ifu.yaml'].sort(),
    );
    expect(new Set(refused.map(({ message }) => message)).size).toBe(1);
    expect(namesIn(out)).toContain(others);
    expect(out).not.toContain('root:');
  });

  it('a linked folder is not followed, and the summary says so', async () => {
    const outside = folderWith({ 'x.ifu.yaml': badText });
    const cwd = folderWith(library);
    symlinkSync(outside, join(cwd, 'shared'));
    symlinkSync('.', join(cwd, 'again'));
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain('Note: links are not followed: again, shared.');
    expect(out).toContain('Read 3 rule files.');
  });

  it('a library file that is a link gives no settings', async () => {
    const cwd = folderWith({ 'real.yaml': libraryText, 'bad.ifu.yaml': badText });
    symlinkSync('real.yaml', join(cwd, 'library.ifu.yaml'));
    const { code, out } = await cli(['check', '--format', 'json'], { cwd });
    expect(namesIn(out)).toEqual([others, 'library.ifu.yaml file-refused']);
    expect(code).toBe(2);
  });

  it('a path that is a link to a library is followed, since the user named it', async () => {
    const cwd = folderWith({ 'real/library.ifu.yaml': libraryText, 'real/bad.ifu.yaml': badText });
    symlinkSync('real', join(cwd, 'named'));
    expect(namesIn((await cli(['check', 'named', '--format', 'json'], { cwd })).out)).toEqual([
      'real/bad.ifu.yaml unknown-field',
    ]);
  });

  it.each([
    '../../etc/passwd',
    '..\\..\\x',
    '/etc/passwd',
    'file:///etc/passwd',
    'C:\\x',
    '\\\\host\\share',
    'a/%2e%2e/b',
    'a\0b',
  ])('the path %j on the command line is looked up as it stands and no further', async (path) => {
    const { code, out } = await cli(['check', path], { cwd: folderWith(library) });
    expect(code).toBe(2);
    expect(out).toBe('');
  });
});

describe('[L44] file names', () => {
  it('of every kind are read', async () => {
    const names = [
      'with space',
      'a#b',
      '100%',
      '(x)',
      'café',
      'CON',
      'a:b',
      '-rf',
      ';rm -rf',
      '$(id)',
      '日本語',
      `${'n'.repeat(246)}`,
    ];
    const files = Object.fromEntries(
      names.map((name, n) => [`${name}.ifu.yaml`, `kind: question\nid: q${n}\nodd: "x"\n`]),
    );
    const { out } = await cli(['check', '--format', 'json'], { cwd: folderWith({ ...library, ...files }) });
    const found = new Set(findingsIn(out).map(({ at }) => at.file));
    for (const name of names) expect(found).toContain(`${name}.ifu.yaml`);
  });

  it('that differ only in how an accent is stored, or in capitals, are reported and still read', async () => {
    const cwd = folderWith({
      ...library,
      'caf\u00e9.ifu.yaml': 'kind: question\nid: q1\n',
      'cafe\u0301.ifu.yaml': 'kind: question\nid: q2\nodd: "x"\n',
      'Tray.ifu.yaml': 'kind: question\nid: q3\n',
      'tray.ifu.yaml': 'kind: question\nid: q4\nodd: "x"\n',
    });
    const { out } = await cli(['check', '--format', 'json'], { cwd });
    const twins = findingsIn(out).filter(({ rule }) => rule === 'file-name-twin');
    expect(twins.map(({ message }) => message)).toEqual([
      'This name differs from "cafe\u0301.ifu.yaml" only in how its accents are stored. Give one of the two files another name.',
      'This name differs from "Tray.ifu.yaml" only in capital letters. Give one of the two files another name.',
    ]);
    expect(findingsIn(out).filter(({ rule }) => rule === 'unknown-field')).toHaveLength(3);
  });

  it('[X08] with line ends, escapes and commands of build servers do nothing', async () => {
    const odd = [
      'a\n::error::pwned',
      '::set-output name=x::y',
      'b\u001b[2J',
      'c\rOVER',
      'd%0A::error::',
      'e\u202egnp',
      '##[error]f',
      'g\u001b]8;;http://x\u0007',
    ];
    const files = Object.fromEntries(
      odd.map((name, n) => [`${name}.ifu.yaml`, `kind: question\nid: q${n}\nodd: "x"\n`]),
    );
    const cwd = folderWith({ ...library, ...files });
    const text = (await cli(['check'], { cwd })).out;
    expect(acts(text)).toBe(false);
    for (const line of text.split('\n')) expect(line).not.toMatch(/^\s*(::|##)/);
    const json = (await cli(['check', '--format', 'json'], { cwd })).out;
    expect(acts(json)).toBe(false);
    expect(findingsIn(json).filter(({ rule }) => rule === 'unknown-field')).toHaveLength(odd.length + 1);
  });
});

describe('[L45] bytes that are no text', () => {
  const text = 'kind: device\nid: d1\nname: "134 °C"\n';
  const utf16 = Buffer.from(`\ufeff${text}`, 'utf16le');
  const cases: readonly (readonly [string, Uint8Array])[] = [
    ['UTF-16, little end first', utf16],
    ['UTF-16, big end first', Buffer.from(utf16).swap16()],
    ['UTF-16 without a mark', Buffer.from(text, 'utf16le')],
    ['Latin-1', Buffer.from(text, 'latin1')],
    ['a packed file', gzipSync(text)],
    ['a null character', Buffer.from('kind: device\nid: d1\nname: a\0b\n')],
    ['a bell', Buffer.from('kind: device\nid: d1\nname: a\u0007b\n')],
    ['a lone surrogate', Buffer.from([...Buffer.from('kind: device\nid: d1\nname: a'), 0xed, 0xa0, 0x80, 0x0a])],
  ];

  it.each(cases)('%s: one finding, and the other files are checked', async (_name, bytes) => {
    const { out } = await cli(['check', '--format', 'json'], { cwd: folderWith({ ...library, 'x.ifu.yaml': bytes }) });
    expect(namesIn(out)).toEqual([others, 'x.ifu.yaml not-readable']);
  });

  it.each(cases.filter(([name]) => name !== 'a packed file'))(
    '%s: a set that names the device does not call it missing',
    async (_name, bytes) => {
      const set = 'kind: set\nid: s1\nmembers:\n  - {device: d1, quantity: 1}\n';
      const { out } = await cli(['check'], {
        cwd: folderWith({ ...library, 'x.ifu.yaml': bytes, 'set.ifu.yaml': set }),
      });
      expect(out).toContain('Encoded, but cannot be read: d1.');
      expect(out).not.toContain('unknown-id');
    },
  );

  it('one byte order mark does not shift columns', async () => {
    const { out } = await cli(['check', '--format', 'json'], {
      cwd: folderWith({ ...library, 'bad.ifu.yaml': `\ufeff${badText}` }),
    });
    expect(findingsIn(out).map(({ at }) => [at.line, at.column])).toEqual([[3, 1]]);
  });

  it('a file over 4 MB is refused by its size', async () => {
    const { out } = await cli(['check', '--format', 'json'], {
      cwd: folderWith({ ...library, 'x.ifu.yaml': `# ${'x'.repeat(4_000_000)}` }),
    });
    expect(namesIn(out)).toEqual([others, 'x.ifu.yaml file-refused']);
  });

  it('[L44] a line of 1 MB is shown as a window', async () => {
    const line = `frobnicate: "${'x'.repeat(900_000)}"`;
    const { out } = await cli(['check'], {
      cwd: folderWith({ ...library, 'x.ifu.yaml': `kind: question\nid: q9\n${line}\n` }),
    });
    expect(Math.max(...out.split('\n').map((shown) => shown.length))).toBeLessThan(400);
  });
});

describe('values that act on what reads the report', () => {
  const nasty = [
    '%0A::error::x',
    '::set-output name=a::b',
    ']]>',
    '&amp;',
    '<!-- -->',
    '\\|',
    '[x](command:workbench.action.terminal.new)',
    '</script><script>alert(1)</script>',
    '$' + '{7*7}',
    '\u202egnitset',
  ];

  it('are shown as plain words', async () => {
    const lines = nasty.map((value, n) => `odd${n}: '${value}'`).join('\n');
    const cwd = folderWith({ ...library, 'x.ifu.yaml': `kind: question\nid: q9\n${lines}\n` });
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain('\\u{202e}');
    expect(out).not.toContain('\u202e');
    for (const line of out.split('\n')) expect(line).not.toMatch(/^\s*::/);
    const json = (await cli(['check', '--format', 'json'], { cwd })).out;
    expect(json).not.toContain('\u202e');
    expect(() => JSON.parse(json)).not.toThrow();
  });

  it('[X01] do not change what the program’s own objects hold', async () => {
    const text =
      'kind: question\nid: hasOwnProperty\n__proto__: {polluted: "yes"}\nconstructor: {prototype: {polluted: "1"}}\ntoString: "x"\n';
    await cli(['check'], { cwd: folderWith({ ...library, 'x.ifu.yaml': text }) });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('a folder that changes while it is read', () => {
  it('a file that went away is a finding', async () => {
    const { findLibraries } = await import('../../server/src/host/library-search.ts');
    const { loadFile } = await import('../../server/src/host/library-files.ts');
    const { ruleFilesOf } = await import('../../server/src/library/listed-files.ts');
    const root = folderWith(library);
    const [found] = findLibraries(['.'], root).libraries;
    const listed = ruleFilesOf({
      ...(found?.listing ?? { refused: [], unreadableFolders: [], links: [], nearMisses: [] }),
      ruleFiles: ['gone.ifu.yaml', '../up.ifu.yaml'],
    });
    writeFileSync(join(root, '..', 'up.ifu.yaml'), badText, { flag: 'w' });
    const loaded = listed.map((file) => loadFile(root, file));
    expect(loaded.map(({ file, text, problems }) => [file, text, problems[0]?.rule])).toEqual([
      ['../up.ifu.yaml', undefined, 'file-refused'],
      ['gone.ifu.yaml', undefined, 'file-unreadable'],
    ]);
  });
});
