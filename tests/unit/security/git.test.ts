import { chmodSync, existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changesOf, standingAt } from '../../../server/src/host/git-log.ts';
import { cli, folderWith, goodText, libraryText } from '../../support/cli.ts';
import { git } from '../../support/git.ts';

/** Settings by which a repository can have a program started, in the order of git's own manual. */
const starters = [
  'core.fsmonitor',
  'core.pager',
  'core.editor',
  'core.sshCommand',
  'core.askPass',
  'core.gitProxy',
  'core.alternateRefsCommand',
  'credential.helper',
  'diff.external',
  'diff.x.command',
  'diff.x.textconv',
  'filter.x.clean',
  'filter.x.smudge',
  'filter.x.process',
  'gpg.program',
  'gpg.ssh.program',
  'merge.x.driver',
  'pager.log',
  'pager.status',
  'sequence.editor',
  'uploadpack.packObjectsHook',
  'alias.log',
  'alias.status',
  'remote.origin.uploadpack',
  'interactive.diffFilter',
];

/** A library whose repository would start a program at every turn, with a signed commit that would be verified. */
function trap(): { readonly cwd: string; readonly program: string; readonly ran: () => boolean } {
  const cwd = folderWith({
    'library.ifu.yaml': libraryText,
    'good.ifu.yaml': goodText,
    '.gitattributes': '*.yaml filter=x diff=x merge=x\n*.pdf filter="a=b"\n',
    'x.pdf': 'x',
  });
  const beside = folderWith({ program: '#!/bin/sh\ntouch "$(dirname "$0")/ran"\ncat\n' });
  const program = join(beside, 'program');
  chmodSync(program, 0o755);
  git(cwd, 'init', '-q', '-b', 'main');
  git(cwd, 'add', '-A');
  git(cwd, 'commit', '-q', '-m', 'first');
  writeFileSync(join(cwd, 'library.ifu.yaml'), `${libraryText}name: "x"\n`);
  git(cwd, 'add', 'library.ifu.yaml');
  const [tree, parent] = [git(cwd, 'write-tree'), git(cwd, 'rev-parse', 'HEAD')];
  const who = 'a <a@example.invalid> 1700000000 +0000';
  const signature = 'gpgsig -----BEGIN PGP SIGNATURE-----\n \n x\n -----END PGP SIGNATURE-----';
  writeFileSync(
    join(beside, 'commit'),
    `tree ${tree}\nparent ${parent}\nauthor ${who}\ncommitter ${who}\n${signature}\n\nsigned\n`,
  );
  git(cwd, 'reset', '-q', git(cwd, 'hash-object', '-t', 'commit', '-w', join(beside, 'commit')));
  git(cwd, 'config', 'log.showSignature', 'true');
  for (const name of starters) git(cwd, 'config', name, program);
  for (const hook of ['post-index-change', 'reference-transaction', 'fsmonitor-watchman']) {
    writeFileSync(join(cwd, '.git/hooks', hook), `#!/bin/sh\n${program} </dev/null\n`, { mode: 0o755 });
  }
  // Changed, and of the same size: git has to read it to tell.
  writeFileSync(join(cwd, 'good.ifu.yaml'), goodText.replace('q-good', 'q-goon'));
  writeFileSync(join(cwd, 'x.pdf'), 'y');
  return { cwd, program, ran: () => existsSync(join(beside, 'ran')) };
}

describe('[X04] [X12] a repository that names programs', () => {
  it('has none started by what reads its history', () => {
    const { cwd, program, ran } = trap();
    const changes = changesOf(cwd, ['good.ifu.yaml', 'library.ifu.yaml'], 10);
    expect(Array.isArray(changes) && changes.map(({ subject }) => subject)).toEqual(['signed', 'first']);
    expect(ran()).toBe(false);
    expect(standingAt(cwd)?.changed).toBe('changed-since');
    expect(ran()).toBe(false);
    // One that can't be named on a command line.
    git(cwd, 'config', 'filter.a=b.clean', program);
    expect(standingAt(cwd)?.changed).toBe('changed-since');
    expect(ran()).toBe(false);
  });

  it('is told to be as recorded when it is', () => {
    const { cwd, ran } = trap();
    writeFileSync(join(cwd, 'good.ifu.yaml'), goodText);
    writeFileSync(join(cwd, 'x.pdf'), 'x');
    expect(standingAt(cwd)?.changed).toBe('as-recorded');
    expect(ran()).toBe(false);
  });

  it.each([
    ['check', '--changed-since', 'HEAD'],
    ['compare', '--from', 'HEAD~1'],
    ['binder', '--day', '2025-03-03', '--out', 'pages'],
    ['binder', '--from', 'HEAD', '--day', '2025-03-03', '--out', 'pages'],
  ])('has none started by %s %s %s', async (...words) => {
    const { cwd, ran } = trap();
    expect((await cli(words, { cwd })).code).toBeLessThan(2);
    expect(ran()).toBe(false);
  });
});
