/**
 * library/: the snapshot of all files of one library: who declares what, who names whom, and which files a change can affect.
 * It must not know rules, judgement or the disk: texts come in, entities and changed keys come out.
 */

import type { Brand } from '../base/brand.ts';
import { Remembered } from '../base/remembered.ts';
import type { Kind } from '../schema/kinds.ts';

/**
 * What a file exports and what a reader wants, as one string each. A reader that asked for a key is judged again when any file that
 * exports it (before or after the change) changes: so a look-up that found nothing is remembered too.
 */
export type IndexKey = Brand<string, 'IndexKey'>;

/**
 * Keys of one sort, by what they are about. They are asked for by the million: each is one string wherever it is held, which takes room
 * once and is found without being read to its end.
 */
function keysFor(sort: string): (of: string, name: string) => IndexKey {
  const made = new Remembered(mostGroups, (of: string) => {
    const start = `${sort}:${of}/`;
    return new Remembered(mostNames, (name: string) => inOnePiece(start, name) as IndexKey);
  });
  return (of, name) => made.of(of).of(name);
}

/** What a template gives keeps its pieces for as long as nobody reads it. */
function inOnePiece(start: string, name: string): string {
  return [start, name].join('');
}

const mostGroups = 1_000;
const mostNames = 100_000;

/** Keys of one sort that are about one thing alone. */
function plainKeysFor<Name extends string>(sort: string): (name: Name) => IndexKey {
  const made = new Remembered(mostNames, (name: Name) => inOnePiece(`${sort}:`, name) as IndexKey);
  return (name) => made.of(name);
}

/** The entity of this kind and id. */
export const entityKey = keysFor('entity');

/** Every entity of the kind, with its content. */
export const kindKey = plainKeysFor<Kind>('kind');

/** Procedures that name no device: for everything, or for a trait. */
export function forManyKey(): IndexKey {
  return 'for-many:procedure' as IndexKey;
}

/** Answers of makers about what has this id. */
export const answersKey = plainKeysFor('about');

/** The ids of a kind, without content: changes only when an id comes or goes. */
export const idsKey = plainKeysFor<Kind>('ids');

/** Entities that name the entity of this kind and id anywhere. */
export const usersKey = keysFor('users');

/** What a key is about, alike for what declares it and for what names it. */
export function subjectOf(key: IndexKey): string {
  if (key.startsWith('document:')) return `document-number/${key.slice('document:'.length)}`;
  return key.startsWith('users:') || key.startsWith('entity:') ? key.slice(key.indexOf(':') + 1) : key;
}

/** Registered revisions of one document number. */
export const documentKey = plainKeysFor('document');

/** Devices whose catalogue numbers start with the same letters. */
export function catalogueKey(number: string): IndexKey {
  return `catalogue:${/^[^0-9]{0,16}/.exec(number)?.[0] ?? ''}` as IndexKey;
}

/** A file that a rule file names and the library keeps, by its path below the root. */
export function keptKey(path: string): IndexKey {
  return `kept:${path}` as IndexKey;
}

/**
 * The shared answer to this question about this argument: whoever used it is judged again when it is dropped, and need not repeat all that
 * it rests on.
 */
export const answerKey = keysFor('answer');
