import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { cli, folderWith } from '../../support/cli.ts';

/* Every kind of page against the standard, by a validator that is not ours. */

const root = join(import.meta.dirname, '../../..');
const demo = 'samples/lanternfield';
const corrected = `${demo}-corrected`;
const validator = new HtmlValidate({ extends: ['html-validate:recommended', 'html-validate:standard'] });

async function faultsOf(html: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${line}: ${message} (${ruleId})`),
  );
}

const log = [
  'time (s),temperature (°C),pressure (kPa abs)',
  ...[0, 10, 20, 30, 200, 190, 210].map((second) => `${second},134.2,305`),
  '',
].join('\n');

const pages: Readonly<Record<string, readonly string[]>> = {
  answer: ['answer', 'duskwell-lap-scissors-takeapart', '--library', demo],
  'two answers': ['answer', 'quillmark-ringed-forceps', 'skerrow-wristed-grasper', '--library', demo],
  'no answer': ['answer', '"><b>', '--library', demo],
  'immediate use, no': ['urgent', 'ORTHO-E', '--library', demo],
  'immediate use, yes': ['urgent', 'tarnwick-power-handpiece', '--library', corrected],
  receiving: ['receive', 'KNEE-C', '--needed-by', '2025-03-04T07:30', '--library', demo],
  'wet load': ['wet-load', 'LAP-CHOLE-B', '--library', demo],
  questions: ['quiz', corrected, '--count', '200'],
  'cycle record': ['cycle-record', 'log.csv', '--cycle', 'S2-pv134-4-30', '--library', demo],
};

describe('valid HTML', () => {
  it.each(Object.entries(pages))('%s', async (_, words) => {
    const folder = folderWith({ 'log.csv': log });
    const given = words.map((word) => (word === 'log.csv' ? join(folder, word) : word));
    const { out, err } = await cli([...given, '--format', 'html'], { cwd: root });
    expect(err).toBe('');
    expect(await faultsOf(out)).toEqual([]);
  });

  const folders: Readonly<Record<string, readonly string[]>> = {
    'cards with drafts': ['cards', '--library', demo],
    'German cards': ['cards', '--library', corrected, '--language', 'de', '--paper', 'a5'],
    posters: ['posters', '--library', demo],
    'German posters': ['posters', '--library', corrected, '--language', 'de'],
    binder: ['binder', demo, '--day', '2025-03-03'],
  };

  it.each(Object.entries(folders))('%s', async (_, words) => {
    const out = folderWith({});
    await cli([...words, '--out', out], { cwd: root });
    const names = readdirSync(out);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(await faultsOf(readFileSync(join(out, name), 'utf8')), name).toEqual([]);
  });

  it('would be caught', async () => {
    const html =
      '<!DOCTYPE html>\n<html lang="en"><head><title>x</title></head><body><ul><p>x</p></ul></body></html>\n';
    expect(await faultsOf(html)).toHaveLength(1);
  });
});
