import { stampOf } from '../model/content.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { type AnyEntity, rootOfEntity } from '../model/entity.ts';
import { missingIn } from '../rules/support/sign-offs.ts';

/** The id of a complete record that took exactly this content over, every change of it agreed to; undefined where nobody has. */
export function acceptedBy(entity: AnyEntity, records: readonly EntityOf['sign-off'][]): string | undefined {
  const { id } = rootOfEntity(entity);
  const about = records.filter((record) => record.about?.text === (id as string) && record.to_stamp !== undefined);
  if (about.length === 0) return undefined;
  const stamp = stampOf(entity);
  const found = about.find(
    (record) => record.to_stamp?.text === stamp && missingIn(record).length === 0 && allAgreed(record),
  );
  return found === undefined ? undefined : rootOfEntity(found).id;
}

function allAgreed({ changes }: EntityOf['sign-off']): boolean {
  const items = changes?.items ?? [];
  return items.length > 0 && items.every(({ decision }) => decision?.text === 'agree');
}
