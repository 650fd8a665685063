import { expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';

const texts: Readonly<Record<string, string>> = {
  'library.ifu.yaml': 'kind: library\nid: two-sites\n',
  'documents/ln-1.ifu.yaml': 'kind: document\nid: ln-1-a\ndoc: LN-1\nrev: A\nmarkets: [US]\n',
  'sites/east.ifu.yaml': 'kind: site\nid: east\njurisdiction: US\n',
  'sites/west.ifu.yaml': 'kind: site\nid: west\njurisdiction: US\n',
};

it('judges what names no site again only when the first site changes', () => {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of Object.entries(texts)) engine.set(fileId(file), text);
  let edits = 0;
  const toldOn = (site: string) => {
    for (const file of engine.library.files()) engine.findings(file);
    return engine.set(fileId(`sites/${site}.ifu.yaml`), `kind: site\nid: ${site}\njurisdiction: EU\n# ${++edits}\n`);
  };
  expect(toldOn('west')).not.toContain('documents/ln-1.ifu.yaml');
  expect(toldOn('east')).toContain('documents/ln-1.ifu.yaml');
  // One that can't be read is none: the other is the first.
  engine.set(fileId('sites/east.ifu.yaml'), 'kind: site\nid: [east\n');
  expect(toldOn('west')).toContain('documents/ln-1.ifu.yaml');
});
