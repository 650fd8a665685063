import { describe, expect, it } from 'vitest';
import about from '../../package.json' with { type: 'json' };
import { catalogueOf } from '../../server/src/check/catalogue.ts';
import { commands } from '../../server/src/cli/commands.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { cli } from '../support/cli.ts';

const cwd = process.cwd();

describe('a command line that cannot be followed', () => {
  const mistakes: readonly (readonly [readonly string[], string])[] = [
    [[], 'Name a command.'],
    [['chekc'], 'There is no command "chekc". Did you mean "check"?'],
    [['dance'], 'There is no command "dance". Commands are: check, baseline, explain, rules'],
    [['--versoin'], 'There is no option "--versoin". Did you mean "--version"?'],
    [['check', '--fail-no', 'error'], 'There is no option "--fail-no". Did you mean "--fail-on"?'],
    [['check', '--failon=error'], 'There is no option "--failon". Did you mean "--fail-on"?'],
    [['check', '-z'], 'There is no option "-z".'],
    [['check', '--fail-on', 'errors'], '--fail-on can\'t be "errors". Did you mean "error"?'],
    [['check', '--fail-on'], '--fail-on needs one of: error, warning, advice, never.'],
    [
      ['check', '--format', 'yaml'],
      '--format can\'t be "yaml". It is one of: text, json, sarif, junit, annotations, markdown.',
    ],
    [['check', '--today', '2025-02-30'], '--today needs a date such as 2025-03-03, not "2025-02-30".'],
    [['check', '--today', 'yesterday'], '--today needs a date'],
    [['check', '--quiet=yes'], '--quiet takes no value, but "yes" was given.'],
    [['explain'], 'name the finding to explain'],
    [['explain', 'unknown-feild'], 'there is no finding named "unknown-feild". Did you mean "unknown-field"?'],
    [['explain', 'toString'], 'there is no finding named "toString".'],
    [['rules', 'file'], '"rules" takes no name'],
    [['help', 'chekc'], 'Did you mean "check"?'],
  ];

  it.each(mistakes)('%j: exit code 2, on the error stream only', async (words, message) => {
    const { code, out, err } = await cli(words, { cwd });
    expect(err).toContain(message);
    expect(out).toBe('');
    expect(code).toBe(2);
  });

  it('is echoed without characters that act on a terminal', async () => {
    const { err } = await cli(['check\u001b[2J\n::error::'], { cwd });
    expect(err).not.toContain('\u001b');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('help', () => {
  it('names every command', async () => {
    const { code, out } = await cli(['--help'], { cwd });
    const lines = out.split('\n').map((line) => line.trim().replace(/ {2,}/, ' '));
    for (const { name, summary } of commands) expect(lines).toContain(`${name} ${summary}`);
    expect(code).toBe(0);
  });

  it.each(commands.map(({ name }) => name))('%s --help names each of its options', async (name) => {
    const { code, out } = await cli([name, '--help'], { cwd });
    for (const option of commands.find((command) => command.name === name)?.options ?? [])
      expect(out).toContain(`--${option.name}`);
    expect(code).toBe(0);
    expect((await cli(['help', name], { cwd })).out).toBe(out);
  });

  it('tells the version', async () => {
    expect(await cli(['--version'], { cwd })).toEqual({ code: 0, out: `traywright ${about.version}\n`, err: '' });
  });
});

describe('explain and rules', () => {
  const entries = catalogueOf(allRules);

  it('lists everything that can be found once', async () => {
    const { code, out } = await cli(['rules'], { cwd });
    for (const { id } of entries)
      expect(
        out.split('\n').filter((line) => line.split(/ +/)[2] === id),
        id,
      ).toHaveLength(1);
    expect(code).toBe(0);
  });

  it('explains everything that can be found, without marks', async () => {
    for (const entry of entries) {
      const { code, out } = await cli(['explain', entry.id], { cwd });
      expect(out).toContain(entry.why);
      expect(out).toContain('Who can settle it:');
      if (entry.examples.bad.length > 0) expect(out).toContain('Found in:');
      expect(out).not.toMatch(/^=== /m);
      expect(code).toBe(0);
    }
  });

  it('gives both as JSON', async () => {
    expect(JSON.parse((await cli(['rules', '--format', 'json'], { cwd })).out)).toHaveLength(entries.length);
    expect(JSON.parse((await cli(['explain', 'unknown-field', '--format', 'json'], { cwd })).out)).toHaveLength(1);
  });
});
