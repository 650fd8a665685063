import { readFileSync } from 'node:fs';
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type Lock, runtimeDependencies } from '../../server/build/dependency-page.ts';
import { licenceTexts } from '../../server/build/licence-texts.ts';
import { root } from '../support/built.ts';
import { packagedExtension } from './harness.ts';

const bytes = readFileSync(packagedExtension);
const packed = unzipSync(bytes);
const read = (name: string): string => strFromU8(packed[`extension/${name}`] ?? new Uint8Array());

const lock = JSON.parse(readFileSync(path.join(root, 'package-lock.json'), 'utf8')) as Lock;

interface Bill {
  readonly bomFormat: string;
  readonly components: readonly { readonly name: string; readonly version: string; readonly licenses: unknown }[];
}

describe('[X16] the packaged extension', () => {
  it('says in a bill of materials what it is made of', () => {
    const bill = JSON.parse(read('dist/sbom.cdx.json')) as Bill;
    expect(bill.bomFormat).toBe('CycloneDX');
    const named = bill.components.map(({ name, version }) => `${name} ${version}`);
    expect(named.toSorted()).toEqual(runtimeDependencies(lock).map(({ name, version }) => `${name} ${version}`));
    for (const { name, licenses } of bill.components) expect(licenses, name).not.toBeUndefined();
  });

  it('holds its own licence and those of everything in it', () => {
    expect(read('LICENSE.txt')).toContain('MIT License');
    expect(read('dist/third-party-licences.txt')).toBe(`${licenceTexts(lock, root)}\n`);
  });

  it('holds nothing else than what runs, is looked at or is read: no sources, no tests, no packages, nothing that is run at installing', () => {
    const outside = Object.keys(packed).filter(
      (name) =>
        !/^extension\/(?:dist\/[\w-]+\.(?:cjs|js)|client\/(?:media|snippets|syntaxes)\/[\w./-]+|samples\/lanternfield\/[\w./-]+\.ifu\.yaml)$/.test(
          name,
        ),
    );
    expect(outside.toSorted()).toEqual([
      '[Content_Types].xml',
      'extension.vsixmanifest',
      'extension/LICENSE.txt',
      'extension/changelog.md',
      'extension/client/language-configuration.json',
      'extension/dist/sbom.cdx.json',
      'extension/dist/third-party-licences.txt',
      'extension/package.json',
      'extension/readme.md',
    ]);
    expect(Object.keys(packed).filter((name) => name.endsWith('.ts'))).toEqual([]);
  });

  it('stays small', () => {
    expect(bytes.length).toBeLessThan(4_000_000);
  });
});
