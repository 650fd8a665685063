import { describe, expect, it } from 'vitest';
import { badText, cli, folderWith, libraryText } from '../support/cli.ts';

const escapeSign = '\u001b';

describe('colours', () => {
  const cases: readonly (readonly [
    string,
    readonly string[],
    Record<string, string>,
    'terminal' | 'pipe',
    'coloured' | 'plain',
  ])[] = [
    ['a terminal', [], {}, 'terminal', 'coloured'],
    ['a pipe', [], {}, 'pipe', 'plain'],
    ['NO_COLOR on a terminal', [], { NO_COLOR: '1' }, 'terminal', 'plain'],
    ['an empty NO_COLOR does not count', [], { NO_COLOR: '' }, 'terminal', 'coloured'],
    ['FORCE_COLOR in a pipe', [], { FORCE_COLOR: '1' }, 'pipe', 'coloured'],
    ['FORCE_COLOR=0 on a terminal', [], { FORCE_COLOR: '0' }, 'terminal', 'plain'],
    ['a dumb terminal', [], { TERM: 'dumb' }, 'terminal', 'plain'],
    ['--colour always in a pipe', ['--colour', 'always'], { NO_COLOR: '1' }, 'pipe', 'coloured'],
    ['--color is the same option', ['--color=always'], {}, 'pipe', 'coloured'],
    ['--colour never on a terminal', ['--colour', 'never'], { FORCE_COLOR: '1' }, 'terminal', 'plain'],
  ];

  it.each(cases)('%s', async (_name, words, env, terminal, wanted) => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { out } = await cli(['check', ...words], { cwd, env, terminal });
    expect(out.includes(escapeSign)).toBe(wanted === 'coloured');
  });

  it('never in JSON', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const { out } = await cli(['check', '--format', 'json', '--colour', 'always'], { cwd });
    expect(out).not.toContain('\u001b');
    expect(JSON.parse(out)).toMatchObject({ format: 'traywright-check', version: 1 });
  });

  it('change nothing but the colours', async () => {
    const cwd = folderWith({ 'library.ifu.yaml': libraryText, 'a.ifu.yaml': badText });
    const plain = await cli(['check'], { cwd });
    const coloured = await cli(['check', '--colour', 'always'], { cwd });
    expect(
      coloured.out
        .split(escapeSign)
        .map((part, at) => (at === 0 ? part : part.replace(/^\[\d{1,2}m/, '')))
        .join(''),
    ).toBe(plain.out);
  });
});
