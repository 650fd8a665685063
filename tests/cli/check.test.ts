import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { listFolder } from '../../server/src/host/folder-walk.ts';
import { loadFile } from '../../server/src/host/library-files.ts';
import { ruleFilesOf } from '../../server/src/library/listed-files.ts';
import { badText, cli, findingsIn, folderWith, goodText, libraryText, namesIn } from '../support/cli.ts';

const withoutFindings = { 'library.ifu.yaml': libraryText, 'a.ifu.yaml': goodText };
const withAnError = { 'library.ifu.yaml': libraryText, 'a.ifu.yaml': goodText, 'questions/b.ifu.yaml': badText };

describe('exit codes of check', () => {
  it('0 without findings', async () => {
    const { code, out } = await cli(['check'], { cwd: folderWith(withoutFindings) });
    expect(out).toContain('No findings.');
    expect(code).toBe(0);
  });

  it('1 with a finding at or above --fail-on', async () => {
    expect((await cli(['check'], { cwd: folderWith(withAnError) })).code).toBe(1);
  });

  it('0 below --fail-on, or never', async () => {
    const cwd = folderWith({ ...withoutFindings, 'b.ifu.yaml': 'kind: question\nid:\tq-tab\n' });
    expect((await cli(['check', '--fail-on', 'error'], { cwd })).code).toBe(0);
    expect((await cli(['check', '--fail-on', 'warning'], { cwd })).code).toBe(1);
    expect((await cli(['check', '--fail-on', 'never'], { cwd: folderWith(withAnError) })).code).toBe(0);
  });

  it('2 for a path that does not exist, naming it, while other paths are checked', async () => {
    const { code, err, out } = await cli(['check', '.', 'nowhere'], { cwd: folderWith(withAnError) });
    expect(err).toBe('traywright: there is no file or folder "nowhere".\n');
    expect(out).toContain('unknown-field');
    expect(code).toBe(2);
  });

  it('2 for a file that is no rule file', async () => {
    const { code, err } = await cli(['check', 'notes.txt'], { cwd: folderWith({ 'notes.txt': '' }) });
    expect(err).toContain('"notes.txt" is not a rule file');
    expect(code).toBe(2);
  });

  it('4 where no library is', async () => {
    const { code, err, out } = await cli(['check'], { cwd: folderWith({ 'notes.txt': '' }) });
    expect(err).toContain('nothing to check');
    expect(out).toBe('');
    expect(code).toBe(4);
  });

  it('2 when the library file cannot be read', async () => {
    const { code, out } = await cli(['check'], { cwd: folderWith({ 'library.ifu.yaml': '', 'a.ifu.yaml': goodText }) });
    expect(out).toContain('empty-file');
    expect(code).toBe(2);
  });
});

describe('settings of a library', () => {
  const settings = (rules: string) => `${libraryText}rules:\n${rules}`;

  it('2 for a setting of an unknown finding, with a suggestion', async () => {
    const library = settings('  unknown-feild: {severity: warning, reason: trial}\n');
    const { code, out } = await cli(['check'], { cwd: folderWith({ ...withAnError, 'library.ifu.yaml': library }) });
    expect(out).toContain(
      'There is no finding named "unknown-feild", so this setting does nothing. Did you mean "unknown-field"?',
    );
    expect(code).toBe(2);
  });

  it('keeps a finding back with a reason, and says so in the summary', async () => {
    const library = settings('  unknown-field: {severity: ignored, reason: adoption day}\n');
    const { code, out } = await cli(['check'], { cwd: folderWith({ ...withAnError, 'library.ifu.yaml': library }) });
    expect(out).toContain("1 finding was kept back by the library's own settings: unknown-field 1.");
    expect(code).toBe(0);
  });

  it('does not keep a finding back without a reason', async () => {
    const library = settings('  unknown-field: {severity: ignored}\n');
    const { code, out } = await cli(['check', '--format', 'json'], {
      cwd: folderWith({ ...withAnError, 'library.ifu.yaml': library }),
    });
    expect(namesIn(out)).toEqual(['library.ifu.yaml setting-without-reason', 'questions/b.ifu.yaml unknown-field']);
    expect(code).toBe(2);
  });

  it('cannot switch off the faults of settings themselves', async () => {
    const library = settings(
      '  setting-unknown: {severity: ignored, reason: no}\n  nonsense-here: {severity: ignored, reason: no}\n',
    );
    const { out } = await cli(['check'], { cwd: folderWith({ ...withoutFindings, 'library.ifu.yaml': library }) });
    expect(out).toContain('"nonsense-here"');
  });

  it('cannot come from a library file further down', async () => {
    const below = settings('  unknown-field: {severity: ignored, reason: hidden}\n');
    const { out } = await cli(['check', '--format', 'json'], {
      cwd: folderWith({ ...withAnError, 'a/library.ifu.yaml': below }),
    });
    expect(namesIn(out)).toEqual(['a/library.ifu.yaml library-inside-library', 'questions/b.ifu.yaml unknown-field']);
  });

  it('leaves out folders that the library names, and says how many files', async () => {
    const library = `${libraryText}generated: [questions]\n`;
    const { code, out } = await cli(['check'], { cwd: folderWith({ ...withAnError, 'library.ifu.yaml': library }) });
    expect(out).toContain("1 file left out, in folders that the library's settings name");
    expect(code).toBe(0);
  });
});

