import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Rec } from '../../model/node.ts';
import { fieldOf, nodesIn } from '../../model/walk.ts';
import type { Transcribed } from './transcription.ts';
import { readStatement } from './transcription.ts';
import type { QuotedStatement } from './transcription-fault.ts';

/** The passages cited by a record or anything inside it; by what is around it when it cites none. Each once. */
export function passagesOf(
  entity: AnyEntity & Transcribed,
  record: Rec,
  around: Citation | undefined,
): readonly Omit<QuotedStatement, 'cited'>[] {
  const inside = nodesIn(record).filter((node) => node.node === 'citation');
  const citations = inside.length > 0 || around === undefined ? inside : [around];
  const ids = new Set(citations.flatMap(({ statements }) => statements.map(({ text }) => text)));
  return [...ids].flatMap((id) => readStatement(entity, id) ?? []);
}

export function sourceOf(record: Rec): Citation | undefined {
  const src = fieldOf(record, 'src');
  return src?.node === 'citation' ? src : undefined;
}
