import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { kinds } from '../../../server/src/schema/kinds.ts';

const root = path.resolve(import.meta.dirname, '../../..');
const manifest = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
const snippets: Record<string, { prefix: string; body: string[] }> = JSON.parse(
  readFileSync(path.join(root, 'client/snippets/rule-files.generated.json'), 'utf8'),
);

/** The text of a snippet with its places as they first stand. */
function filled(body: readonly string[]): string {
  const line = (text: string) =>
    text
      .replace(/\$\{\d+\|([^,|]+)[^}]*\}/g, '$1')
      .replace(/\$\{\d+:([^}]*)\}/g, '$1')
      .replace(/\$\{\d+\}|\$0/g, '');
  return body.map(line).join('\n');
}

describe('the extension as declared', () => {
  it('names files that exist', () => {
    const { contributes, icon } = manifest;
    const paths = [
      icon,
      contributes.grammars[0].path,
      contributes.snippets[0].path,
      contributes.languages[0].configuration,
      contributes.languages[0].icon.light,
    ];
    for (const file of paths) expect(existsSync(path.join(root, file)), file).toBe(true);
  });

  it('tours in five steps, each with pictures of its own, light and dark, that can be described in words', () => {
    const [{ steps }] = manifest.contributes.walkthroughs;
    expect(steps).toHaveLength(5);
    const pictures = new Set<string>();
    for (const { media, description } of steps) {
      expect(media.altText).not.toBe('');
      expect(description).toContain('](command:');
      const { light, dark, hcLight, hc } = media.image;
      expect([hcLight, hc]).toEqual([light, dark]);
      for (const picture of [light, dark]) pictures.add(readFileSync(path.join(root, picture), 'base64'));
    }
    expect(pictures.size).toBe(10);
  });

  it('can be loaded by a page: it takes the form of modules from the ending of "main", and asks for files that end in .js', () => {
    expect(manifest.main).toMatch(/\.cjs$/);
    expect(manifest.browser).toMatch(/\.js$/);
  });

  it('claims rule files for a language of its own, and leaves other YAML alone', () => {
    const [language] = manifest.contributes.languages;
    expect(language).toMatchObject({ id: 'traywright-rules', extensions: ['.ifu.yaml'] });
    expect(manifest.contributes.yamlValidation).toBeUndefined();
    expect(manifest.contributes.jsonValidation).toBeUndefined();
  });

  it('registers in code every command that it declares', () => {
    const folder = path.join(root, 'client/src');
    const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
    const code = sources.map((file) => readFileSync(path.join(folder, file), 'utf8')).join('\n');
    for (const { command, category } of manifest.contributes.commands) {
      expect(category).toBe('Traywright');
      expect(code).toContain(`registerCommand('${command}'`);
    }
  });

  it('highlights words and units in a grammar that reads as such', () => {
    const grammar = JSON.parse(readFileSync(path.join(root, manifest.contributes.grammars[0].path), 'utf8'));
    const [bound, , unit] = grammar.injections['L:source.traywright-rules -comment -string.quoted'].patterns.map(
      ({ match }: { match: string }) => new RegExp(match),
    );
    expect('{at_least: 4 min}').toMatch(bound);
    expect('not_at_least: 4').not.toMatch(bound);
    for (const text of ['4 min', '132 C', '[7.5 °C, 8 °C]', '27 psig', '4 uS/cm']) expect(`x: ${text}`).toMatch(unit);
    expect('x: PG-12 rev').not.toMatch(unit);
  });
});

describe('snippets', () => {
  it.each(kinds)('begin a %s file with fields that exist, in forms that are read', (kind) => {
    const snippet = snippets[`New ${kind} file`];
    expect(snippet?.prefix).toBe(kind);
    const { problems } = readRuleFile(fileId('new.ifu.yaml'), filled(snippet?.body ?? []));
    const allowed = new Set(['field-missing', 'empty-value', 'unknown-id']);
    expect(problems.filter(({ rule }) => !allowed.has(rule)).map(({ rule, message }) => `${rule}: ${message}`)).toEqual(
      [],
    );
  });
});