describe('what is checked', () => {
  it('a file or folder of a library is checked against all of it, and only its findings are shown', async () => {
    const cwd = folderWith({ ...withAnError, 'c.ifu.yaml': badText });
    const { out } = await cli(['check', 'questions', '--format', 'json'], { cwd });
    const shown = findingsIn(out);
    expect(new Set(shown.map(({ at }) => at.file))).toEqual(new Set(['questions/b.ifu.yaml']));
    expect(shown.map(({ rule }) => rule)).toContain('duplicate-id');
    const text = await cli(['check', 'questions/b.ifu.yaml'], { cwd });
    expect(text.out).toContain('findings are shown for 1 of them, as asked');
  });

  it('several libraries below one folder, each by itself', async () => {
    const cwd = folderWith({
      'one/library.ifu.yaml': libraryText,
      'one/a.ifu.yaml': badText,
      'two/library.ifu.yaml': libraryText,
      'two/a.ifu.yaml': badText,
      'stray.ifu.yaml': badText,
    });
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain('one/a.ifu.yaml:3:1 error unknown-field');
    expect(out).toContain('two/a.ifu.yaml:3:1 error unknown-field');
    expect(out).toContain('Note: not checked, because no library holds them: stray.ifu.yaml.');
    expect(out).toContain('one: Coverage:');
    expect(out).not.toContain('duplicate-id');
  });

  it('notes files that were probably meant as rule files', async () => {
    const cwd = folderWith({ ...withoutFindings, 'b.ifu.yml': badText, 'c.IFU.YAML': badText });
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain('Note: not read, because rule files end in ".ifu.yaml": b.ifu.yml, c.IFU.YAML.');
  });

  it('a library that was taken away gives a clear message', async () => {
    const cwd = folderWith({});
    const { code, err } = await cli(['check', join(cwd, 'gone')], { cwd });
    expect(err).toContain('there is no file or folder');
    expect(code).toBe(2);
  });

  it('a folder that may not be read is a finding at its path', () => {
    const listing = { ruleFiles: [], refused: [], unreadableFolders: ['questions'], links: [], nearMisses: [] };
    const loaded = ruleFilesOf(listing).map((listed) => loadFile('/nowhere', listed));
    expect(loaded.map(({ file, text, problems }) => [file, text, problems.map(({ rule }) => rule)])).toEqual([
      ['questions', undefined, ['folder-unreadable']],
    ]);
  });

  it('a folder that went away while it was listed is listed as unreadable', () => {
    expect(listFolder(join(folderWith({}), 'gone')).unreadableFolders).toEqual(['']);
  });
});

describe('the summary', () => {
  it('always states coverage and the cautions, also with --quiet', async () => {
    for (const words of [['check'], ['check', '--quiet']]) {
      const { out } = await cli(words, { cwd: folderWith(withoutFindings) });
      expect(out).toContain('Coverage:');
      expect(out).toContain('this is an index to it');
      expect(out).toContain('"Consistent with the encoded instruction" is the strongest statement');
    }
  });

  it('counts families named in sets, encoded, missing and unreadable', async () => {
    const cwd = folderWith({
      'library.ifu.yaml': libraryText,
      'set.ifu.yaml':
        'kind: set\nid: s1\nmembers:\n  - {device: d1, quantity: 1}\n  - {device: d2, quantity: 1}\n  - {device: d3, quantity: 1}\n',
      'd1.ifu.yaml': 'kind: device\nid: d1\n',
      'd2.ifu.yaml': new Uint8Array([...Buffer.from('kind: device\nid: d2\nname: "'), 0xb0, 0x22, 0x0a]),
    });
    const { out } = await cli(['check'], { cwd });
    expect(out).toContain(
      'Coverage: 1 of 3 device families named in sets is encoded. Not encoded: d3. Encoded, but cannot be read: d2.',
    );
  });

  it('never uses words that only a person may say', async () => {
    const { out } = await cli(['check'], { cwd: folderWith(withoutFindings) });
    expect(out).not.toMatch(/\b(clean|sterile|safe|compliant|validated|approved|released)\b/i);
  });
});

describe('progress', () => {
  const many: Record<string, string> = { 'library.ifu.yaml': libraryText };
  for (let n = 0; n < 320; n++) many[`q${n}.ifu.yaml`] = `kind: question\nid: q${n}\n`;

  it('is shown on a terminal for a large library and taken away again', async () => {
    const { err, out } = await cli(['check'], { cwd: folderWith(many), terminal: 'terminal', env: { NO_COLOR: '1' } });
    expect(err).toContain('\rReading 300 of 321 files');
    expect(err.endsWith('\u001b[K')).toBe(true);
    expect(out).not.toContain('\r');
  });

  it('is not shown elsewhere, nor with --quiet', async () => {
    const cwd = folderWith(many);
    expect((await cli(['check'], { cwd })).err).toBe('');
    expect((await cli(['check', '-q'], { cwd, terminal: 'terminal' })).err).toBe('');
  });
});
