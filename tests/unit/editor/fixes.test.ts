import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { Finding } from '../../../server/src/check/finding.ts';
import { editBetween, fixAllOf } from '../../../server/src/editor/fix-all.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

const file = fileId('x.ifu.yaml');

function findingsOf(text: string): readonly Finding[] {
  const engine = new Engine({ rules: [], today: testDay });
  engine.set(file, text);
  return engine.findings(file);
}

describe('[E03] fix all of a rule in a file', () => {
  it('mends every one, also where one fix makes the next possible, and is then done', () => {
    const text = 'kind: device\nid: a\nnam: x\nmakr: y\nclas: critical\n';
    const after = fixAllOf('unknown-field', text, findingsOf);
    expect(after).toBe('kind: device\nid: a\nname: x\nmaker: y\nclass: critical\n');
    expect(fixAllOf('unknown-field', after ?? '', findingsOf)).toBeUndefined();
  });

  it('touches no other finding, and nothing at all when there is nothing', () => {
    const text = 'kind: device\nid: a\nnam: x\nclass: critcal\n';
    expect(fixAllOf('unknown-field', text, findingsOf)).toContain('class: critcal');
    expect(fixAllOf('missing-thing', text, findingsOf)).toBeUndefined();
  });

  it('sets nothing aside: that a number of the page is not needed is said of one number at a time', () => {
    const passages = '  s1: {page: 1, quote: "Store dry."}\n  s2: {page: 1, quote: "Heat to 140 °C."}\n';
    const text = `kind: device\nid: a\nname: x\nstatements:\n${passages}`;
    const engine = new Engine({ rules: allRules, today: testDay });
    const found = (given: string): readonly Finding[] => {
      engine.set(file, given);
      return engine.findings(file);
    };
    for (const rule of ['quote-number-not-encoded', 'passage-not-encoded']) {
      expect(found(text).filter((finding) => finding.rule === rule && finding.fixes.length === 1)).not.toEqual([]);
      expect(fixAllOf(rule, text, found)).toBeUndefined();
    }
  });

  it('keeps line ends, blanks and comments as they are', () => {
    const text = '# header\r\nkind: device\r\nid:   a   # keep\r\nnam:  x   \r\n\r\n\r\nclas: critical';
    expect(fixAllOf('unknown-field', text, findingsOf)).toBe(text.replace('nam:', 'name:').replace('clas:', 'class:'));
  });
});

describe('the edit between two texts', () => {
  it('is as small as one edit can be', () => {
    expect(editBetween('abcd', 'abXd')).toEqual({ span: { start: 2, end: 3 }, text: 'X' });
    expect(editBetween('aa', 'aaa')).toEqual({ span: { start: 2, end: 2 }, text: 'a' });
    expect(editBetween('a', 'a')).toBeUndefined();
  });
});

describe('every fix offered in the samples', () => {
  it('is read as meant and adds no fault of form or syntax', () => {
    let tried = 0;
    for (const sample of ['lanternfield', 'lanternfield-revision', 'saltmere-eye-clinic']) {
      const engine = new Engine({ rules: allRules, today: testDay });
      const texts = readSample(sample);
      for (const [path, text] of texts) engine.set(path, text);
      for (const [path, text] of texts) {
        const before = readRuleFile(path, text).problems.length;
        for (const finding of engine.findings(path)) {
          for (const { title, edits } of finding.fixes) {
            tried++;
            const applied = applyEdits(text, edits);
            expect('text' in applied, `${path} ${finding.rule} ${title}`).toBe(true);
            const after = 'text' in applied ? readRuleFile(path, applied.text).problems.length : before;
            expect(after, `${path} ${finding.rule} ${title}`).toBeLessThanOrEqual(before);
          }
        }
      }
    }
    expect(tried).toBeGreaterThan(10);
  });
});
