import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../support/built.ts';
import { cli, folderWith } from '../../support/cli.ts';

interface Setting {
  readonly scope?: string;
  readonly type: string;
}

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  readonly capabilities: { readonly untrustedWorkspaces: { readonly supported: boolean | string } };
  readonly contributes: { readonly configuration: { readonly properties: Readonly<Record<string, Setting>> } };
};

function sources(folder: string): readonly (readonly [string, string])[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => [`${folder}/${name}`, readFileSync(join(root, folder, name), 'utf8')] as const);
}

const code = [...sources('server/src'), ...sources('client/src'), ...sources('client/page')];

/** Programs are started in these files only; each says in a comment what is started, and none takes the name of a program from a library. */
const startsPrograms = ['server/src/host/git.ts', 'server/src/host/pdf.ts'];

/** Loads one file of ours, whose path the callers take from the program's own folder. */
const loadsPart = 'server/src/host/workbook-part.ts';

describe('we say that folders that are not trusted are supported, since nothing in a folder is run', () => {
  it('is what the manifest says', () => {
    expect(manifest.capabilities.untrustedWorkspaces).toEqual({ supported: true });
  });

  it('no setting of a folder names a program, a path or a place to load from', () => {
    for (const [name, { type }] of Object.entries(manifest.contributes.configuration.properties)) {
      expect(name).not.toMatch(/path|command|program|executable|url|args/i);
      expect(['boolean', 'string', 'number']).toContain(type);
    }
  });

  it('no text is run as a program; parts are loaded from beside the program only', () => {
    for (const [file, text] of code) {
      expect(text, file).not.toMatch(/\beval\(|new Function\(|node:vm|shell: true/);
      if (file !== loadsPart)
        expect(text, file).not.toMatch(
          /\bcreateRequire\(|loadWorkbookPart\((?!io\.workbookPart\b|await |besideProgram\()/,
        );
      for (const [, what] of text.matchAll(/\bimport\(([^)]*)\)/g)) expect(what, file).toMatch(/^\s*['"]/);
    }
  });

  it('programs are started in few places, by arguments and never through a shell', () => {
    const starting = code.filter(([, text]) => /from 'node:child_process'/.test(text)).map(([file]) => file);
    expect(starting.sort()).toEqual(startsPrograms);
    for (const [file, text] of code.filter(([name]) => starting.includes(name))) {
      expect(text, file).toContain('shell: false');
      expect(text, file).not.toMatch(/(?<!\.)\bexec(?:Sync)?\(/);
    }
  });
});

describe('[X04] what lies in a folder and could be run', () => {
  it('is not', async () => {
    const mark = "require('node:fs').writeFileSync(require('node:path').join(__dirname, 'ran'), 'x')";
    const hook = '#!/bin/sh\ntouch ran\n';
    const cwd = folderWith({
      'library.ifu.yaml': 'kind: library\nid: l\n',
      'q.ifu.yaml': '# yaml-language-server: $schema=http://127.0.0.1:9/x\nkind: question\nid: q\n',
      '.vscode/settings.json': '{"traywright.server.path": "./evil.js", "git.path": "./git"}',
      'traywright.config.js': mark,
      '.traywrightrc.js': mark,
      'package.json': '{"type": "commonjs", "main": "evil.js", "scripts": {"preinstall": "node evil.js"}}',
      'evil.js': mark,
      'node_modules/yaml/index.js': mark,
      'node_modules/fastest-levenshtein/index.js': mark,
      '.git/hooks/post-index-change': hook,
      git: hook,
      '.npmrc': 'node-options=--require ./evil.js\n',
    });
    for (const words of [['check'], ['rules'], ['baseline'], ['compare', '.', '.']]) await cli(words, { cwd });
    expect(readdirSync(cwd)).not.toContain('ran');
    expect(readdirSync(join(cwd, 'node_modules/yaml'))).toEqual(['index.js']);
  });

  it('[X03] no address in a file is asked for', async () => {
    const lines = ['$schema: "http://127.0.0.1:9/x"', 'source: "//host/x"', 'see: "https://tracker.invalid/x.png"'];
    const cwd = folderWith({
      'library.ifu.yaml': 'kind: library\nid: l\n',
      'q.ifu.yaml': `# $schema: http://127.0.0.1:9/x\nkind: question\nid: q\n${lines.join('\n')}\n`,
    });
    const { code: exit, out } = await cli(['check', '--format', 'json'], { cwd });
    expect(exit).toBe(1);
    expect(out.match(/unknown-field/g)?.length).toBeGreaterThanOrEqual(3);
  });
});
