import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { filesOfStage, libraryTree } from '../../../server/src/editor/library-tree.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

const engine = new Engine({ rules: allRules, today: testDay });
for (const [path, text] of readSample('lanternfield')) engine.set(path, text);

describe('the library by stage of work', () => {
  const { stages, coverage } = libraryTree(engine);

  it('holds every file once, in the order of the work', () => {
    expect(stages.map(({ id }) => id)).toEqual([
      'department',
      'documents',
      'devices',
      'machines',
      'packaging',
      'sets',
      'procedures',
      'teaching',
      'decisions',
    ]);
    const files = stages.flatMap(({ id }) => filesOfStage(engine, id).map(({ file }) => file));
    expect(files.toSorted()).toEqual([...engine.library.files()].sort());
  });

  it('counts files, those with findings, and late reviews', () => {
    const sets = stages.find(({ id }) => id === 'sets');
    const own = filesOfStage(engine, 'sets');
    expect(sets).toMatchObject({ files: own.length, withFindings: own.length });
    for (const { id, counts, files, withFindings } of stages) {
      const all = filesOfStage(engine, id).flatMap(({ file }) => engine.findings(file));
      expect(counts.error + counts.warning + counts.advice).toBe(all.length);
      expect(withFindings).toBeLessThanOrEqual(files);
    }
    const late = filesOfStage(engine, 'devices').filter(({ overdue }) => overdue);
    expect(late.map(({ file }) => file)).toEqual(['devices/pellamont-bone-clamp.ifu.yaml']);
    expect(stages.find(({ id }) => id === 'devices')?.overdue).toBe(1);
  });

  it('says how much of what sets name is encoded', () => {
    expect(coverage.named).toBeGreaterThan(5);
    expect(coverage.encoded).toBeLessThanOrEqual(coverage.named);
  });

  it('names files as people do', () => {
    const [first] = filesOfStage(engine, 'machines').filter(({ file }) => file === 'sterilizers/S1.ifu.yaml');
    expect(first?.detail).toBe('Sterilizer S1');
    expect(filesOfStage(engine, 'sets').map(({ label }) => label)).toContain('Laparoscopic cholecystectomy B');
  });
});

describe('a file that cannot be read', () => {
  it('stands under its kind where that can be made out, else apart', () => {
    const mine = new Engine({ rules: allRules, today: testDay });
    mine.set(fileId('a.ifu.yaml'), 'kind: device\nid: grey\n  broken: [\n');
    mine.set(fileId('b.ifu.yaml'), '%%%\n');
    expect(libraryTree(mine).stages.map(({ id, files }) => `${id} ${files}`)).toEqual(['devices 1', 'unreadable 1']);
    expect(filesOfStage(mine, 'unreadable')[0]).toMatchObject({ label: 'b.ifu.yaml' });
    expect(filesOfStage(mine, 'no-such-stage')).toEqual([]);
  });
});
