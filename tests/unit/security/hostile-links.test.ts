import { execFileSync } from 'node:child_process';
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { badText, cli, findingsIn, folderWith, libraryText, namesIn } from '../../support/cli.ts';
import { engineOf } from '../../support/fuzz.ts';
import { builtPdfReader } from '../../support/pdf-reader.ts';

/** How a file of each kind names its follower. */
const links = { set: 'spare_of', chemistry: 'replaced_by', procedure: 'emergency_path' } as const;

describe('[R11] links that go round', () => {
  it.each(Object.entries(links))(
    '%s files that name each other are one finding with both names',
    async (kind, link) => {
      const one = (id: string, next: string) => `kind: ${kind}\nid: ${id}\n${link}: ${next}\n`;
      const cwd = folderWith({
        'library.ifu.yaml': libraryText,
        'bad.ifu.yaml': badText,
        'a.ifu.yaml': one('aa', 'bb'),
        'b.ifu.yaml': one('bb', 'aa'),
        'self.ifu.yaml': one('cc', 'cc'),
      });
      const { out } = await cli(['check', '--format', 'json'], { cwd });
      const loops = findingsIn(out).filter(({ rule }) => rule === 'reference-loop');
      expect(loops.map(({ at }) => at.file)).toEqual(['a.ifu.yaml', 'self.ifu.yaml']);
      for (const name of ['aa', 'bb']) expect(loops[0]?.message).toContain(name);
      expect(loops[1]?.message).toContain('itself');
      expect(namesIn(out)).toContain('bad.ifu.yaml unknown-field');
    },
  );

  it('ten thousand files that each name the next are no dearer than ten thousand that all name the same', () => {
    const unlinked = costOf(() => 'R0');
    expect(costOf((n) => `R${n + 1}`) / unlinked).toBeLessThan(4);
  });
});

/** Processor time of judging ten thousand documents, in microseconds. */
function costOf(next: (n: number) => string): number {
  const text = (n: number) => `kind: document\nid: d${n}\ndoc: DW-1\nrev: "R${n}"\nsupersedes: "${next(n)}"\n`;
  const numbers = Array.from({ length: 10_000 }, (_, n) => n);
  const engine = engineOf(new Map(numbers.map((n) => [fileId(`documents/d${n}.ifu.yaml`), text(n)])));
  const before = process.cpuUsage();
  const rules = new Set(engine.library.files().flatMap((file) => engine.findings(file).map(({ rule }) => rule)));
  expect(rules.has('internal')).toBe(false);
  return process.cpuUsage(before).user;
}

describe('[X02] documents that a file names', () => {
  const leadAway = ['../../etc/passwd', '..\\..\\x', '/etc/passwd', 'file:///etc/passwd', 'C:\\x', '\\\\host\\share'];
  const odd = ['a/%2e%2e/b', 'a\u0000b', 'https://tracker.invalid/a.pdf'];
  const notThere = ['link.pdf', 'folder/a.pdf', 'dangling.pdf', 'loop.pdf', 'pipe.pdf', 'zero.pdf', 'none.pdf'];
  const ways = [...leadAway, ...odd, ...notThere];

  it('lead nowhere outside the library, and no answer tells whether something is there', async () => {
    const outside = folderWith({ 'a.pdf': 'secret' });
    const text = (way: string, n: number) =>
      `kind: document\nid: d${n}\ndoc: DW-${n}\nrev: A\nfile: ${JSON.stringify(way)}\n`;
    const documents = Object.fromEntries(ways.map((way, n) => [`d${n}.ifu.yaml`, text(way, n)]));
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'bad.ifu.yaml': badText, ...documents });
    symlinkSync(join(outside, 'a.pdf'), join(cwd, 'link.pdf'));
    symlinkSync(outside, join(cwd, 'folder'));
    symlinkSync('/nowhere', join(cwd, 'dangling.pdf'));
    symlinkSync('loop.pdf', join(cwd, 'loop.pdf'));
    symlinkSync('/dev/zero', join(cwd, 'zero.pdf'));
    execFileSync('mkfifo', [join(cwd, 'pipe.pdf')]);
    const { out } = await cli(['check', '--format', 'json'], { cwd, pdfReader: builtPdfReader() });
    const said = ways.map((way, n) =>
      findingsIn(out)
        .filter(({ at }) => at.file === `d${n}.ifu.yaml`)
        .map(({ rule, message }) => `${rule}: ${message.replace(way, '...')}`),
    );
    const away = 'This does not name a file of the library, so nothing was opened. Write its path from this file.';
    const none = 'There is no file "..." in the library that can be opened. Put it there, or change the name.';
    expect(said).toEqual(ways.map((way) => [`document-file-missing: ${notThere.includes(way) ? none : away}`]));
    expect(namesIn(out)).toContain('bad.ifu.yaml unknown-field');
  });
});
