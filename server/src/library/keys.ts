/**
 * library/: the snapshot of all files of one library: who declares what, who names whom, and which files a change can affect.
 * It must not know rules, judgement or the disk: texts come in, entities and changed keys come out.
 */

import type { Brand } from '../base/brand.ts';
import type { Kind } from '../schema/kinds.ts';

/**
 * What a file exports and what a reader wants, as one string each. A reader that asked for a key is judged again when any file that
 * exports it (before or after the change) changes: so a look-up that found nothing is remembered too.
 */
export type IndexKey = Brand<string, 'IndexKey'>;

/** The entity of this kind and id. */
export function entityKey(kind: string, id: string): IndexKey {
  return `entity:${kind}/${id}` as IndexKey;
}

/** Every entity of the kind, with its content. */
export function kindKey(kind: Kind): IndexKey {
  return `kind:${kind}` as IndexKey;
}

/** Procedures that name no device: for everything, or for a trait. */
export function forManyKey(): IndexKey {
  return 'for-many:procedure' as IndexKey;
}

/** Answers of makers about what has this id. */
export function answersKey(id: string): IndexKey {
  return `about:${id}` as IndexKey;
}

/** The ids of a kind, without content: changes only when an id comes or goes. */
export function idsKey(kind: Kind): IndexKey {
  return `ids:${kind}` as IndexKey;
}

/** Entities that name this entity anywhere. */
export function usersKey(kind: string, id: string): IndexKey {
  return `users:${kind}/${id}` as IndexKey;
}

/** Registered revisions of one document number. */
export function documentKey(number: string): IndexKey {
  return `document:${number}` as IndexKey;
}

/** Devices whose catalogue numbers start with the same letters. */
export function catalogueKey(number: string): IndexKey {
  return `catalogue:${/^[^0-9]{0,16}/.exec(number)?.[0] ?? ''}` as IndexKey;
}

/** A file that a rule file names and the library keeps, by its path below the root. */
export function keptKey(path: string): IndexKey {
  return `kept:${path}` as IndexKey;
}

/** A shared answer: whoever used it is judged again when it is dropped, and need not repeat all that it rests on. */
export function answerKey(name: string): IndexKey {
  return `answer:${name}` as IndexKey;
}
