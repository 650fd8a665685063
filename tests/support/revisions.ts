import { fileId } from '../../server/src/base/brand.ts';
import { readRuleFile } from '../../server/src/library/file-record.ts';
import { Library } from '../../server/src/library/library.ts';
import type { AnyEntity } from '../../server/src/model/entity.ts';
import type { EntityComparison } from '../../server/src/revision/change.ts';
import { compareEntities } from '../../server/src/revision/compare.ts';
import type { Extent } from '../../server/src/revision/libraries.ts';
import type { RevisionReview } from '../../server/src/revision/review.ts';
import { reviewOf } from '../../server/src/revision/review.ts';
import { demoDay } from './routes.ts';
import { readSample } from './samples.ts';

/** The entity of one whole rule file. A fault of form in a test's own text fails the test. */
export function fileEntity(text: string, name = 'one'): AnyEntity {
  const { entity, problems } = readRuleFile(fileId(`${name}.ifu.yaml`), text);
  if (entity === undefined || problems.length > 0)
    throw new Error(`${problems.map(({ message }) => message).join('; ')}\n${text}`);
  return entity;
}

/** Two texts of one file compared, with bare numbers read as the one value. */
export function comparedTexts(before: string, after: string): EntityComparison {
  return compareEntities(fileEntity(before), fileEntity(after), undefined);
}

/** `class path` of every change. */
export function changeNames(comparison: Pick<EntityComparison, 'changes'>): readonly string[] {
  return comparison.changes.map((change) => `${change.class} ${change.path}`);
}

export function sampleEntities(name: string): readonly AnyEntity[] {
  return [...readSample(name)].flatMap(([file, text]) => readRuleFile(file, text).entity ?? []);
}

export function sampleLibrary(name: string): Library {
  const library = new Library();
  for (const [file, text] of readSample(name)) library.set(file, text);
  return library;
}

/** A sample compared with another (`whole`), or with a folder that holds only what it changes (`part`). */
export function reviewOfSamples(before: string, after: string, extent: Extent): RevisionReview {
  return reviewOf({
    before: sampleEntities(before),
    after: sampleEntities(after),
    extent,
    library: sampleLibrary(before),
    today: demoDay,
  });
}
