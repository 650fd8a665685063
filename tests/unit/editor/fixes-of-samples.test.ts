import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { Finding } from '../../../server/src/check/finding.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

/** Each fix that is offered anywhere in a sample, taken alone: what all rules then find in the whole library. */

interface Open {
  readonly engine: Engine;
  readonly texts: ReadonlyMap<FileId, string>;
}

function opened(sample: string): Open {
  const texts = readSample(sample);
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of texts) engine.set(file, text);
  return { engine, texts };
}

function found({ engine, texts }: Open): ReadonlySet<string> {
  const all = [...texts.keys()].flatMap((file) => engine.findings(file));
  return new Set(all.map(({ rule, entity, path, file }: Finding) => `${rule} ${file} ${entity} ${path}`));
}

/** Marking a value as ambiguous leaves one thing to do, which stays visible: to ask the manufacturer. */
const leftToDo = 'ambiguous-without-question ';

/** What the fix adds; another place of the very fault that is mended is no new one, it was only reported once. */
function addedBy({ rule, file }: Finding, text: string, open: Open, before: ReadonlySet<string>): readonly string[] {
  open.engine.set(file, text);
  const same = `${rule} ${file} `;
  return [...found(open)].filter(
    (finding) => !before.has(finding) && !finding.startsWith(leftToDo) && !finding.startsWith(same),
  );
}

/** For each fix of the finding what it adds. The library is afterwards as it was. */
function tried(finding: Finding, open: Open, before: ReadonlySet<string>): readonly (readonly string[])[] {
  const text = open.texts.get(finding.file) ?? '';
  const added = finding.fixes.map(({ title, edits }) => {
    const applied = applyEdits(text, edits);
    return 'text' in applied ? addedBy(finding, applied.text, open, before) : [`"${title}" cannot be applied`];
  });
  open.engine.set(finding.file, text);
  return added;
}

describe.each(['lanternfield', 'lanternfield-revision', 'saltmere-eye-clinic'])('the fixes offered in %s', (sample) => {
  it('add no finding in any file, whichever is chosen', () => {
    const open = opened(sample);
    const before = found(open);
    const worse: string[] = [];
    for (const file of open.texts.keys()) {
      for (const finding of open.engine.findings(file)) {
        const added = tried(finding, open, before).flat();
        if (added.length > 0) worse.push(`${finding.rule}: ${added}`);
      }
    }
    expect(worse).toEqual([]);
    expect(found(open)).toEqual(before);
  });
});
