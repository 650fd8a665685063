import type { AnyEntity } from '../model/entity.ts';
import type { Text } from '../model/node.ts';
import { fieldOf } from '../model/walk.ts';

/** Keys that name a file of the library, in all kinds. They stand in the outermost record. */
export const fileKeys = ['file', 'photo'] as const;

/** Where an entity names files that the library keeps. */
export function namedFilesOf(entity: AnyEntity): readonly Text[] {
  return fileKeys.flatMap((key) => {
    const named = fieldOf(entity, key);
    return named?.node === 'text' ? [named] : [];
  });
}
