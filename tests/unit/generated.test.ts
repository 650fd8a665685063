import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogueFolder, cataloguePages } from '../../server/build/catalogue-pages.ts';
import { generatedFiles } from '../../server/build/generated-files.ts';
import { readSources } from '../../server/build/sources.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';

const root = new URL('../..', import.meta.url).pathname;

function committed(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

describe('generated files', () => {
  it.each([...generatedFiles(readSources(root))])('%s is what its sources give', (path, text) => {
    expect(committed(path)).toBe(text);
  });

  it('the pages of the catalogue are what the rules give, and no other page lies there', () => {
    const pages = cataloguePages(allRules);
    const differing = [...pages].filter(([path, text]) => committed(path) !== text).map(([path]) => path);
    expect(differing).toEqual([]);
    const lying = readdirSync(join(root, catalogueFolder)).map((name) => `${catalogueFolder}/${name}`);
    expect(lying.sort()).toEqual([...pages.keys()].sort());
  });

  it('the index names every page once, by stage', () => {
    const index = cataloguePages(allRules).get(`${catalogueFolder}/README.md`) ?? '';
    const linked = [...index.matchAll(/\]\(([a-z0-9-]{1,80})\.md\)/g)].map(([, id]) => id);
    expect(linked.length).toBe(new Set(linked).size);
    expect(linked).toEqual(expect.arrayContaining(allRules.map(({ id }) => id)));
  });
});
