import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import {
  dependencyPage,
  dependencyPagePath,
  developmentDependencies,
  type Lock,
  runtimeDependencies,
} from '../../../server/build/dependency-page.ts';
import { licenceTexts } from '../../../server/build/licence-texts.ts';
import { root } from '../../support/built.ts';

interface Manifest {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Manifest;
const lockText = readFileSync(join(root, 'package-lock.json'), 'utf8');
const lock = JSON.parse(lockText) as Lock;

/** Licences under which the parts may be handed on inside a bundle. */
const permissive = new Set(['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', '0BSD']);

describe('[X16] what comes along from others', () => {
  it('is little, exact, under licences that let it be handed on, and runs nothing when installed', () => {
    const runtime = runtimeDependencies(lock);
    expect(Object.keys(manifest.dependencies).length).toBeLessThanOrEqual(12);
    expect(runtime.length).toBeLessThanOrEqual(30);
    for (const { name, license, runsOnInstall } of runtime) {
      expect(permissive, `${name}: ${license}`).toContain(license);
      expect(runsOnInstall, name).toBe(false);
    }
    for (const version of Object.values({ ...manifest.dependencies, ...manifest.devDependencies }))
      expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    for (const { name, license } of developmentDependencies(lock)) expect(license, name).not.toBe('not stated');
  });

  it('is listed on the page', () => {
    expect(readFileSync(join(root, dependencyPagePath), 'utf8')).toBe(dependencyPage(lock));
  });

  it('is handed out with its licences, in the words of each', () => {
    const text = licenceTexts(lock, root);
    const entries = text.split(`\n\n${'-'.repeat(80)}\n`).slice(1);
    const heads = entries.map((entry) => entry.split('\n')[0]);
    expect(heads).toEqual(
      runtimeDependencies(lock).map(({ name, version, license }) => `${name} ${version} (${license})`),
    );
    const bare = entries.filter((entry) => !/permission|licensed under|copyright/i.test(entry));
    // It comes without a text; its licence is named all the same.
    expect(bare.map((entry) => entry.split(' ')[0])).toEqual(['worker-f']);
    expect(text).not.toContain(root);
  });

  it('we run nothing when we are installed', () => {
    for (const moment of ['install', 'preinstall', 'postinstall', 'prepare', 'preprepare', 'postprepare', 'prepublish'])
      expect(manifest.scripts).not.toHaveProperty(moment);
  });

  it('the lock file names no place to load from', () => {
    expect(lockText).not.toContain('"resolved"');
  });
});

describe('[X16] the bill of materials', () => {
  it('has the same bytes twice, every package that is handed out, no place to load from and no place on this computer', () => {
    const folder = mkdtempSync(join(tmpdir(), 'traywright-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const texts = ['a.json', 'b.json'].map((name) => {
      const ran = spawnSync(process.execPath, ['server/build/sbom.mjs', join(folder, name)], { cwd: root });
      expect(ran.status).toBe(0);
      return readFileSync(join(folder, name), 'utf8');
    });
    expect(texts[0]).toBe(texts[1]);
    const text = texts[0] ?? '';
    const bill = JSON.parse(text) as {
      bomFormat: string;
      serialNumber: string;
      metadata: { component: { name: string } };
      components: readonly { name: string; version: string }[];
    };
    expect(bill.bomFormat).toBe('CycloneDX');
    expect(bill.serialNumber).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-a[0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(bill.metadata.component.name).toBe('traywright');
    const named = bill.components.map(({ name, version }) => `${name} ${version}`);
    expect(named.sort()).toEqual(
      runtimeDependencies(lock)
        .map(({ name, version }) => `${name} ${version}`)
        .sort(),
    );
    for (const url of text.match(/https?:\/\/[^"]*/g) ?? []) expect(url).toContain('//cyclonedx.org/');
    expect(text).not.toContain(root);
    expect(text).not.toContain(folder);
  });
});
